/** Names and moments as the pit's screens show them. */
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { memberKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { sessionKind } from "#core/weekend/record-kinds.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";

/** A member's name; the id while nothing else is known. */
export function memberName(ledger: Ledger, memberId: string): string {
  return knownValue(ledger, memberKind, memberId)?.name ?? memberId;
}

/** "Practice 1, logged Fri 29 May, 14:05". */
export function runName(ledger: Ledger, { run, at }: Pick<LoggedRun, "run" | "at">): string {
  const session = knownValue(ledger, sessionKind, `${run.weekend}/${run.session}`)?.name ?? run.session;
  return pit.feedback.run(session, formatMoment(at));
}

/** A value, or in words that there is none. */
export function valueText(quantity: TypedQuantity | undefined): string {
  return quantity ? formatQuantity(quantity) : common.notKnown;
}
