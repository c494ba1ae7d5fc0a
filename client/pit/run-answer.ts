/** How a run was answered, in words. */
import { pit } from "#client/text/english/pit.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { answeredRun } from "#core/planning/changelog-text.ts";
import { changelog } from "#core/weekend/changelog.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { adjusterName } from "./names.ts";

/** Whether the run is answered, and how. */
export function decisionTag({ decision }: Pick<LoggedRun, "decision">): string {
  if (!decision) return pit.feedback.undecided;
  return decision.outcome === "adjusted" ? pit.feedback.adjusted : pit.feedback.left;
}

/** The changes that answered the run, oldest first: "Fork main pressure: 62 psi → 66 psi". */
export function changesForRun(ledger: Ledger, { riderId, id }: Pick<LoggedRun, "riderId" | "id">): readonly string[] {
  return changelog(ledger, { riderId })
    .filter((change) => answeredRun(change) === id)
    .reverse()
    .map(({ path, from, to }) =>
      pit.feedback.changed(
        adjusterName(path),
        from.map(formatQuantity).join(pit.disputes.and) || pit.changelog.nothing,
        to ? formatQuantity(to) : pit.changelog.nothing,
      ),
    );
}
