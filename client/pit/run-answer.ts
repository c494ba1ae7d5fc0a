/** How a run was answered, in words. */
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { answerToRun } from "#core/planning/run-answer.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";

export interface RunAnswerText {
  /** Whether the run is answered, and how. */
  readonly tag: string;
  /** The changes that answered it and were not undone, oldest first: "Fork main pressure: 62 psi → 66 psi". */
  readonly changes: readonly string[];
}

/** The answer to a run as far as there is one. */
export function runAnswerText(ledger: Ledger, logged: LoggedRun): RunAnswerText {
  const { outcome, changes } = answerToRun(ledger, logged);
  return {
    tag: tags[outcome],
    changes: changes.map(({ path, from, to }) =>
      pit.feedback.changed(
        trade.adjuster(path),
        from.map(formatQuantity).join(pit.disputes.and) || pit.changelog.nothing,
        to ? formatQuantity(to) : pit.changelog.nothing,
      ),
    ),
  };
}

const tags = {
  "not decided": pit.feedback.undecided,
  adjusted: pit.feedback.adjusted,
  "left as it is": pit.feedback.left,
  disputed: pit.feedback.disputed,
} as const;
