/**
 * Results that are worked out once for each state of the records that they follow from, and given again until one of these
 * changes: a season has thousands of records, a write makes one, and a screen asks for much that follows from all of them.
 */
import type { RecordKind } from "./kind.ts";
import type { Ledger } from "./ledger.ts";

/** @param kinds all kinds that `work` reads, and no other */
export function onceForEachState<Value>(
  kinds: readonly RecordKind[],
  work: (ledger: Ledger) => Value,
): (ledger: Ledger) => Value {
  const known = new WeakMap<Ledger, Known<Value>>();
  return (ledger) => {
    const stamp = kinds.reduce((sum, kind) => sum + ledger.stamp(kind), 0);
    const before = known.get(ledger);
    if (before?.stamp === stamp) return before.value;
    const value = work(ledger);
    known.set(ledger, { stamp, value });
    return value;
  };
}

/**
 * The same for each owner of keys, such as a rider: only the records of that owner count.
 * @param kinds all kinds that `work` reads, of the owner's records, and no other
 */
export function onceForEachOwner<Value>(
  kinds: readonly RecordKind[],
  work: (ledger: Ledger, owner: string) => Value,
): (ledger: Ledger, owner: string) => Value {
  const known = new WeakMap<Ledger, Map<string, Known<Value>>>();
  return (ledger, owner) => {
    const stamp = kinds.reduce((sum, kind) => sum + ledger.stamp(kind, owner), 0);
    const byOwner = known.get(ledger) ?? new Map<string, Known<Value>>();
    known.set(ledger, byOwner);
    const before = byOwner.get(owner);
    if (before?.stamp === stamp) return before.value;
    const value = work(ledger, owner);
    byOwner.set(owner, { stamp, value });
    return value;
  };
}

/** Each stamp only ever grows, so their sum stays the same only while all of them do. */
type Known<Value> = { readonly stamp: number; readonly value: Value };
