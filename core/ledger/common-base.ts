import type { LedgerRecord } from "./record.ts";
import { byId, effectiveTargets } from "./supersession.ts";

/**
 * The nearest common ancestors of several heads of one subject, sorted by id
 * (rule M4). An ancestor is what a record supersedes, directly or through
 * others; it is nearest when no other common ancestor supersedes it.
 */
export function nearestCommonAncestors<Value>(
  heads: readonly LedgerRecord<Value>[],
  records: ReadonlyMap<string, LedgerRecord<Value>>,
): readonly LedgerRecord<Value>[] {
  const [first, ...others] = heads.map((head) => ancestorsOf(head, records));
  if (first === undefined) return [];
  const headIds = new Set(heads.map(({ id }) => id));
  const common = new Map(
    [...first].filter(([id]) => !headIds.has(id) && others.every((ancestors) => ancestors.has(id))),
  );
  // Ancestors of a common ancestor are common too, so the nearest are those that no other one supersedes directly.
  const nearest = new Map(common);
  for (const record of common.values()) for (const id of effectiveTargets(record, common)) nearest.delete(id);
  return [...nearest.values()].sort(byId);
}

function ancestorsOf<Value>(
  head: LedgerRecord<Value>,
  records: ReadonlyMap<string, LedgerRecord<Value>>,
): Map<string, LedgerRecord<Value>> {
  const found = new Map<string, LedgerRecord<Value>>();
  const work = [head];
  for (let at = work.pop(); at !== undefined; at = work.pop()) {
    for (const id of effectiveTargets(at, records)) {
      const ancestor = records.get(id);
      if (ancestor === undefined || found.has(id)) continue;
      found.set(id, ancestor);
      work.push(ancestor);
    }
  }
  return found;
}
