/** Everything that two people have said differently, and that somebody has to look at. */
import type { Ledger } from "#core/ledger/ledger.ts";
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
  const open: Dispute[] = [];
  for (const kind of ledger.registry.kinds) {
    for (const key of ledger.keys(kind)) {
      const current = ledger.current(kind, key);
      if (current.state !== "disputed") continue;
      open.push({
        kind: kind.kind,
        key,
        fields: current.fields ? Object.keys(current.fields) : undefined,
        claims: current.claims,
      });
    }
  }
  return open;
}
