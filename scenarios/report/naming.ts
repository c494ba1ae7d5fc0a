/** Names for what the records know by id. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { members, riderBikes } from "#core/team/roster.ts";
import { programme } from "#core/weekend/programme.ts";
import { loggedRuns } from "#core/weekend/runs.ts";

export interface Naming {
  member(id: string): string;
  rider(id: string): string;
  session(id: string): string;
  /** A run by its number among the rider's runs of the weekend, from 1: "run 2, Practice 1". */
  run(id: string): string;
}

/** The names that `ledger` has; an id without one is its own name. */
export function createNaming(ledger: Ledger, weekendId: string): Naming {
  const memberNames = new Map(members(ledger).map(({ id, member }) => [id, member.name]));
  const riderNames = new Map(riderBikes(ledger).map(({ riderId, rider }) => [riderId, rider.name]));
  const sessions = programme(ledger, weekendId)?.sessions ?? [];
  const sessionNames = new Map(sessions.map(({ id, session }) => [id, session.name]));
  const session = (id: string): string => sessionNames.get(id) ?? id;
  const runNames = new Map<string, string>();
  const runsOfRider = new Map<string, number>();
  for (const { id, riderId, run } of [...loggedRuns(ledger, weekendId)].reverse()) {
    const number = (runsOfRider.get(riderId) ?? 0) + 1;
    runsOfRider.set(riderId, number);
    runNames.set(id, `run ${number}, ${session(run.session)}`);
  }
  return {
    member: (id) => memberNames.get(id) ?? id,
    rider: (id) => riderNames.get(id) ?? id,
    session,
    run: (id) => runNames.get(id) ?? id,
  };
}
