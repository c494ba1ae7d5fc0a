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
 * At rest the negative chamber equals the positive side at the equalising
 * stroke, the secondary chamber with it where it acts there; that is slow, so
 * isothermal. From rest both follow the exponent.
 *
 * Source: the polytropic relation (any textbook of thermodynamics), applied to
 * each chamber; the rate is its derivative, the textbook's k = n p A² / V.
 * Valid while the gas is ideal (gas.ts) and the seals hold.
 */
import { absoluteFromGauge } from "#core/quantity/pressure.ts";
import {
  absolutePascals,
  cubicMetres,
  joules,
  type Length,
  metres,
  newtons,
  newtonsPerMetre,
  type Volume,
} from "#core/quantity/quantity.ts";
import { type AirSpringGeometry, type AirSpringSetting, checkedChambers } from "./air-spring-part.ts";
import { airExponent, polytropicWork } from "./gas.ts";
import { withinStroke } from "./input.ts";
import type { Spring } from "./spring.ts";

/** A spring whose secondary chamber, where there is one, starts to act at `engagementStroke` (m); absent when it never does. */
export interface AirSpring extends Spring {
  readonly engagementStroke?: Length;
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
  const secondary =
    setting.secondary === undefined ? absolutePascals(Infinity) : absoluteFromGauge(setting.secondary, ambient);

  const equalised = slowPressure(mainVolume, positiveArea * equalisingStroke, main, secondaryVolume, secondary);
  const negative = absolutePascals((equalised * (negativeVolume + negativeArea * equalisingStroke)) / negativeVolume);
  const engagementVolume = cubicMetres(mainVolume * (main / secondary) ** (1 / n));
  const engagement = (mainVolume - engagementVolume) / positiveArea;
  const engages = engagement <= stroke;

  const mainConstant = main * mainVolume ** n;
  const negativeConstant = negative * negativeVolume ** n;
  const sharedConstant = engages ? (mainVolume * main ** (1 / n) + secondaryVolume * secondary ** (1 / n)) ** n : 0;
  const ambientForce = (positiveArea - negativeArea) * ambient;

  const acts = (x: number): boolean => engages && x >= engagement;
  const positiveVolumeAt = (x: number): Volume =>
    cubicMetres(mainVolume - positiveArea * x + (acts(x) ? secondaryVolume : 0));
  const positivePressureAt = (x: number, volume: number): number =>
    (acts(x) ? sharedConstant : mainConstant) / volume ** n;
  const negativeVolumeAt = (x: number): Volume => cubicMetres(negativeVolume + negativeArea * x);

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
      const aloneUntil = acts(x) ? engagementVolume : positiveVolumeAt(x);
      const alone = polytropicWork(main, mainVolume, aloneUntil, n);
      const together = acts(x)
        ? polytropicWork(secondary, cubicMetres(engagementVolume + secondaryVolume), positiveVolumeAt(x), n)
        : 0;
      const opposite = polytropicWork(negative, negativeVolume, negativeVolumeAt(x), n);
      return joules(alone + together + opposite - ambientForce * x);
    },
  };
}

/** Pressure (absolute, Pa) of the positive side when `taken` m³ of the main chamber are taken slowly, so isothermally. */
function slowPressure(
  mainVolume: number,
  taken: number,
  main: number,
  secondaryVolume: number,
  secondary: number,
): number {
  const alone = (main * mainVolume) / (mainVolume - taken);
  if (alone <= secondary) return alone;
  return (main * mainVolume + secondary * secondaryVolume) / (mainVolume - taken + secondaryVolume);
}
