/** What was done to one part, on whichever bike it was: its stays, and the settings that were made on it. */
import type { Ledger } from "#core/ledger/ledger.ts";
import type { Part } from "#core/team/part.ts";
import { partStays, type Stay } from "#core/team/part-stays.ts";
import { partKind } from "#core/team/record-kinds.ts";
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
 * @param changes of all riders, newest first, when they are known already
 */
export function partHistory(
  ledger: Ledger,
  partId: string,
  bikeId: string | undefined,
  changes: readonly Change[] = changelog(ledger),
): PartHistory | undefined {
  const part = knownValue(ledger, partKind, partId);
  if (!part) return undefined;
  const ofPlace = changes.filter(({ path }) => path.startsWith(`${part.place}.`));
  const stays = partStays(ledger, partId, bikeId).map((stay) => ({
    ...stay,
    changes: ofPlace.filter((change) => change.bikeId === stay.bikeId && isWithin(stay, Date.parse(change.at))),
  }));
  return { part, stays: stays.reverse() };
}

function isWithin({ from, until }: Stay, at: number): boolean {
  return (from === undefined || at >= from) && (until === undefined || at < until);
}
