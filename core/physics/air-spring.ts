/**
 * An air spring with a self-equalising negative chamber, and with one or two
 * positive chambers.
 *
 *   V_p(x) = V_p0 − N V_t − A_p x                     V_n(x) = V_n0 + A_n x
 *   F(x)   = A_p (p_p(x) − p_a) − A_n (p_n(x) − p_a)
 *   k(x)   = n p_p A_p² / V + n p_n A_n² / V_n        V = V_p, or V_p + V_s once the secondary acts
 *
 * One chamber, or two before the secondary acts:  p_p V_p^n = p_p0 (V_p0 − N V_t)^n
 * Two chambers from p_p = p_s0 on, behind a floating piston:
 *   (V_p0 − N V_t) p_p0^(1/n) + V_s p_s0^(1/n) = (V_p + V_s) p_p^(1/n)
 *
 * x stroke from full extension, m · A_p, A_n areas of the positive and the
 * negative side, m² · V_p, V_n, V_s volumes of the main, the negative and the
 * secondary chamber, m³ · N spacers of V_t each · p_a ambient, p_p main, p_n
 * negative, p_s secondary pressure, absolute, Pa · index 0 at full extension ·
 * n gas exponent · F force, N · k rate, N/m.
 *
 * At rest the negative chamber equals the main one at the equalising stroke;
 * that is slow, so isothermal. From rest both follow the exponent.
 *
 * Source: the polytropic relation (any textbook of thermodynamics), applied to
 * each chamber; the rate is its derivative, the textbook's k = n p A² / V.
 * Valid while the gas is ideal (gas.ts) and the seals hold.
 */
import { absoluteFromGauge } from "#core/quantity/pressure.ts";
import {
  type AbsolutePressure,
  type Area,
  type GaugePressure,
  joules,
  type Length,
  metres,
  newtons,
  newtonsPerMetre,
  type Volume,
} from "#core/quantity/quantity.ts";
import { checkedChambers } from "./air-chambers.ts";
import { airExponent } from "./gas.ts";
import { withinStroke } from "./input.ts";
import type { Spring } from "./spring.ts";

/** What the part is: measured, taken from a chart that the team typed in, or fitted. */
export interface AirSpringGeometry {
  /** Full stroke, m, > 0. */
  readonly stroke: Length;
  /** Area on which the main chamber presses, m², > 0. */
  readonly positiveArea: Area;
  /** Area on which the negative chamber presses, m², ≥ 0: the positive area less the rod. */
  readonly negativeArea: Area;
  /** Volume of the main chamber at full extension without spacers, m³, > 0. */
  readonly positiveVolume: Volume;
  /** Volume of the negative chamber at full extension, m³, > 0. */
  readonly negativeVolume: Volume;
  /** Stroke at which main and negative chamber share one pressure, m; 0 for full extension. */
  readonly equalisingStroke: Length;
  /** Volume of the secondary chamber, m³, > 0; absent in a part with one positive chamber. */
  readonly secondaryVolume?: Volume | undefined;
  /** Volume that one spacer takes from the main chamber, m³, ≥ 0. */
  readonly spacerVolume: Volume;
}

/** What is set: pressures as a gauge shows them at full extension, at the temperature of the ride. */
export interface AirSpringSetting {
  readonly main: GaugePressure;
  /** Gauge pressure of the secondary chamber, Pa, above `main`; given exactly when the part has that chamber. */
  readonly secondary?: GaugePressure | undefined;
  /** Number of spacers in the main chamber, a whole number ≥ 0. */
  readonly spacers: number;
  /** Ambient pressure at the place of the ride, Pa. */
  readonly ambient: AbsolutePressure;
}

/** A spring whose secondary chamber, where there is one, starts to act at `engagementStroke` (m); absent when it never does. */
export interface AirSpring extends Spring {
  readonly engagementStroke?: Length;
}

/** Work (J) that brings a gas from `from` to `to` (m³), the pressure at `from` being `pressure`: exact for n = 1 too. */
function compressionWork(pressure: number, from: number, to: number, exponent: number): number {
  const logarithm = Math.log(from / to);
  const growth = (exponent - 1) * logarithm;
  return pressure * from * logarithm * (growth === 0 ? 1 : Math.expm1(growth) / growth);
}

/**
 * The spring of a part with a setting.
 * @param exponent gas exponent from 1 (slow: sag) to 1.4; see gas.ts for the usual riding value.
 * @throws PhysicsError for a number that is none, a volume or area that cannot be, a chamber that
 *   the stroke or the spacers would fill, a secondary pressure at or below the main one.
 */
export function createAirSpring(geometry: AirSpringGeometry, setting: AirSpringSetting, exponent: number): AirSpring {
  const n = airExponent(exponent);
  const mainVolume = checkedChambers(geometry, setting);
  const { stroke, positiveArea, negativeArea, negativeVolume, equalisingStroke } = geometry;
  const ambient = setting.ambient;
  const main = absoluteFromGauge(setting.main, ambient);
  const secondaryVolume = geometry.secondaryVolume ?? 0;
  const secondary = setting.secondary === undefined ? Infinity : absoluteFromGauge(setting.secondary, ambient);

  const negative =
    (main * mainVolume * (negativeVolume + negativeArea * equalisingStroke)) /
    ((mainVolume - positiveArea * equalisingStroke) * negativeVolume);
  const engagementVolume = mainVolume * (main / secondary) ** (1 / n);
  const engagement = (mainVolume - engagementVolume) / positiveArea;
  const engages = engagement <= stroke;

  const mainConstant = main * mainVolume ** n;
  const negativeConstant = negative * negativeVolume ** n;
  const sharedConstant = engages ? (mainVolume * main ** (1 / n) + secondaryVolume * secondary ** (1 / n)) ** n : 0;
  const ambientForce = (positiveArea - negativeArea) * ambient;

  const acts = (x: number): boolean => engages && x >= engagement;
  const positiveVolumeAt = (x: number): number => mainVolume - positiveArea * x + (acts(x) ? secondaryVolume : 0);
  const positivePressureAt = (x: number, volume: number): number =>
    (acts(x) ? sharedConstant : mainConstant) / volume ** n;
  const negativeVolumeAt = (x: number): number => negativeVolume + negativeArea * x;

  return {
    stroke,
    ...(engages ? { engagementStroke: metres(engagement) } : {}),
    force(x) {
      withinStroke(x, stroke);
      const positivePressure = positivePressureAt(x, positiveVolumeAt(x));
      const negativePressure = negativeConstant / negativeVolumeAt(x) ** n;
      return newtons(positiveArea * positivePressure - negativeArea * negativePressure - ambientForce);
    },
    rate(x) {
      withinStroke(x, stroke);
      const volume = positiveVolumeAt(x);
      const opposite = negativeVolumeAt(x);
      return newtonsPerMetre(
        (n * positivePressureAt(x, volume) * positiveArea ** 2) / volume +
          (n * negativeConstant * negativeArea ** 2) / opposite ** (n + 1),
      );
    },
    energy(x) {
      withinStroke(x, stroke);
      const aloneUntil = acts(x) ? engagementVolume : mainVolume - positiveArea * x;
      const alone = compressionWork(main, mainVolume, aloneUntil, n);
      const together = acts(x)
        ? compressionWork(secondary, engagementVolume + secondaryVolume, positiveVolumeAt(x), n)
        : 0;
      const opposite = compressionWork(negative, negativeVolume, negativeVolumeAt(x), n);
      return joules(alone + together + opposite - ambientForce * x);
    },
  };
}
