/**
 * The report of a race weekend for the manager: what the sessions were like, and for each rider the runs, what was
 * changed when, by whom and why, what came of it, and where the setup ended against the baseline. Plain data; the
 * words are the client's.
 */
import { settable } from "#core/advice/limits.ts";
import { ridingValues } from "#core/advice/riding-values.ts";
import { weekendSetup } from "#core/advice/weekend-setup.ts";
import type { Current, Ledger } from "#core/ledger/ledger.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { convert } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { End } from "#core/team/place.ts";
import { baselinesFor, mountedAdjusters, type RiderBike, riderBikes } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";
import { settledSettings } from "#core/weekend/on-the-bike.ts";
import { type Programme, programme, type ScheduledSession } from "#core/weekend/programme.ts";
import { type LoggedRun, loggedRuns } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { momentsOf, settingsAt } from "./bike-at-moment.ts";
import { type ChangeOutcome, changeOutcome, complaintsOf } from "./change-outcome.ts";
import { answeredRun } from "./changelog-text.ts";
import { type SettingSeries, settingSeries } from "./setting-series.ts";

export interface WeekendReport {
  readonly programme: Programme;
  readonly riders: readonly RiderReport[];
}

export interface RiderReport {
  readonly mounted: RiderBike;
  /** In the order in which they were logged. */
  readonly runs: readonly ReportedRun[];
  /** What was changed on the bike for the weekend, oldest first; what was made together stands together. */
  readonly changes: readonly ReportedChanges[];
  readonly end: EndOfWeekend;
  /** The adjusters that did not stand alike at all runs. */
  readonly settings: readonly SettingSeries[];
}

export interface ReportedRun {
  /** From 1. */
  readonly number: number;
  readonly logged: LoggedRun;
  /** Things that were not good, by end; undefined where nothing was said. */
  readonly complaints: Readonly<Record<End, number | undefined>>;
  /** Whether it was the first with a change on the bike, those before the first run not counted. */
  readonly afterChange: boolean;
}

export interface ReportedChanges {
  readonly changes: readonly [Change, ...Change[]];
  /** The number of the run that they answer. */
  readonly answers: number | undefined;
  readonly outcome: ChangeOutcome;
}

/** Where the bike ended; pressures as they read at the session `at`, where the baseline holds too. */
export type EndOfWeekend =
  | { readonly known: false; readonly why: "nothing was set" | "no course" | "no conditions" }
  | { readonly known: true; readonly at: ScheduledSession; readonly rows: readonly EndRow[] };

export interface EndRow {
  readonly path: AdjusterPath;
  /** The blend of own baselines for the course; absent when none has this adjuster. */
  readonly baseline: TypedQuantity | undefined;
  readonly ended: TypedQuantity | "unknown" | "disputed";
  /** Ended less baseline; absent when one of the two is no value. */
  readonly difference: TypedQuantity | undefined;
  /** Said by the rider, and confirmed by nobody. */
  readonly reported: boolean;
}

/** The report of `weekendId`, or undefined while the weekend is not known. */
export function weekendReport(ledger: Ledger, weekendId: string): WeekendReport | undefined {
  const plan = programme(ledger, weekendId);
  if (!plan) return undefined;
  return { programme: plan, riders: riderBikes(ledger).map((mounted) => riderReport(ledger, plan, mounted)) };
}

function riderReport(ledger: Ledger, plan: Programme, mounted: RiderBike): RiderReport {
  const { riderId } = mounted;
  const logged = [...loggedRuns(ledger, plan.weekendId, riderId)].reverse();
  const log = changelog(ledger, { riderId });
  const moments = momentsOf(ledger, mounted).filter(({ changes }) => changes[0].weekend === plan.weekendId);
  const changes = moments.toReversed().map(({ changes: together }): ReportedChanges => {
    const answered = logged.findIndex(({ id }) => id === answeredRun(together[0]));
    return {
      changes: together,
      answers: answered < 0 ? undefined : answered + 1,
      outcome: changeOutcome(together, logged, log),
    };
  });
  const ridden = new Set(changes.map(({ outcome }) => (outcome.is === "ridden" ? outcome.after : 0)));
  const last = moments[0];
  const settings = last && settingsAt(ledger, mounted, last.moment);
  const at = referenceSession(plan, logged);
  const ride = plan.course && at?.conditions && { temperature: at.conditions.air, altitude: plan.course.altitude };
  return {
    mounted,
    runs: logged.map((run, index) => ({
      number: index + 1,
      logged: run,
      complaints: { front: complaintsOf(run.run.front), rear: complaintsOf(run.run.rear) },
      afterChange: ridden.has(index + 1),
    })),
    changes,
    end: endOf(ledger, plan, mounted, settings, at, ride),
    settings: settingSeries(ledger, mounted, logged, ride),
  };
}

/** The session of the last run, where its conditions are known; else the last one whose conditions are. */
function referenceSession({ sessions }: Programme, logged: readonly LoggedRun[]): ScheduledSession | undefined {
  const known = sessions.filter(({ conditions }) => conditions);
  return known.find(({ id }) => id === logged.at(-1)?.run.session) ?? known.at(-1);
}

function endOf(
  ledger: Ledger,
  { course, weekendId }: Programme,
  mounted: RiderBike,
  settings: ReadonlyMap<AdjusterPath, Current<Setting>> | undefined,
  at: ScheduledSession | undefined,
  ride: Surroundings | undefined,
): EndOfWeekend {
  if (!settings) return { known: false, why: "nothing was set" };
  if (!course) return { known: false, why: "no course" };
  if (!at?.conditions || !ride) return { known: false, why: "no conditions" };
  const baselines = baselinesFor(ledger, mounted.riderId, weekendId);
  const setup = weekendSetup({ mounted, baselines, course, conditions: at.conditions });
  const baselineAt = new Map(setup.rows.map(({ path, baseline }) => [path, baseline]));
  const settled = settledSettings(settings);
  const values = ridingValues(mounted, settled, ride);
  const rows = mountedAdjusters(mounted.parts).map((found): EndRow => {
    const { path, adjuster } = found;
    const value = values[path];
    const baseline = baselineAt.get(path);
    const ended = value && settable(found, value.value);
    return {
      path,
      baseline,
      ended: ended ?? (settings.get(path)?.state === "disputed" ? "disputed" : "unknown"),
      difference: ended && baseline && settable(found, ended.value - convert(baseline, adjuster.unit).value),
      reported: settled.get(path)?.standing === "reported",
    };
  });
  return { known: true, at, rows };
}
