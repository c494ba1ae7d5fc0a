/** A place in a document: a client's number and its count of entries before this one. */
export type Position = { readonly client: number; readonly clock: number };

/** A run of entries of one client, and the entries that must be there before it. */
export type Run = Position & { readonly length: number; readonly needs: readonly Position[] };

/**
 * The first run that could not take its place: an earlier entry of its client,
 * or one that it stands beside, is neither known nor in the update, or the runs
 * wait for each other in a circle. Undefined when all can be put in some order.
 * Time grows with the number of entries, however the runs are arranged.
 * @param runs in the order of the update
 * @param knownClock how many entries of a client are known already
 */
export function findUnplaceable(runs: readonly Run[], knownClock: (client: number) => number): Run | undefined {
  for (const lane of placedLanes(runs, knownClock)) if (lane.placed < lane.runs.length) return lane.runs[lane.placed];
  return undefined;
}

/** The runs that can take their places, those of one client in their order; the others have to wait for what is missing. */
export function placeableRuns<Placed extends Run>(
  runs: readonly Placed[],
  knownClock: (client: number) => number,
): readonly Placed[] {
  return placedLanes(runs, knownClock).flatMap((lane) => lane.runs.slice(0, lane.placed));
}

function placedLanes<Placed extends Run>(
  runs: readonly Placed[],
  knownClock: (client: number) => number,
): readonly Lane<Placed>[] {
  const lanes = lanesOf(runs, knownClock);
  const waiting = new Map<string, Lane<Placed>[]>();
  const clockOf = (client: number): number => lanes.get(client)?.clock ?? knownClock(client);
  const ready = [...lanes.values()];
  for (let lane = ready.pop(); lane !== undefined; lane = ready.pop()) {
    for (let run = lane.runs[lane.placed]; run !== undefined; run = lane.runs[lane.placed]) {
      const { client, clock } = run;
      if (clock > lane.clock || run.needs.some((need) => need.client === client && need.clock >= clock)) break;
      const missing = run.needs.find((need) => need.clock >= clockOf(need.client));
      if (missing !== undefined) {
        const key = keyOf(missing);
        const waiters = waiting.get(key);
        if (waiters === undefined) waiting.set(key, [lane]);
        else waiters.push(lane);
        break;
      }
      for (; lane.clock < clock + run.length; lane.clock++) {
        ready.push(...(waiting.get(keyOf({ client, clock: lane.clock })) ?? []));
      }
      lane.placed++;
    }
  }
  return [...lanes.values()];
}

/** The runs of one client, how many of them are placed, and how many of its entries are there by now. */
type Lane<Placed extends Run> = { readonly runs: Placed[]; placed: number; clock: number };

function lanesOf<Placed extends Run>(
  runs: readonly Placed[],
  knownClock: (client: number) => number,
): Map<number, Lane<Placed>> {
  const lanes = new Map<number, Lane<Placed>>();
  for (const run of runs) {
    const lane = lanes.get(run.client);
    if (lane === undefined) lanes.set(run.client, { runs: [run], placed: 0, clock: knownClock(run.client) });
    else lane.runs.push(run);
  }
  return lanes;
}

const keyOf = ({ client, clock }: Position): string => `${client}:${clock}`;
