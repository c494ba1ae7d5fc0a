/** The weekend report in words: the sessions, and each rider's runs and where his bike ended. */
import { common } from "#client/text/common.ts";
import { weekendReport } from "#client/text/weekend-report.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatDifference, formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { formatRunTime } from "#client/widgets/format-run-time.ts";
import type { EndRow, ReportedRun, RiderReport, WeekendReport } from "#core/planning/weekend-report.ts";
import type { Programme } from "#core/weekend/programme.ts";

const { end: endWords, runs: runWords, sessions: sessionWords } = weekendReport;

/** A row a session: name, start, air, bench, ground, and how many runs were logged in it. */
export function sessionRows({ programme, riders }: WeekendReport): readonly (readonly string[])[] {
  const runs = riders.flatMap((rider) => rider.runs);
  return programme.sessions.map(({ id, session, conditions }) => [
    session.name,
    formatMoment(session.startsAt),
    conditions ? formatQuantity(conditions.air) : sessionWords.notEntered,
    conditions ? formatQuantity(conditions.bench ?? conditions.air) : sessionWords.notEntered,
    conditions ? common.grounds[conditions.ground] : sessionWords.notEntered,
    String(runs.filter(({ logged }) => logged.run.session === id).length),
  ]);
}

/** A row a run: number, session, time, what was said of front and rear, confidence, note. */
export function runRow({ sessions }: Programme, { number, logged, complaints }: ReportedRun): readonly string[] {
  const { run } = logged;
  return [
    String(number),
    sessions.find(({ id }) => id === run.session)?.session.name ?? run.session,
    run.timeSeconds === undefined ? runWords.empty : formatRunTime(run.timeSeconds),
    runWords.complaints(complaints.front),
    runWords.complaints(complaints.rear),
    run.confidence === undefined ? runWords.empty : runWords.confidences[run.confidence],
    run.note ?? "",
  ];
}

export interface EndView {
  /** What there is to know of the numbers, or why there are none. */
  readonly sentence: string;
  /** A row an adjuster that did not end at the baseline: name, baseline, ended, difference. */
  readonly rows: readonly (readonly string[])[];
  /** How many ended there; empty where nothing is compared. */
  readonly same: string;
}

/** Where a bike ended against its baseline. */
export function endView({ end }: RiderReport): EndView {
  if (!end.known) return { sentence: endWords.why[end.why], rows: [], same: "" };
  const differing = end.rows.filter(({ difference }) => difference?.value !== 0);
  const same = end.rows.length - differing.length;
  return {
    sentence: endWords.holds(
      end.at.session.name,
      end.at.conditions ? formatQuantity(end.at.conditions.air) : common.notKnown,
    ),
    rows: differing.map(endCells),
    same: differing.length === 0 ? endWords.allSame : endWords.same(same),
  };
}

function endCells({ path, baseline, ended, difference, reported }: EndRow): readonly string[] {
  const value = typeof ended === "string" ? endWords.states[ended] : formatQuantity(ended);
  return [
    adjusterLabel(path),
    formatQuantity(baseline),
    reported ? `${value}, ${endWords.reported}` : value,
    formatDifference(difference),
  ];
}
