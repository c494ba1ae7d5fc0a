/** Which session a rider's screen is about before anybody chose. */
import type { Ledger } from "#core/ledger/ledger.ts";
import type { Programme, ScheduledSession } from "#core/weekend/programme.ts";
import { loggedRuns } from "#core/weekend/runs.ts";

/** The session of the rider's latest run, else the first of the weekend. */
export function defaultSession(
  ledger: Ledger,
  plan: Programme,
  riderId: string | undefined,
): ScheduledSession | undefined {
  const latest = riderId === undefined ? undefined : loggedRuns(ledger, plan.weekendId, riderId)[0];
  return plan.sessions.find(({ id }) => id === latest?.run.session) ?? plan.sessions[0];
}
