import type { Position } from "./update-order.ts";

/**
 * The most steps that putting an update into a document may take; at 50 to 100 ns a step it is a few seconds. A document
 * of 100,000 records by three devices that met every ten records takes a thousandth of it.
 */
export const allowedSteps = 50_000_000;

/** Entries of one client as an update brings them. */
export type Insertion = Position & {
  readonly length: number;
  /** The entry that the first one was put behind; null at the beginning. */
  readonly behind: Position | null;
  /** Put before another entry too: then the order of clients does not end its way. */
  readonly isBetween: boolean;
};

/** What the document holds already. */
export type KnownEntries = {
  /** How many entries of a client are known. */
  clock(client: number): number;
  /** How many items stand behind a known entry or the beginning (null), or behind those, counted up to `limit`. */
  followers(entry: Position | null, limit: number): number;
};

/**
 * An upper bound of the steps that putting insertions into the records takes. Entries behind one and the same entry, as
 * they come about when people write apart, stand in the order of their clients, and each passes those before it with all
 * that was put behind them one by one (P. Nicolaescu, K. Jahns, M. Derntl, R. Klamma, 2016, Near real-time peer-to-peer
 * shared editing on extensible data types, as yjs does it). What people write in turn stands at the end and passes next
 * to nothing; a hostile update of 2 MB can ask for 64 million steps.
 * @param insertions each client's by clock, all of them placeable
 */
export function placingSteps(insertions: readonly Insertion[], known: KnownEntries): number {
  const runs = freshRuns(insertions, known);
  const groups = new Map<string, Run[]>();
  for (const run of runs) {
    const group = groups.get(keyOf(run.behind));
    if (group === undefined) groups.set(keyOf(run.behind), [run]);
    else group.push(run);
  }
  countSizes(runs);
  let steps = 0;
  for (const [first, ...others] of groups.values()) {
    if (first === undefined) continue;
    if (others.length > 0) steps += stepsAmong([first, ...others]);
    const followers = first.parent === undefined ? known.followers(first.behind, allowedSteps) : 0;
    if (followers > 0) steps += (others.length + 1) * (followers + runs.length);
    if (steps > allowedSteps) return steps;
  }
  return steps;
}

/** A run of new entries of one client, uncut: nothing else stands behind any of them but the last. */
type Run = Position & {
  /** The entry that it was put behind; null at the beginning. */
  readonly behind: Position | null;
  /** Put before another entry too: then the order of clients does not end its way. */
  readonly isBetween: boolean;
  /** The run of this update that ends with `behind`. */
  parent: Run | undefined;
  /** The runs that are put behind this one, and behind those, with itself. */
  size: number;
};

function freshRuns(insertions: readonly Insertion[], known: KnownEntries): Run[] {
  const cutsByClient = cutsBehind(insertions);
  const runs: Run[] = [];
  const runByEnd = new Map<string, Run>();
  for (const { client, clock: first, length, behind: origin, isBetween } of insertions) {
    const end = first + length;
    const cuts = cutsByClient.get(client) ?? { clocks: [], next: 0 };
    let clock = Math.max(first, known.clock(client));
    while (clock < end) {
      while ((cuts.clocks[cuts.next] ?? end) <= clock) cuts.next++;
      const stop = Math.min(cuts.clocks[cuts.next] ?? end, end);
      const behind = clock === first ? origin : { client, clock: clock - 1 };
      const run: Run = { client, clock, behind, isBetween, parent: undefined, size: 1 };
      runs.push(run);
      runByEnd.set(keyOf({ client, clock: stop - 1 }), run);
      clock = stop;
    }
  }
  for (const run of runs) run.parent = run.behind === null ? undefined : runByEnd.get(keyOf(run.behind));
  return runs;
}

/** Where runs are cut because something stands behind an entry in their middle, and the next of it: items come by clock. */
function cutsBehind(
  insertions: readonly Insertion[],
): ReadonlyMap<number, { readonly clocks: readonly number[]; next: number }> {
  const clocksByClient = new Map<number, Set<number>>();
  for (const { behind } of insertions) {
    if (behind === null) continue;
    const clocks = clocksByClient.get(behind.client);
    if (clocks === undefined) clocksByClient.set(behind.client, new Set([behind.clock + 1]));
    else clocks.add(behind.clock + 1);
  }
  const sorted = (clocks: ReadonlySet<number>) => ({ clocks: [...clocks].sort((a, b) => a - b), next: 0 });
  return new Map([...clocksByClient].map(([client, clocks]) => [client, sorted(clocks)]));
}

/** Adds each run's size to that of the run it stands behind, the outermost first. */
function countSizes(runs: readonly Run[]): void {
  const open = new Map<Run, number>();
  for (const { parent } of runs) if (parent !== undefined) open.set(parent, (open.get(parent) ?? 0) + 1);
  const done = runs.filter((run) => !open.has(run));
  for (let run = done.pop(); run !== undefined; run = done.pop()) {
    const { parent } = run;
    if (parent === undefined) continue;
    parent.size += run.size;
    const left = (open.get(parent) ?? 0) - 1;
    open.set(parent, left);
    if (left === 0) done.push(parent);
  }
}

function stepsAmong(group: readonly Run[]): number {
  const inOrder = [...group].sort((a, b) => a.client - b.client || a.clock - b.clock);
  const total = inOrder.reduce((sum, { size }) => sum + size, 0);
  let before = 0;
  let steps = 0;
  const passesAll = group.some(({ isBetween }) => isBetween);
  for (const { size } of inOrder) {
    steps += passesAll ? total - size : before;
    before += size;
  }
  return steps;
}

const keyOf = (entry: Position | null): string => (entry === null ? "" : `${entry.client}:${entry.clock}`);
