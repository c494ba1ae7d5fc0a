/** A rider's run times over a weekend as a chart, and in words. */
import { weekendReport } from "#client/text/weekend-report.ts";
import { formatRunTime } from "#client/widgets/format-run-time.ts";
import type { ReportedRun } from "#core/planning/weekend-report.ts";
import type { Programme } from "#core/weekend/programme.ts";
import { rounded, runX, type SessionMark, sessionMarks } from "./run-axis.ts";

const words = weekendReport.times;

/** Height of the chart, and the edges of its plot; see {@link chart} for the width. */
export const timesChart = { height: 150, top: 32, bottom: 112 } as const;

export interface TimePoint {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly run: string;
  /** The first run with a change on the bike: drawn black. */
  readonly changed: boolean;
}

export interface TimesChartView {
  readonly points: readonly TimePoint[];
  /** Points of a polyline, as SVG has them. */
  readonly line: string;
  readonly sessions: readonly SessionMark[];
  readonly described: string;
}

/** The chart, or undefined while fewer than two runs have a time. */
export function timesChartView(plan: Programme, runs: readonly ReportedRun[]): TimesChartView | undefined {
  const timed = runs.flatMap((run) => {
    const seconds = run.logged.run.timeSeconds;
    return seconds === undefined ? [] : [{ ...run, seconds }];
  });
  const bySpeed = [...timed].sort((a, b) => a.seconds - b.seconds || a.number - b.number);
  const [fastest, slowest] = [bySpeed[0], bySpeed.at(-1)];
  if (!fastest || !slowest || timed.length < 2) return undefined;
  const span = slowest.seconds - fastest.seconds;
  const { top, bottom } = timesChart;
  const points = timed.map(({ number, seconds, afterChange }): TimePoint => {
    // Lower is faster; where all are alike they stand in the middle.
    const height = span === 0 ? 0.5 : (seconds - fastest.seconds) / span;
    return {
      x: runX(number, runs.length),
      y: rounded(bottom - height * (bottom - top)),
      label: formatRunTime(seconds),
      run: words.run(number),
      changed: afterChange,
    };
  });
  const changed = timed.filter(({ afterChange }) => afterChange).map(({ number }) => number);
  return {
    points,
    line: points.map(({ x, y }) => `${x},${y}`).join(" "),
    sessions: sessionMarks(plan, runs),
    described: [
      words.described({
        count: timed.length,
        fastest: formatRunTime(fastest.seconds),
        fastestRun: fastest.number,
        slowest: formatRunTime(slowest.seconds),
        slowestRun: slowest.number,
      }),
      words.changes(changed.join(", "), changed.length),
    ].join(" "),
  };
}
