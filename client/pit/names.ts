/** Names and moments as the pit's screens show them. */
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { sessionName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";

/** "Practice 1, logged Fri 29 May, 14:05". */
export function runName(ledger: Ledger, { run, at }: Pick<LoggedRun, "run" | "at">): string {
  return pit.feedback.run(sessionName(ledger, run), formatMoment(at));
}

/** A value, or in words that there is none. */
export function valueText(quantity: TypedQuantity | undefined): string {
  return quantity ? formatQuantity(quantity) : common.notKnown;
}
