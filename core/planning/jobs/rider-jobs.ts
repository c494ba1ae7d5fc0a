/** What there is to do for one rider. */
import { DEFAULT_PUMP } from "#core/advice/bench-operations.ts";
import { type BenchSequence, benchSequence } from "#core/advice/bench-sequence.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { RiddenRun } from "#core/service/riding-hours.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { isWeekendOver, type Programme } from "#core/weekend/programme.ts";
import { noRunKind } from "#core/weekend/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import type { SessionStanding } from "#core/weekend/session-clock.ts";
import { benchReadings } from "../bench-readings.ts";
import { serviceStatus } from "../service-status.ts";
import { type SetupSheet, setupSheet } from "../setup-sheet.ts";
import type { Job, JobDue } from "./job.ts";
import { pressureCheck } from "./pressure-check.ts";

/** What the jobs of all riders have in common. */
export interface QueueMoment {
  readonly programme: Programme;
  readonly standings: readonly SessionStanding[];
  /** The session that the bikes are prepared for. */
  readonly sessionId: string;
  /** Wall-clock milliseconds, see `core/weekend/session-clock.ts`. */
  readonly now: number;
}

/** Start of the next session to come; undefined when none is left. */
export function nextDue({ standings }: Pick<QueueMoment, "standings">): JobDue | undefined {
  return dueOf(standings.find(({ phase }) => phase === "to come"));
}

/** The jobs of one rider; disputes are not among them, since they come from all records at once. */
export function riderJobs(
  ledger: Ledger,
  moment: QueueMoment,
  mounted: RiderBike,
  runs: ReadonlyMap<string, readonly RiddenRun[]>,
): readonly Job[] {
  return [
    ...benchJobs(ledger, moment, mounted),
    ...reportedJobs(ledger, moment, mounted),
    ...feedbackJobs(ledger, moment, mounted.riderId),
    ...serviceJobs(ledger, moment, mounted, runs),
  ];
}

function benchJobs(ledger: Ledger, moment: QueueMoment, mounted: RiderBike): readonly Job[] {
  const { riderId } = mounted;
  const result = setupSheet(ledger, moment.programme.weekendId, moment.sessionId, riderId);
  if (!result.ok) return [];
  const { sheet } = result;
  const standing = moment.standings.find(({ id }) => id === moment.sessionId);
  const due = standing?.phase === "over" ? undefined : dueOf(standing);
  const head = (name: string) => ({
    id: `${name}:${riderId}/${moment.sessionId}`,
    riderId,
    ...(due && { due }),
    sheet,
  });
  const { bySheet, chosen } = pressureCheck(sheet);
  const toSet = sheet.rows.filter(({ state }) => state === "to set");
  const isTemperatureAlone = toSet.every(({ path }) => bySheet.includes(path));
  const jobs: Job[] = [];
  if (!isTemperatureAlone) jobs.push({ kind: "change to make", ...head("change"), sequence: sheet.sequence });
  const target: Partial<Record<AdjusterPath, TypedQuantity>> = { ...chosen };
  if (isTemperatureAlone) for (const { path, bench } of toSet) if (bench) target[path] = bench;
  const sequence = sequenceTo(sheet, target);
  if (sequence.steps.length + sequence.blocked.length > 0) {
    jobs.push({
      kind: "pressure check",
      ...head("pressure"),
      sequence,
      chosen: Object.keys(chosen) as AdjusterPath[],
    });
  }
  return jobs;
}

function sequenceTo({ mounted, rows, setup: { bench } }: SetupSheet, target: SetupValues): BenchSequence {
  const settings = new Map(rows.map(({ path, current }) => [path, current]));
  return benchSequence(mounted, benchReadings(mounted, settings, bench), target, { bench, pump: DEFAULT_PUMP });
}

function reportedJobs(ledger: Ledger, moment: QueueMoment, mounted: RiderBike): readonly Job[] {
  const due = nextDue(moment);
  return [...settingsOnBike(ledger, mounted)].flatMap(([path, current]): readonly Job[] =>
    settledValue(current)?.standing === "reported"
      ? [
          {
            kind: "reported change to confirm",
            id: `reported:${mounted.riderId}/${mounted.bikeId}/${path}`,
            riderId: mounted.riderId,
            ...(due && { due }),
            mounted,
            path,
            current,
          },
        ]
      : [],
  );
}

function feedbackJobs(ledger: Ledger, moment: QueueMoment, riderId: string): readonly Job[] {
  const { programme, standings, now } = moment;
  const due = nextDue(moment);
  const head = { riderId, ...(due && { due }) };
  const logged = loggedRuns(ledger, programme.weekendId, riderId);
  // A run on which two people decided differently is a dispute, and stands in the queue as one.
  const jobs: Job[] = logged
    .filter((run) => run.decision === undefined && !run.isDecisionDisputed)
    .reverse()
    .map((run) => ({ kind: "feedback to decide on", id: `decide:${riderId}/${run.id}`, ...head, logged: run }));
  // Once the weekend is over nobody remembers; a run can still be logged.
  const over = isWeekendOver(programme.weekend, now) ? [] : standings.filter(({ phase }) => phase === "over");
  const isExpected = (session: string) =>
    !logged.some(({ run }) => run.session === session) &&
    ledger.current(noRunKind, `${riderId}/${programme.weekendId}/${session}`).state === "absent";
  const missing = over.filter(({ id }) => isExpected(id)).map(({ id }) => id);
  if (missing.length > 0) {
    const sessions = programme.sessions.filter(({ id }) => missing.includes(id));
    jobs.push({
      kind: "feedback missing",
      id: `missing:${riderId}/${programme.weekendId}`,
      riderId,
      weekendId: programme.weekendId,
      ...(due && { due }),
      sessions,
    });
  }
  return jobs;
}

function serviceJobs(
  ledger: Ledger,
  moment: QueueMoment,
  mounted: RiderBike,
  runs: ReadonlyMap<string, readonly RiddenRun[]>,
): readonly Job[] {
  const due = nextDue(moment);
  return serviceStatus(ledger, mounted, moment.programme.weekendId, runs).flatMap(({ place, works }) =>
    works.flatMap((status): readonly Job[] =>
      status.state === "in use"
        ? []
        : [
            {
              kind: status.state === "overdue" ? "service overdue" : "service due",
              id: `service:${mounted.riderId}/${mounted.bikeId}/${place}/${status.work}`,
              riderId: mounted.riderId,
              ...(due && { due }),
              mounted,
              place,
              status,
            },
          ],
    ),
  );
}

function dueOf(standing: SessionStanding | undefined): JobDue | undefined {
  return standing && { sessionId: standing.id, name: standing.name, startsAt: standing.startsAt, at: standing.start };
}
