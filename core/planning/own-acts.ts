/** What one member did last on one device, as the records that an undo takes back. */
import type { RecordKind } from "#core/ledger/kind.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type LedgerRecord, splitSubject } from "#core/ledger/record.ts";

/** Whose acts: one member on one device. */
export interface Actor {
  readonly memberId: string;
  readonly deviceId: string;
}

/**
 * Whether a record can be taken back: it alone is what holds, so that nothing is touched that somebody has done since and no
 * dispute is settled without a look at the bike, and there was one state before it. What settled a dispute has none.
 */
export function canTakeBack(ledger: Ledger, id: string): boolean {
  const record = ledger.record(id);
  const before = ledger.before(id);
  if (!record || !before || before.missing.length > 0 || before.current.state === "disputed") return false;
  const { kind, key } = splitSubject(record.subject);
  const known = ledger.registry.find(kind);
  return known !== undefined && holdsAlone(ledger, ledger.heads(known, key), id);
}

/** It is the only head, or what an undo of all that came after it has gone back to. */
function holdsAlone(ledger: Ledger, heads: readonly LedgerRecord[], id: string): boolean {
  const [head] = heads;
  if (!head || heads.length > 1) return false;
  if (head.id === id) return true;
  if (head.cause?.type !== "revert") return false;
  const restored = ledger.before(head.cause.record)?.current;
  return restored?.state === "settled" && holdsAlone(ledger, restored.heads, id);
}

/**
 * The member's own records that hold alone, newest first; an undo is no act of its own. With an owner only under
 * keys of that owner, such as a rider.
 */
export function ownHeads(
  ledger: Ledger,
  kinds: readonly RecordKind[],
  { memberId, deviceId }: Actor,
  owner?: string,
): readonly LedgerRecord[] {
  return kinds
    .flatMap((kind) =>
      ledger.keys(kind, owner).flatMap((key): readonly LedgerRecord[] => {
        const current = ledger.current<unknown>(kind, key);
        return current.state === "settled" && current.heads.length === 1 ? current.heads : [];
      }),
    )
    .filter((head) => head.by === memberId && head.device === deviceId && head.cause?.type !== "revert")
    .sort((a, b) => (a.id < b.id ? 1 : -1));
}

/** The newest of `own` with all that was written in one batch with it; undefined where part of it cannot be taken back. */
export function lastBatch(ledger: Ledger, own: readonly LedgerRecord[]): readonly LedgerRecord[] | undefined {
  const [last] = own;
  if (!last) return undefined;
  const records = last.batch === undefined ? [last] : own.filter(({ batch }) => batch === last.batch);
  return records.every(({ id }) => canTakeBack(ledger, id)) ? records : undefined;
}
