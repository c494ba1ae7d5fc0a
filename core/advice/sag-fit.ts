/**
 * Fits the model of one end to the sags that were measured on it: first the
 * load, then, with two or more main pressures, the volume of the main chamber.
 * Measured sag beats what the masses and the part's data say.
 */
import { fitLoad, fitLoadAndVolume, type LoadFit } from "#core/physics/fit.ts";
import { PhysicsError } from "#core/physics/problem.ts";
import type { Spring } from "#core/physics/spring.ts";
import { cubicMetres, joules, type Length, newtons, newtonsPerMetre, type Volume } from "#core/quantity/quantity.ts";

/** One measurement, ready for the fit: loads are compared at the rider's mass of today. */
export interface FittableSag {
  /** m, inside the stroke. */
  readonly sag: Length;
  /** Sprung mass today over that at the measurement. */
  readonly massRatio: number;
  /** The spring as it was set then, with a chamber volume (m³) or the part's own; undefined when the values make none. */
  build(volume: Volume | undefined): Spring | undefined;
}

/** What the measurements say. */
export interface SagFit extends LoadFit {
  /** m³; absent while the measurements do not tell it. */
  readonly volume?: Volume;
}

/** How far the chamber volume may be from the part's own data, as a factor. Common practice, no source: beyond it the data are wrong. */
const VOLUME_RANGE = { low: 0.75, high: 1.35 } as const;

/**
 * The fit, or undefined without a usable measurement. `chamber` is the part's main chamber where its volume can be
 * fitted: its volume (m³), the least that its stroke needs, and how many different pressures were measured.
 */
export function fitSags(
  measured: readonly FittableSag[],
  chamber?: { readonly volume: Volume; readonly least: Volume; readonly pressures: number },
): SagFit | undefined {
  const usable = measured.filter(({ sag, build }) => {
    const spring = build(undefined);
    return spring !== undefined && sag > 0 && sag < spring.stroke;
  });
  if (usable.length === 0) return undefined;
  const byVolume = chamber && chamber.pressures >= 2 && usable.length >= 2 ? fitVolume(usable, chamber) : undefined;
  return byVolume ?? fitLoad(usable.map((entry) => ({ spring: scaled(entry, undefined), sag: entry.sag })));
}

function fitVolume(
  usable: readonly FittableSag[],
  { volume, least }: { readonly volume: Volume; readonly least: Volume },
): SagFit | undefined {
  try {
    const fit = fitLoadAndVolume({
      measurements: usable.map((entry) => ({ build: (tried) => scaled(entry, tried), sag: entry.sag })),
      low: cubicMetres(Math.max(volume * VOLUME_RANGE.low, least * 1.02)),
      high: cubicMetres(volume * VOLUME_RANGE.high),
    });
    return fit.possible ? fit.value : undefined;
  } catch (error) {
    if (error instanceof PhysicsError) return undefined;
    throw error;
  }
}

/** The spring with its forces brought to the rider's mass of today, so that all measurements share one load. */
function scaled({ build, massRatio }: FittableSag, volume: Volume | undefined): Spring {
  const spring = build(volume);
  if (!spring)
    throw new PhysicsError("not positive", "The values of a measurement make no spring with this volume.", {});
  return {
    stroke: spring.stroke,
    force: (x) => newtons(spring.force(x) * massRatio),
    rate: (x) => newtonsPerMetre(spring.rate(x) * massRatio),
    energy: (x) => joules(spring.energy(x) * massRatio),
  };
}
