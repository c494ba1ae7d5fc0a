/** Views of the runs of a weekend and of what was decided on them. */
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
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
  return ledger
    .keys(runKind)
    .filter((key) => riderId === undefined || key.startsWith(`${riderId}/`))
    .flatMap((key) => {
      const run = knownValue(ledger, runKind, key);
      const first = ledger.history(runKind, key)[0];
      if (!run || !first || run.weekend !== weekendId) return [];
      const slash = key.indexOf("/");
      const decision = ledger.current(decisionKind, key);
      return [
        {
          id: key.slice(slash + 1),
          riderId: key.slice(0, slash),
          run,
          by: first.by,
          at: first.at,
          decision: settledValue(decision),
          isDecisionDisputed: decision.state === "disputed",
        },
      ];
    })
    .sort((a, b) => (a.at === b.at ? (a.id < b.id ? 1 : -1) : a.at < b.at ? 1 : -1));
}
