/**
 * What a bike's own measurements say about the model: the load first, then the
 * chamber volume, by least squares in the sag.
 *
 *   S(L) = Σ (X_i(L) − x_i)² least      0 = Σ (X_i − x_i) / k_i(X_i)
 *   S(L, V) least over V, with the best L for each V
 *
 * x_i measured sag, m · X_i sag that the spring of measurement i has under the
 * load L, N · k_i its rate there · V volume of the main chamber, m³. Source:
 * least squares, any textbook of statistics; sag is what carries the error of
 * measurement, so it is what the squares are taken of.
 */
import { STANDARD_GRAVITY } from "#core/quantity/constants.ts";
import {
  type Angle,
  cubicMetres,
  type Force,
  type Length,
  type Mass,
  metres,
  newtons,
  type Volume,
} from "#core/quantity/quantity.ts";
import { finite, positive, within, withinStroke } from "./input.ts";
import { leastOf } from "./minimise.ts";
import { notPossible, PhysicsError, type Possible, possible } from "./problem.ts";
import { staticSag } from "./sag.ts";
import { solveBracketed } from "./solve.ts";
import type { Spring } from "./spring.ts";

/** A sag (m, inside the stroke) measured with the spring that was set then; built with exponent 1, because sag is slow. */
export interface SagMeasurement {
  readonly spring: Spring;
  readonly sag: Length;
}

/** A fitted load, and what it leaves unexplained. */
export interface LoadFit {
  /** The load on the spring, N. */
  readonly load: Force;
  /** Measured less fitted sag (m) of each measurement, in their order. */
  readonly residuals: readonly Length[];
  /** Root of the mean of the squared residuals, m. */
  readonly rootMeanSquare: Length;
}

/** A fitted load and chamber volume. */
export interface LoadAndVolumeFit extends LoadFit {
  readonly volume: Volume;
}

/** A sag measured with a setting whose spring depends on the chamber volume (m³) that is to be found. */
export interface SagAtVolume {
  readonly build: (volume: Volume) => Spring;
  readonly sag: Length;
}

/** The finest sag that a person reads off the leg of a fork, m. Common practice, no source. */
const READABLE_SAG = 0.0001;

/** The load (N) that explains one or more measured sags best. @throws PhysicsError without a measurement or with a sag outside the stroke. */
export function fitLoad(measurements: readonly SagMeasurement[]): LoadFit {
  if (measurements.length === 0)
    throw new PhysicsError("too few measurements", "To fit a load, at least one sag must be measured.", {
      measurements: 0,
    });
  const loads = measurements.map(({ spring, sag }) => {
    withinStroke(sag, spring.stroke);
    return spring.force(sag);
  });
  const pull = (load: number): number =>
    measurements.reduce((sum, { spring, sag }) => {
      const reached = sagUnder(spring, load);
      return sum + (reached - sag) / spring.rate(reached);
    }, 0);
  // At the least of the loads no sag is too deep, at the greatest none too small: between them lies the best.
  const least = Math.min(...loads);
  const load = solveBracketed(pull, least, Math.max(...loads)) ?? least;
  const residuals = measurements.map(({ spring, sag }) => metres(sag - sagUnder(spring, load)));
  return { load: newtons(load), residuals, rootMeanSquare: rootMeanSquare(residuals) };
}

/**
 * The load (N) and the chamber volume (m³, from `low` to `high`) that explain sags measured with two
 * or more different settings best. "measurements do not tell" when no volume in the range is
 * distinguished: the settings are too alike, or the best volume lies outside the range.
 * @throws PhysicsError with fewer than two measurements, or a volume in the range that cannot be built.
 */
export function fitLoadAndVolume(search: {
  readonly measurements: readonly SagAtVolume[];
  readonly low: Volume;
  readonly high: Volume;
}): Possible<LoadAndVolumeFit> {
  const { measurements } = search;
  if (measurements.length < 2)
    throw new PhysicsError("too few measurements", "To fit a chamber volume, two settings or more must be measured.", {
      measurements: measurements.length,
    });
  const low = positive("Lower bound of the volume in m³", search.low);
  const high = finite("Upper bound of the volume in m³", search.high);
  within("Lower bound of the volume in m³", low, 0, high);
  const fitAt = (volume: number): LoadFit =>
    fitLoad(measurements.map(({ build, sag }) => ({ spring: build(cubicMetres(volume)), sag })));
  const error = (volume: number): number => fitAt(volume).rootMeanSquare;

  const best = leastOf(error, low, high);
  const contrast = Math.max(error(low), error(high)) - error(best.at);
  if (best.atEnd || contrast < READABLE_SAG) return notPossible("measurements do not tell");
  return possible({ ...fitAt(best.at), volume: cubicMetres(best.at) });
}

/**
 * The front share that puts `load` (N, > 0) along a fork at `angleFromVertical` (rad) under `sprungMass` (kg, > 0).
 * "no share between none and all" when the load is more than the whole mass would give: some input is wrong.
 */
export function fitFrontShare(fork: {
  readonly load: Force;
  readonly sprungMass: Mass;
  readonly angleFromVertical: Angle;
}): Possible<number> {
  const angle = within("Angle of the fork from the vertical in rad", fork.angleFromVertical, 0, Math.PI / 2);
  const whole = positive("Sprung mass in kg", fork.sprungMass) * STANDARD_GRAVITY * Math.cos(angle);
  const share = positive("Load in N", fork.load) / whole;
  return share < 1 ? possible(share) : notPossible("no share between none and all");
}

/** The sag that a reader would see: a part that tops out or bottoms out is seen at that end. */
function sagUnder(spring: Spring, load: number): Length {
  const sag = staticSag(spring, newtons(load));
  if (sag.possible) return sag.value;
  return sag.reason === "tops out" ? metres(0) : spring.stroke;
}

function rootMeanSquare(residuals: readonly Length[]): Length {
  return metres(Math.sqrt(residuals.reduce((sum, residual) => sum + residual ** 2, 0) / residuals.length));
}
