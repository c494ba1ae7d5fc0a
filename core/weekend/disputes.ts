/** Everything that two people have said differently, and that somebody has to look at. */
import type { RecordKind } from "#core/ledger/kind.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { onceForEachOwner } from "#core/ledger/once-for-each-state.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";

export interface Dispute {
  readonly kind: string;
  readonly key: string;
  /** For an entity that merges by fields: those in dispute. Absent when the whole value is. */
  readonly fields: readonly string[] | undefined;
  readonly claims: readonly LedgerRecord[];
}

/** All open disputes of the kinds that the ledger understands, by kind and key. */
export function disputes(ledger: Ledger): readonly Dispute[] {
  return ledger.registry.kinds.flatMap((kind) =>
    ledger.owners(kind).flatMap((owner) => disputesOf(kind)(ledger, owner)),
  );
}

const disputesByKind = new WeakMap<RecordKind, (ledger: Ledger, owner: string) => readonly Dispute[]>();

function disputesOf(kind: RecordKind): (ledger: Ledger, owner: string) => readonly Dispute[] {
  let known = disputesByKind.get(kind);
  if (known === undefined) {
    known = onceForEachOwner([kind], (ledger, owner) =>
      ledger.keys(kind, owner).flatMap((key): readonly Dispute[] => {
        const current = ledger.current(kind, key);
        if (current.state !== "disputed") return [];
        const fields = current.fields ? Object.keys(current.fields) : undefined;
        return [{ kind: kind.kind, key, fields, claims: current.claims }];
      }),
    );
    disputesByKind.set(kind, known);
  }
  return known;
}
