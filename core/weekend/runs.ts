/** Views of the runs of a weekend and of what was decided on them. */
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { onceForEachOwner } from "#core/ledger/once-for-each-state.ts";
import { knownValue } from "#core/team/roster.ts";
import type { Decision } from "./decision.ts";
import { decisionKind, runKind } from "./record-kinds.ts";
import type { Run } from "./run.ts";

export interface LoggedRun {
  readonly id: string;
  readonly riderId: string;
  readonly run: Run;
  /** Who logged it, and the clock of that device; informative. */
  readonly by: string;
  readonly at: string;
  /** Absent while nobody has decided, and while two people have decided differently. */
  readonly decision: Decision | undefined;
  readonly isDecisionDisputed: boolean;
}

/** The runs of a weekend, newest first; of one rider, or of all. */
export function loggedRuns(ledger: Ledger, weekendId: string, riderId?: string): readonly LoggedRun[] {
  if (riderId !== undefined) return runsByWeekend(ledger, riderId).get(weekendId) ?? [];
  return ledger
    .owners(runKind)
    .flatMap((owner) => runsByWeekend(ledger, owner).get(weekendId) ?? [])
    .sort(newestFirst);
}

/** One rider's runs by weekend, newest first. */
const runsByWeekend = onceForEachOwner([runKind, decisionKind], (ledger, riderId) => {
  const byWeekend = new Map<string, LoggedRun[]>();
  for (const key of ledger.keys(runKind, riderId)) {
    const run = knownValue(ledger, runKind, key);
    const first = ledger.history(runKind, key)[0];
    if (!run || !first) continue;
    const decision = ledger.current(decisionKind, key);
    const logged: LoggedRun = {
      id: key.slice(riderId.length + 1),
      riderId,
      run,
      by: first.by,
      at: first.at,
      decision: settledValue(decision),
      isDecisionDisputed: decision.state === "disputed",
    };
    const known = byWeekend.get(run.weekend);
    if (known) known.push(logged);
    else byWeekend.set(run.weekend, [logged]);
  }
  for (const runs of byWeekend.values()) runs.sort(newestFirst);
  return byWeekend as ReadonlyMap<string, readonly LoggedRun[]>;
});

function newestFirst(a: LoggedRun, b: LoggedRun): number {
  return a.at === b.at ? (a.id < b.id ? 1 : -1) : a.at < b.at ? 1 : -1;
}
