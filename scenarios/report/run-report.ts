import type { Ledger } from "#core/ledger/ledger.ts";
import type { Run } from "#core/weekend/run.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import type { Naming } from "./naming.ts";

export interface ReportedRun {
  readonly run: string;
  readonly at: string;
  readonly by: string;
  readonly feedback: Omit<Run, "bike" | "weekend" | "session" | "setup">;
  readonly decision: string | undefined;
}

/** The rider's runs of a weekend, oldest first. */
export function reportRuns(ledger: Ledger, naming: Naming, weekendId: string, riderId: string): readonly ReportedRun[] {
  return [...loggedRuns(ledger, weekendId, riderId)].reverse().map(({ id, run, at, by, decision }) => {
    const { bike: _bike, weekend: _weekend, session: _session, setup: _setup, ...feedback } = run;
    return { run: naming.run(id), at, by: naming.member(by), feedback, decision: decision?.outcome };
  });
}
