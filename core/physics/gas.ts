/**
 * Air as an ideal gas.
 *
 *   p V = m R T      at fixed volume p₂ = p₁ T₂ / T₁      p V^n = const
 *
 * p absolute pressure, Pa · V volume, m³ · T temperature, K · n exponent:
 * 1 for what is slow enough to keep its temperature, 1.4 for what is too fast
 * to lose any heat.
 *
 * Source: any textbook of thermodynamics, e.g. OpenStax University Physics 2,
 * chapters 2 and 3. The ideal gas is enough: at 5 to 25 bar and −5 to 50 °C it
 * puts the temperature correction wrong by 0.6 % at most, and the pressure of a
 * compression to a third at 15 bar by 0.7 % (against the equation of state of
 * Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331), which is less than
 * the tolerance of a shock gauge.
 */
import { absoluteFromGauge, gaugeFromAbsolute } from "#core/quantity/pressure.ts";
import {
  type AbsolutePressure,
  absolutePascals,
  type Energy,
  type GaugePressure,
  joules,
  kelvins,
  type Temperature,
  type Volume,
} from "#core/quantity/quantity.ts";
import { finite, positive, within } from "./input.ts";
import { PhysicsError } from "./problem.ts";

/** Exponent of a change slow enough to stay at one temperature: setting a pressure, sitting still. */
export const ISOTHERMAL = 1;
/** Exponent while riding, unless a team measured its own. Common practice, no source. */
export const DEFAULT_RIDING_EXPONENT = 1.3;
/** Exponent of dry air when no heat is exchanged. */
export const ADIABATIC_EXPONENT_OF_AIR = 1.4;

/** Exponent of a monatomic gas when no heat is exchanged: no gas exceeds it. */
const GREATEST_EXPONENT = 5 / 3;

/** Temperature and ambient pressure where and when a gauge is read. */
export interface GasState {
  readonly temperature: Temperature;
  readonly ambient: AbsolutePressure;
}

/** `exponent` when it is one that air can follow: from 1 to 1.4. */
export function airExponent(exponent: number): number {
  return within("Gas exponent", exponent, ISOTHERMAL, ADIABATIC_EXPONENT_OF_AIR);
}

/** Pressure (Pa) of a gas held at fixed volume after its temperature (K) went from `from` to `to`. @throws PhysicsError unless all are > 0. */
export function pressureAtTemperature(
  pressure: AbsolutePressure,
  from: Temperature,
  to: Temperature,
): AbsolutePressure {
  positive("Pressure in Pa", pressure);
  return absolutePascals((pressure * positive("Temperature in K", to)) / positive("Temperature in K", from));
}

/**
 * What a gauge that showed `set` (Pa) at `setAt` shows at `readAt`, the volume being the same
 * (the part at the same stroke, no air lost). Inverse of {@link gaugeToSetNow}.
 * @throws PhysicsError when a temperature or an absolute pressure is not above 0.
 */
export function gaugeAfter(change: {
  readonly set: GaugePressure;
  readonly setAt: GasState;
  readonly readAt: GasState;
}): GaugePressure {
  const { set, setAt, readAt } = change;
  positive("Ambient pressure in Pa", setAt.ambient);
  positive("Ambient pressure in Pa", readAt.ambient);
  const absolute = absoluteFromGauge(finite("Gauge pressure in Pa", set), setAt.ambient);
  if (absolute <= 0)
    throw new PhysicsError("not positive", `A gauge pressure of ${set} Pa would be below vacuum.`, { set });
  return gaugeFromAbsolute(pressureAtTemperature(absolute, setAt.temperature, readAt.temperature), readAt.ambient);
}

/**
 * Fill now so that it is right then: the gauge pressure (Pa) to set at the temperature and
 * ambient pressure of `now` so that the gauge shows `wanted` at those of `wantedAt`.
 * @throws PhysicsError when a temperature or an absolute pressure is not above 0.
 */
export function gaugeToSetNow(wish: {
  readonly wanted: GaugePressure;
  readonly wantedAt: GasState;
  readonly now: GasState;
}): GaugePressure {
  return gaugeAfter({ set: wish.wanted, setAt: wish.wantedAt, readAt: wish.now });
}

/**
 * Pressure (Pa) of a gas of pressure `pressure` after its volume (m³) went from `from` to `to`: p V^n is constant.
 * @param exponent n, from 1 (isothermal) to 5/3 (a monatomic gas without heat exchange).
 * @throws PhysicsError for an exponent outside that, or a pressure or volume not above 0.
 */
export function polytropicPressure(
  pressure: AbsolutePressure,
  from: Volume,
  to: Volume,
  exponent: number,
): AbsolutePressure {
  within("Gas exponent", exponent, ISOTHERMAL, GREATEST_EXPONENT);
  const ratio = positive("Volume in m³", from) / positive("Volume in m³", to);
  return absolutePascals(positive("Pressure in Pa", pressure) * ratio ** exponent);
}

/**
 * Temperature (K) of a gas of `temperature` after its volume (m³) went from `from` to `to` with exponent n: T V^(n−1) is
 * constant. Same limits and errors as {@link polytropicPressure}.
 */
export function polytropicTemperature(
  temperature: Temperature,
  from: Volume,
  to: Volume,
  exponent: number,
): Temperature {
  within("Gas exponent", exponent, ISOTHERMAL, GREATEST_EXPONENT);
  const ratio = positive("Volume in m³", from) / positive("Volume in m³", to);
  return kelvins(positive("Temperature in K", temperature) * ratio ** (exponent - 1));
}

/**
 * Work (J) that takes a gas of `pressure` (Pa) from the volume `from` to `to` (m³); below 0 when it expands.
 *
 *   W = p V (L + (n−1) L²/2 + …) = p V (e^((n−1) L) − 1) / (n−1)      L = ln(from / to)
 *
 * One formula for every exponent: for n = 1 it is p V L. Same limits and errors as {@link polytropicPressure}.
 */
export function polytropicWork(pressure: AbsolutePressure, from: Volume, to: Volume, exponent: number): Energy {
  within("Gas exponent", exponent, ISOTHERMAL, GREATEST_EXPONENT);
  const logarithm = Math.log(positive("Volume in m³", from) / positive("Volume in m³", to));
  const growth = (exponent - 1) * logarithm;
  return joules(
    positive("Pressure in Pa", pressure) * from * logarithm * (growth === 0 ? 1 : Math.expm1(growth) / growth),
  );
}
