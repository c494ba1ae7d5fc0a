/** What was changed and what came of it, as lines of the report. */
import { trade } from "#client/text/trade.ts";
import { weekendReport } from "#client/text/weekend-report.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatMoment, formatNumber, formatQuantity } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { ChangeOutcome } from "#core/planning/change-outcome.ts";
import type { ReportedChanges } from "#core/planning/weekend-report.ts";
import { ends } from "#core/team/place.ts";
import type { Change } from "#core/weekend/changelog.ts";

const { changes: words, outcome: outcomes } = weekendReport;

/** Of what was made together so many are named: the whole setup of a bike has a table of its own. */
const NAMED = 4;

export interface ChangeRow {
  readonly when: string;
  readonly who: string;
  readonly what: readonly string[];
  readonly why: string;
  readonly outcome: string;
}

/** A row for what was made together. */
export function changeRow(ledger: Ledger, { changes, answers, outcome }: ReportedChanges): ChangeRow {
  const made = changes[0];
  const inOrder = [...changes].reverse();
  const left = inOrder.length - NAMED;
  return {
    when: formatMoment(made.at),
    who: memberName(ledger, made.by),
    what: [...inOrder.slice(0, NAMED).map(changeText), ...(left > 0 ? [words.more(left)] : [])],
    why: [trade.cause(made), ...(answers === undefined ? [] : [words.answers(answers)])].join(" "),
    outcome: outcomeText(outcome),
  };
}

/** "Fork, rebound 8 clicks → 9 clicks". */
function changeText({ path, from, to }: Change): string {
  const name = adjusterLabel(path);
  const before = [...new Set(from.map(formatQuantity))].join(" / ");
  const after = to ? formatQuantity(to) : words.withdrawn;
  if (before === "") return words.first(name, after);
  return before === after ? words.still(name, after) : words.line(name, before, after);
}

/** What the runs tell of a change, in one line. */
export function outcomeText(outcome: ChangeOutcome): string {
  if (outcome.is !== "ridden") return outcomes[outcome.is];
  const { before, after, complaints, sameSession } = outcome;
  const spoken = ends.filter((end) => complaints[end].before !== undefined || complaints[end].after !== undefined);
  const complained = spoken.filter((end) => complaints[end].before !== 0 || complaints[end].after !== 0);
  const said =
    complained.length === 0 && spoken.length > 0
      ? [outcomes.noComplaints]
      : complained.map((end) => outcomes.complaints(end, complaints[end]));
  const facts = [timeText(outcome.seconds), ...(sameSession ? [] : [outcomes.otherSession]), ...said];
  return `${outcomes.compared(before, after)} ${facts.join(", ")}.`;
}

function timeText(seconds: number | undefined): string {
  if (seconds === undefined) return outcomes.noTimes;
  const tenths = Math.round(seconds * 10) / 10;
  return tenths === 0 ? outcomes.sameTime : outcomes.seconds(formatNumber(Math.abs(tenths)), tenths < 0);
}
