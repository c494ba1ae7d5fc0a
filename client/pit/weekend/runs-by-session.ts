/** How many runs are logged in each session of a weekend. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";

/** Runs of all riders by session; a session without runs is absent. */
export function runsBySession(ledger: Ledger, weekendId: string): ReadonlyMap<string, number> {
  const runs = new Map<string, number>();
  for (const riderId of ledger.keys(riderKind)) {
    for (const { run } of loggedRuns(ledger, weekendId, riderId))
      runs.set(run.session, (runs.get(run.session) ?? 0) + 1);
  }
  return runs;
}
