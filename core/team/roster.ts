/** Views of the team: who rides which bike, with which parts on it. */

import type { RecordKind } from "#core/ledger/kind.ts";
import { type Current, type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { type Adjuster, type AdjusterPath, adjusterKinds, adjusterPath, parseAdjusterPath } from "./adjuster.ts";
import type { Baseline } from "./baseline.ts";
import type { Bike } from "./bike.ts";
import { type CourseType, courseTypes } from "./course-type.ts";
import { adjusterOf, type Part } from "./part.ts";
import type { Member, Rider } from "./people.ts";
import { type Place, places } from "./place.ts";
import { baselineKind, bikeKind, memberKind, partKind, riderKind } from "./record-kinds.ts";

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

/**
 * What is known of an entity: its settled value, or, while fields of it are in dispute, the merged value in which those
 * fields stand as they last were agreed.
 */
export function knownValue<Value>(ledger: Ledger, kind: RecordKind<Value>, key: string): Value | undefined {
  const current = ledger.current(kind, key);
  return current.state === "disputed" ? current.value : settledValue(current);
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
  return { riderId, rider, bikeId: rider.bike, bike, parts: partsOn(ledger, bike) };
}

/** The parts that are on a bike; one that is not known, or belongs elsewhere on a bike, is left out. */
export function partsOn(ledger: Ledger, bike: Bike): RiderBike["parts"] {
  const parts: Partial<Record<Place, Part>> = {};
  for (const place of places) {
    const id = bike.parts[place];
    const part = id === undefined ? undefined : knownValue(ledger, partKind, id);
    if (part?.place === place) parts[place] = part;
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
