/** What is known of an entity, also while somebody disagrees. */
import type { RecordKind } from "#core/ledger/kind.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";

/**
 * What is known of an entity: its settled value, or, while fields of it are in dispute, the merged value in which those
 * fields stand as they last were agreed.
 */
export function knownValue<Value>(ledger: Ledger, kind: RecordKind<Value>, key: string): Value | undefined {
  const current = ledger.current(kind, key);
  return current.state === "disputed" ? current.value : settledValue(current);
}
