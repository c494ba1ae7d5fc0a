/** What was done to one part, on whichever bike it was: its stays, and the settings that were made on it. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { adjusterPath } from "#core/team/adjuster.ts";
import type { Part } from "#core/team/part.ts";
import { partStays, type Stay, wasOn } from "#core/team/part-stays.ts";
import { bikeKind, partKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";

/** A time on one bike, or on none, with the changes that were made on it then, newest first. */
export interface StayWithChanges extends Stay {
  readonly changes: readonly Change[];
}

export interface PartHistory {
  readonly part: Part;
  /** Newest first: where it is now, then where it was before; empty while that is in dispute. */
  readonly stays: readonly StayWithChanges[];
}

/**
 * The history of a part, or undefined for one that is not known. A change belongs to the part that was at its place of its
 * bike by the writers' clocks.
 * @param bikeId the bike that the part is on by that bike's data, as long as it was never moved
 */
export function partHistory(ledger: Ledger, partId: string, bikeId: string | undefined): PartHistory | undefined {
  const part = knownValue(ledger, partKind, partId);
  if (!part) return undefined;
  const stays = partStays(ledger, partId, bikeId).map((stay) => ({
    ...stay,
    changes: changesDuring(ledger, part, stay),
  }));
  return { part, stays: stays.reverse() };
}

function changesDuring(ledger: Ledger, part: Part, { bikeId, from, until }: Stay): readonly Change[] {
  const riderId = bikeId === undefined ? undefined : knownValue(ledger, bikeKind, bikeId)?.rider;
  if (riderId === undefined) return [];
  return part.adjusters
    .flatMap(({ kind }) => changelog(ledger, { riderId, path: adjusterPath(part.place, kind) }))
    .filter((change) => change.bikeId === bikeId && wasOn([{ bikeId, from, until }], bikeId, Date.parse(change.at)))
    .sort((a, b) => (a.at === b.at ? (a.id < b.id ? 1 : -1) : a.at < b.at ? 1 : -1));
}
