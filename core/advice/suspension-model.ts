/**
 * One end of the bike as physics sees it: the spring that its settings make, and
 * the load that it carries, both along the part.
 *
 * Until the load was fitted to a measured sag it is worked out from the masses
 * and a default front share, and says so: then only direction and rough size of
 * what follows can be trusted.
 */

import { ISOTHERMAL } from "#core/physics/gas.ts";
import { forkLoad, wheelLoad } from "#core/physics/sag.ts";
import type { Spring } from "#core/physics/spring.ts";
import { PASCALS_PER_PSI } from "#core/quantity/constants.ts";
import {
  cubicMetres,
  type Force,
  kilograms,
  type Length,
  type Mass,
  metres,
  newtons,
  radians,
  type Volume,
} from "#core/quantity/quantity.ts";
import { type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { Part } from "#core/team/part.ts";
import { type End, suspensionOf } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { partSpring } from "./part-spring.ts";
import { fitSags, type SagFit } from "./sag-fit.ts";

/** Part of the sprung weight on the front wheel, standing on level pedals, until it was fitted. Common practice, no source. */
export const DEFAULT_FRONT_SHARE = 0.4;

/** A sag that was measured, with what was set and where, and the rider's mass at the time. */
export interface MeasuredSag {
  readonly sag: TypedQuantity;
  readonly values: SetupValues;
  readonly heldAt: Surroundings;
  readonly mass: TypedQuantity;
}

export interface SuspensionModel {
  readonly end: End;
  readonly place: "fork" | "shock";
  readonly stroke: Length;
  /** Wheel travel over stroke: 1 for a fork, the mean leverage ratio for a shock. */
  readonly leverageRatio: number;
  /** Static load along the part. */
  readonly load: Force;
  /** The mass that moves with this end, seen at the part: that which gives the natural frequency with its rate. */
  readonly mass: Mass;
  /** True when the load comes from measured sag. */
  readonly fitted: boolean;
  /** How well the fit explains what was measured; absent when nothing was. */
  readonly fit?: {
    readonly measurements: number;
    /** Root of the mean squared difference of measured and fitted sag, m. */
    readonly rootMeanSquare: Length;
    /** The main chamber's volume (m³) as fitted, where two or more pressures told it. */
    readonly volume: Volume | undefined;
  };
  /** The spring that `values` make, or undefined while a value that it needs is not known, or they make none (secondary below main). */
  springWith(values: SetupValues, exponent: number): Spring | undefined;
}

/**
 * The model of one end, or undefined when the bike has no suspension there or its dimensions are not known.
 * Values are gauge pressures at the temperature of the ride, at the altitude of `surroundings`. `measured` are the sags
 * that were measured on this bike, with any settings; the latest ones are enough.
 */
export function suspensionModel(
  mounted: RiderBike,
  end: End,
  surroundings: Surroundings,
  measured: readonly MeasuredSag[] = [],
): SuspensionModel | undefined {
  const place = suspensionOf(end);
  const part = mounted.parts[place];
  if (!part || part.archetype === "tyre") return undefined;
  const stroke = metres(toSi(part.geometry.stroke));
  const leverageRatio = leverageRatioOf(mounted, end, stroke);
  if (leverageRatio === undefined) return undefined;
  const share = shareOf(mounted, end);
  const sprung = sprungMass(mounted, mounted.rider.mass);
  const fit = fitOf(mounted, part, place, measured);
  return {
    end,
    place,
    stroke,
    leverageRatio,
    load: fit?.load ?? assumedLoad(mounted, end, sprung, leverageRatio),
    mass: kilograms(sprung * share * leverageRatio ** 2),
    fitted: fit !== undefined,
    ...(fit && { fit: { measurements: measured.length, rootMeanSquare: fit.rootMeanSquare, volume: fit.volume } }),
    springWith: (values, exponent) => partSpring(part, values, surroundings, exponent, fit?.volume),
  };
}

function leverageRatioOf(mounted: RiderBike, end: End, stroke: Length): number | undefined {
  if (end === "front") return 1;
  const travel = mounted.bike.rearWheelTravel;
  return travel && toSi(travel) / stroke;
}

function shareOf({ rider }: RiderBike, end: End): number {
  const front = rider.frontShare ?? DEFAULT_FRONT_SHARE;
  return end === "front" ? front : 1 - front;
}

function sprungMass({ bike }: RiderBike, riderMass: TypedQuantity): Mass {
  return kilograms(toSi(riderMass) + toSi(bike.sprungMass));
}

function assumedLoad(mounted: RiderBike, end: End, sprung: Mass, leverageRatio: number): Force {
  const share = shareOf(mounted, end);
  if (end === "rear") return newtons(wheelLoad({ sprungMass: sprung, share }) * leverageRatio);
  return forkLoad({
    sprungMass: sprung,
    frontShare: share,
    angleFromVertical: radians(toSi(mounted.bike.forkAngle)),
  });
}

/** What the measured sags prove of the load, and of the main chamber's volume. */
function fitOf(
  mounted: RiderBike,
  part: Part,
  place: "fork" | "shock",
  measured: readonly MeasuredSag[],
): SagFit | undefined {
  const today = sprungMass(mounted, mounted.rider.mass);
  const entries = measured.map((entry) => ({
    sag: metres(toSi(entry.sag)),
    massRatio: today / sprungMass(mounted, entry.mass),
    build: (volume: Volume | undefined) => partSpring(part, entry.values, entry.heldAt, ISOTHERMAL, volume),
  }));
  if (part.archetype !== "air" && part.archetype !== "two-chamber air") return fitSags(entries);
  const pressures = new Set(
    measured.flatMap(({ values }) => {
      const value = values[adjusterPath(place, "main-pressure")];
      return value ? Math.round(toSi(value) / PASCALS_PER_PSI) : [];
    }),
  );
  const { geometry } = part;
  return fitSags(entries, {
    volume: cubicMetres(toSi(geometry.positiveVolume)),
    least: cubicMetres(toSi(geometry.positiveArea) * toSi(geometry.stroke)),
    pressures: pressures.size,
  });
}
