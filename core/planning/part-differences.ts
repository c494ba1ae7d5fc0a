/** How the parts and dimensions of two bikes differ, as facts: the words are the screen's. */
import { type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import type { Part } from "#core/team/part.ts";
import { type Place, places } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";

/** What a part or a bike is described by; a closed list, for which the screen has words. */
export const comparedDimensions = [
  "stroke",
  "positiveArea",
  "negativeArea",
  "positiveVolume",
  "negativeVolume",
  "equalisingStroke",
  "secondaryVolume",
  "spacerVolume",
  "threadPitch",
  "tyreMarkedMaximum",
  "rimMarkedMaximum",
  "forkAngle",
  "sprungMass",
  "rearWheelTravel",
  "riderMass",
] as const;
export type ComparedDimension = (typeof comparedDimensions)[number];

export type PartDifference =
  | { readonly type: "no part"; readonly place: Place; readonly missingOn: "from" | "to" }
  | { readonly type: "name"; readonly place: Place; readonly from: string; readonly to: string }
  | {
      readonly type: "archetype";
      readonly place: Place;
      readonly from: Part["archetype"];
      readonly to: Part["archetype"];
    }
  | {
      readonly type: "dimension";
      /** Absent for a dimension of the bike or the rider. */
      readonly place: Place | undefined;
      readonly dimension: ComparedDimension;
      readonly from: TypedQuantity | undefined;
      readonly to: TypedQuantity | undefined;
    }
  /** Wheel travel over the shock's stroke. */
  | { readonly type: "leverage"; readonly place: "shock"; readonly from: number; readonly to: number };

/** All differences, bike and rider first, then part by part; empty when both are alike. */
export function partDifferences(from: RiderBike, to: RiderBike): readonly PartDifference[] {
  const bikes = (["forkAngle", "sprungMass", "rearWheelTravel"] as const).flatMap((dimension) =>
    dimensionDifference(undefined, dimension, from.bike[dimension], to.bike[dimension]),
  );
  const mass = dimensionDifference(undefined, "riderMass", from.rider.mass, to.rider.mass);
  return [...bikes, ...mass, ...places.flatMap((place) => differencesAt(place, from, to))];
}

/** True for a difference that makes the same number another spring, and the sag another one. */
export function changesTheSpring({ difference, place }: { difference: PartDifference; place: Place }): boolean {
  if (difference.type === "dimension" && difference.place === undefined) {
    return difference.dimension === "rearWheelTravel"
      ? place === "shock"
      : difference.dimension !== "forkAngle" || place === "fork";
  }
  return difference.place === place && difference.type !== "name" && difference.type !== "no part";
}

function differencesAt(place: Place, from: RiderBike, to: RiderBike): readonly PartDifference[] {
  const [here, there] = [from.parts[place], to.parts[place]];
  if (!here && !there) return [];
  if (!here || !there) return [{ type: "no part", place, missingOn: here ? "to" : "from" }];
  const found: PartDifference[] = [];
  if (here.name !== there.name) found.push({ type: "name", place, from: here.name, to: there.name });
  if (here.archetype !== there.archetype) {
    found.push({ type: "archetype", place, from: here.archetype, to: there.archetype });
  }
  for (const dimension of comparedDimensions) {
    found.push(...dimensionDifference(place, dimension, geometryOf(here)[dimension], geometryOf(there)[dimension]));
  }
  const [leverageHere, leverageThere] = [leverageOf(from), leverageOf(to)];
  if (place === "shock" && leverageHere && leverageThere && Math.abs(leverageHere - leverageThere) > 1e-6) {
    found.push({ type: "leverage", place, from: leverageHere, to: leverageThere });
  }
  return found;
}

function geometryOf(part: Part): { readonly [Dimension in ComparedDimension]?: TypedQuantity | undefined } {
  return part.geometry;
}

function leverageOf({ bike, parts }: RiderBike): number | undefined {
  const shock = parts.shock;
  if (!bike.rearWheelTravel || !shock || shock.archetype === "tyre") return undefined;
  return toSi(bike.rearWheelTravel) / toSi(shock.geometry.stroke);
}

/** As far as people can measure: a millionth of the value is no difference between two units. */
function dimensionDifference(
  place: Place | undefined,
  dimension: ComparedDimension,
  from: TypedQuantity | undefined,
  to: TypedQuantity | undefined,
): readonly PartDifference[] {
  if (!from && !to) return [];
  if (from && to && Math.abs(toSi(from) - toSi(to)) <= 1e-6 * Math.abs(toSi(from))) return [];
  return [{ type: "dimension", place, dimension, from, to }];
}
