/** What a rider said and measured on a run, in words. */
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { type End, ends } from "#core/team/place.ts";
import { type EndFeedback, type FeelingOf, feelings, type Run } from "#core/weekend/run.ts";

export interface ReportLine {
  readonly name: string;
  readonly text: string;
}

export interface EndReport {
  readonly end: End;
  /** Measured values first, then feelings along the stroke. What was not said is left out. */
  readonly lines: readonly ReportLine[];
}

/** Front and rear of one run. */
export function runReport(run: Run): readonly EndReport[] {
  return ends.map((end) => ({ end, lines: linesOf(run[end]) }));
}

/** A run's time as a watch shows it: 125.4 s is "2:05.4". */
export function lapTime(seconds: number): string {
  const tenths = Math.round(seconds * 10);
  const rest = (tenths % 600) / 10;
  return `${Math.floor(tenths / 600)}:${rest < 10 ? "0" : ""}${rest.toFixed(1)}`;
}

function linesOf(feedback: EndFeedback): readonly ReportLine[] {
  const { feedback: names } = pit;
  const lines: ReportLine[] = [];
  if (feedback.sag) lines.push({ name: names.sag, text: formatQuantity(feedback.sag) });
  if (feedback.travelUsed) lines.push({ name: names.travelUsed, text: formatQuantity(feedback.travelUsed) });
  if (feedback.bottomOuts !== undefined) lines.push({ name: names.bottomOuts, text: String(feedback.bottomOuts) });
  for (const of of Object.keys(feelings) as FeelingOf[]) {
    const feeling = feedback[of];
    if (feeling !== undefined) lines.push({ name: names[of], text: trade.feelings[feeling] });
  }
  if (feedback.noticed?.length)
    lines.push({ name: names.noticed, text: feedback.noticed.map((noticed) => trade.symptoms[noticed]).join(", ") });
  return lines;
}
