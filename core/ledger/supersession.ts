import type { LedgerRecord } from "./record.ts";

/** The records of one subject in order, and which of them are current. */
export type Supersession<Value = unknown> = {
  /** What was superseded before what superseded it; otherwise by id. */
  readonly history: readonly LedgerRecord<Value>[];
  /** The records that nothing supersedes, sorted by id. Empty only when there are no records. */
  readonly heads: readonly LedgerRecord<Value>[];
};

/**
 * Works out what supersedes what among the records of one subject (rules M1,
 * M5 and M6). Records that supersede each other in a circle, which only a
 * faulty or hostile writer can make, have no effect on each other; so at least
 * one record is always current. Finds circles as strongly connected components
 * (R. Tarjan, 1972, SIAM J. Comput. 1(2), 146-160), which come out with the
 * superseded first; time grows with the number of records and links.
 */
export function traceSupersession<Value>(records: ReadonlyMap<string, LedgerRecord<Value>>): Supersession<Value> {
  const circles = circlesOf(records);
  const circleOf = new Map<string, number>();
  for (const [position, circle] of circles.entries()) for (const id of circle) circleOf.set(id, position);
  const superseded = new Set<string>();
  for (const record of records.values()) {
    for (const target of effectiveTargets(record, records)) {
      if (circleOf.get(target) !== circleOf.get(record.id)) superseded.add(target);
    }
  }
  const history = circles.flat().map((id) => present(records, id));
  const heads = history.filter(({ id }) => !superseded.has(id)).sort(byId);
  return { history, heads };
}

/** Ids that the record supersedes and that are other records of the same subject; sorted, each once. */
export function effectiveTargets(record: LedgerRecord, records: ReadonlyMap<string, LedgerRecord>): string[] {
  return [...new Set(record.supersedes)].filter((id) => id !== record.id && records.has(id)).sort();
}

/** Orders records by id. */
export function byId(one: LedgerRecord, other: LedgerRecord): number {
  return one.id < other.id ? -1 : one.id > other.id ? 1 : 0;
}

type Frame = { readonly id: string; readonly targets: readonly string[]; next: number; low: number };

// Iterative, because a chain of ten thousand records would overflow a recursive walk.
function circlesOf(records: ReadonlyMap<string, LedgerRecord>): string[][] {
  const indexOf = new Map<string, number>();
  const open = new Set<string>();
  const path: string[] = [];
  const circles: string[][] = [];
  const enter = (id: string): Frame => {
    const index = indexOf.size;
    indexOf.set(id, index);
    open.add(id);
    path.push(id);
    return { id, targets: effectiveTargets(present(records, id), records), next: 0, low: index };
  };
  for (const root of [...records.keys()].sort()) {
    if (indexOf.has(root)) continue;
    const frames = [enter(root)];
    for (let frame = frames.at(-1); frame !== undefined; frame = frames.at(-1)) {
      const target = frame.targets[frame.next++];
      if (target !== undefined) {
        const seen = indexOf.get(target);
        if (seen === undefined) frames.push(enter(target));
        else if (open.has(target)) frame.low = Math.min(frame.low, seen);
        continue;
      }
      frames.pop();
      const caller = frames.at(-1);
      if (caller !== undefined) caller.low = Math.min(caller.low, frame.low);
      if (frame.low === indexOf.get(frame.id)) {
        const circle = path.splice(path.lastIndexOf(frame.id));
        for (const id of circle) open.delete(id);
        circles.push(circle.sort());
      }
    }
  }
  return circles;
}

function present<Value>(records: ReadonlyMap<string, LedgerRecord<Value>>, id: string): LedgerRecord<Value> {
  const record = records.get(id);
  if (record === undefined) throw new Error(`The record ${id} vanished while its subject was read.`);
  return record;
}
