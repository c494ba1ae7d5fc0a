/** Views of the team: who rides which bike, with which parts on it. */

import { type Current, type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { type Adjuster, type AdjusterPath, adjusterKinds, adjusterPath, parseAdjusterPath } from "./adjuster.ts";
import type { Baseline } from "./baseline.ts";
import type { Bike } from "./bike.ts";
import { type CourseType, courseTypes } from "./course-type.ts";
import { knownValue } from "./known-value.ts";
import { adjusterOf, type Part } from "./part.ts";
import { placesOf } from "./parts-on-bike.ts";
import type { Member, Rider } from "./people.ts";
import { type Place, places } from "./place.ts";
import { baselineKind, bikeKind, memberKind, riderKind } from "./record-kinds.ts";

export { knownValue } from "./known-value.ts";

/** A rider with the bike under him: what all advice is about. */
export interface RiderBike {
  readonly riderId: string;
  readonly rider: Rider;
  readonly bikeId: string;
  readonly bike: Bike;
  readonly parts: Readonly<Partial<Record<Place, Part>>>;
}

/** One adjuster on a bike, with its address. */
export interface MountedAdjuster {
  readonly path: AdjusterPath;
  readonly place: Place;
  readonly part: Part;
  readonly adjuster: Adjuster;
}

/** All members, by id, sorted by name. */
export function members(ledger: Ledger): readonly { readonly id: string; readonly member: Member }[] {
  return ledger
    .keys(memberKind)
    .flatMap((id) => {
      const member = knownValue(ledger, memberKind, id);
      return member ? [{ id, member }] : [];
    })
    .sort((a, b) => a.member.name.localeCompare(b.member.name, "en"));
}

/** The rider of `riderId` with his bike, or undefined while one of the two is not known. */
export function riderBike(ledger: Ledger, riderId: string): RiderBike | undefined {
  const rider = knownValue(ledger, riderKind, riderId);
  const bike = rider && knownValue(ledger, bikeKind, rider.bike);
  if (!rider || !bike) return undefined;
  return { riderId, rider, bikeId: rider.bike, bike, parts: partsOn(ledger, rider.bike, bike) };
}

/** A rider on a bike that need not be the one that he rides now, or undefined while one of the two is not known. */
export function riderOnBike(ledger: Ledger, bikeId: string): RiderBike | undefined {
  const bike = knownValue(ledger, bikeKind, bikeId);
  const rider = bike && knownValue(ledger, riderKind, bike.rider);
  return rider && { riderId: bike.rider, rider, bikeId, bike, parts: partsOn(ledger, bikeId, bike) };
}

/** All bikes of the team with their riders, by rider and then by name; one whose rider is not known is left out. */
export function allBikes(ledger: Ledger): readonly RiderBike[] {
  return ledger
    .keys(bikeKind)
    .flatMap((bikeId) => riderOnBike(ledger, bikeId) ?? [])
    .sort((a, b) => a.rider.name.localeCompare(b.rider.name, "en") || a.bike.name.localeCompare(b.bike.name, "en"));
}

/** The parts that are on a bike; one that is not known, belongs elsewhere on a bike, or is in dispute, is left out. */
export function partsOn(ledger: Ledger, bikeId: string, bike: Bike): RiderBike["parts"] {
  const parts: Partial<Record<Place, Part>> = {};
  const found = placesOf(ledger, bikeId, bike);
  for (const place of places) {
    const at = found[place];
    if (at.state === "mounted") parts[place] = at.part;
  }
  return parts;
}

/** All riders with their bikes, by plate, then by name. */
export function riderBikes(ledger: Ledger): readonly RiderBike[] {
  return ledger
    .keys(riderKind)
    .flatMap((id) => riderBike(ledger, id) ?? [])
    .sort(
      (a, b) =>
        (a.rider.plate ?? Number.POSITIVE_INFINITY) - (b.rider.plate ?? Number.POSITIVE_INFINITY) ||
        a.rider.name.localeCompare(b.rider.name, "en"),
    );
}

/** Every adjuster on a bike, fork first, and each part's in one order whatever its data say: springs, then dampers. */
export function mountedAdjusters(parts: RiderBike["parts"]): readonly MountedAdjuster[] {
  return places.flatMap((place) => {
    const part = parts[place];
    return part
      ? [...part.adjusters]
          .sort((a, b) => adjusterKinds.indexOf(a.kind) - adjusterKinds.indexOf(b.kind))
          .map((adjuster) => ({ path: adjusterPath(place, adjuster.kind), place, part, adjuster }))
      : [];
  });
}

/** The adjuster at `path` on a bike, if there is one. */
export function mountedAdjuster(parts: RiderBike["parts"], path: AdjusterPath): MountedAdjuster | undefined {
  const address = parseAdjusterPath(path);
  const part = address && parts[address.place];
  const adjuster = part && adjusterOf(part, address.kind);
  return adjuster && { path, place: address.place, part, adjuster };
}

/**
 * The baselines that a weekend starts from, and keeps: a version that was approved from this very weekend counts from the
 * next one on, or else today's sheet would ask for changes on the bike that it was made from.
 */
export function baselinesFor(
  ledger: Ledger,
  riderId: string,
  weekendId: string,
): Readonly<Partial<Record<CourseType, Baseline>>> {
  const baselines: Partial<Record<CourseType, Baseline>> = {};
  for (const type of courseTypes) {
    const current = ledger.current(baselineKind, `${riderId}/${type}`);
    const baseline = beforeWeekend(ledger, current, weekendId) ?? settledValue(current);
    if (baseline) baselines[type] = baseline;
  }
  return baselines;
}

/** The latest version that is not from the weekend; undefined when every version is. */
function beforeWeekend(ledger: Ledger, current: Current<Baseline>, weekendId: string): Baseline | undefined {
  let version = current;
  while (version.state === "settled" && version.value.weekend === weekendId) {
    const head = version.heads[0];
    const before = head && ledger.before(head.id);
    if (!before) return undefined;
    version = before.current as Current<Baseline>;
  }
  return settledValue(version);
}
