/** On which bikes a part was, and from when until when. */
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { Mounting } from "./mounting.ts";
import { mountingKind } from "./record-kinds.ts";

/** A time on one bike, or on none; `from` and `until` in ms since 1970, absent for "ever since" and "until now". */
export interface Stay {
  readonly bikeId: string | undefined;
  readonly from: number | undefined;
  readonly until: number | undefined;
}

/**
 * The stays of a part, oldest first, by the writers' clocks, since nothing else knows when a hand moved it. What was
 * undone never was, and of moves that were in dispute only the one that was found to be so.
 * @param bikeId the bike that the part is on by that bike's data, as long as it was never moved
 * @returns the last stay is where it is now; empty while that is in dispute
 */
export function partStays(ledger: Ledger, partId: string, bikeId: string | undefined): readonly Stay[] {
  const current = ledger.current(mountingKind, partId);
  if (current.state === "disputed") return [];
  const moves = current.state === "absent" ? [] : movesThatWere(ledger, partId, current.heads[0]);
  const first = moves[0] ? moves[0].mounting.from : bikeId;
  const stays = [{ bikeId: first, at: undefined }, ...moves.map(({ at, mounting }) => ({ bikeId: mounting.bike, at }))];
  return stays.map(({ bikeId: on, at }, index) => ({ bikeId: on, from: at, until: stays[index + 1]?.at }));
}

/** True while the part was on that bike at a moment (ms since 1970). */
export function wasOn(stays: readonly Stay[], bikeId: string, at: number): boolean {
  return stays.some(
    (stay) =>
      stay.bikeId === bikeId &&
      (stay.from === undefined || at >= stay.from) &&
      (stay.until === undefined || at < stay.until),
  );
}

interface Move {
  readonly at: number;
  readonly mounting: Mounting;
}

/** Follows what each record stands on, from the one that holds back to the first; oldest first. */
function movesThatWere(ledger: Ledger, partId: string, head: LedgerRecord<Mounting> | undefined): readonly Move[] {
  const byId = new Map(ledger.history(mountingKind, partId).map((record) => [record.id, record]));
  const seen = new Set<string>();
  const moves: Move[] = [];
  const before = ({ supersedes }: LedgerRecord) => supersedes.flatMap((id) => byId.get(id) ?? []);
  let record = head;
  while (record && !seen.has(record.id)) {
    seen.add(record.id);
    const here: LedgerRecord<Mounting> = record;
    const earlier = before(here);
    const undone = here.cause?.type === "revert" ? byId.get(here.cause.record) : undefined;
    const found =
      here.cause?.type === "resolution" ? earlier.find(({ value }) => isSame(value, here.value)) : undefined;
    if (undone) record = before(undone)[0];
    else if (found) record = found;
    else {
      if (here.value) moves.push({ at: Date.parse(here.at), mounting: here.value });
      // None of the claims of a dispute was so: the move began from what was before them.
      record = here.cause?.type === "resolution" && earlier[0] ? before(earlier[0])[0] : earlier[0];
    }
  }
  return moves.reverse();
}

function isSame(a: Mounting | undefined, b: Mounting | undefined): boolean {
  return a !== undefined && b !== undefined && a.bike === b.bike;
}
