/** Where runs stand along a chart, and the sessions under them. */
import type { ReportedRun } from "#core/planning/weekend-report.ts";
import type { Programme } from "#core/weekend/programme.ts";

/** Width of a chart, and the edges of its plot, in its own units; text is 10 of them high. */
export const chart = { width: 560, left: 150, right: 545 } as const;

export interface SessionMark {
  /** Where its first run stands. */
  readonly x: number;
  readonly name: string;
  /** A line before it; none before the first. */
  readonly line: number | undefined;
}

/** The place of run `number` of `count`: in the middle of its share of the width. */
export function runX(number: number, count: number): number {
  return rounded(chart.left + ((number - 0.5) / count) * (chart.right - chart.left));
}

/** The sessions of the runs, each where its first run stands. */
export function sessionMarks({ sessions }: Programme, runs: readonly ReportedRun[]): readonly SessionMark[] {
  return runs.flatMap(({ number, logged: { run } }, index) => {
    if (index > 0 && runs[index - 1]?.logged.run.session === run.session) return [];
    const name = sessions.find(({ id }) => id === run.session)?.session.name ?? run.session;
    const share = (chart.right - chart.left) / runs.length;
    const start = rounded(chart.left + (number - 1) * share);
    return [{ x: start + 3, name, line: index === 0 ? undefined : start }];
  });
}

export function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}
