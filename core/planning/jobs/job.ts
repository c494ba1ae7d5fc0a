/** A job in the pit: what somebody has to do on a bike or about it, as plain facts, and which comes first. */
import type { BenchSequence } from "#core/advice/bench-sequence.ts";
import type { Current } from "#core/ledger/ledger.ts";
import type { WorkStatus } from "#core/service/part-service.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { ScheduledSession } from "#core/weekend/programme.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { OpenDispute } from "../open-disputes.ts";
import type { PartServiceStatus } from "../service-status.ts";
import type { SetupSheet } from "../setup-sheet.ts";

/**
 * By urgency where two are due at one time; common practice, no source. First what nobody can work around (what is on the
 * bike is not known), then what may not be ridden on, then what the rider waits for, then what has to be on the bike, and
 * last what can be done at any time.
 */
export const jobKinds = [
  "dispute to check",
  "reported change to confirm",
  "service overdue",
  "feedback to decide on",
  "change to make",
  "pressure check",
  "feedback missing",
  "service due",
] as const;
export type JobKind = (typeof jobKinds)[number];

/** Until when a job has to be done: the start of a session. */
export interface JobDue {
  readonly sessionId: string;
  readonly name: string;
  /** As it was entered: local time without a zone. */
  readonly startsAt: string;
  /** Wall-clock milliseconds, see `core/weekend/session-clock.ts`. */
  readonly at: number;
}

interface JobHead {
  /** The same for the same job at every time and on every device. */
  readonly id: string;
  /** The rider it concerns; absent for what concerns the whole team. */
  readonly riderId?: string;
  /** Start of the next session that it concerns; absent when none is left. */
  readonly due?: JobDue;
}

/** The bike differs from the sheet of the session: what to set, in the safe order. */
export interface ChangeJob extends JobHead {
  readonly kind: "change to make";
  readonly sheet: SetupSheet;
  readonly sequence: BenchSequence;
}

/** Pressures that were right for the session they were set for, and are not at the temperature of this one. */
export interface PressureJob extends JobHead {
  readonly kind: "pressure check";
  readonly sheet: SetupSheet;
  readonly sequence: BenchSequence;
  /** Those whose value somebody chose apart from the sheet: it is kept, carried to the new temperature. */
  readonly chosen: readonly AdjusterPath[];
}

/** Two people say different things. */
export interface DisputeJob extends JobHead {
  readonly kind: "dispute to check";
  readonly dispute: OpenDispute;
}

/** The rider changed something himself and no mechanic has seen it. */
export interface ReportedJob extends JobHead {
  readonly kind: "reported change to confirm";
  readonly mounted: RiderBike;
  readonly path: AdjusterPath;
  readonly current: Current<Setting>;
}

/** A run with feedback that nobody has answered. */
export interface DecisionJob extends JobHead {
  readonly kind: "feedback to decide on";
  readonly logged: LoggedRun;
}

/** Sessions that are over, of which the rider has not logged a run although one is expected. */
export interface MissingJob extends JobHead {
  readonly kind: "feedback missing";
  readonly riderId: string;
  readonly weekendId: string;
  readonly sessions: readonly ScheduledSession[];
}

/** A work of service that is due, or past its interval. */
export interface ServiceJob extends JobHead {
  readonly kind: "service due" | "service overdue";
  readonly mounted: RiderBike;
  readonly place: PartServiceStatus["place"];
  readonly status: WorkStatus;
}

export type Job = ChangeJob | PressureJob | DisputeJob | ReportedJob | DecisionJob | MissingJob | ServiceJob;

/** What is due first, then what is more urgent; a job without a session left comes after all that have one. */
export function compareJobs(a: Job, b: Job): number {
  const dueA = a.due?.at ?? Number.POSITIVE_INFINITY;
  const dueB = b.due?.at ?? Number.POSITIVE_INFINITY;
  if (dueA !== dueB) return dueA < dueB ? -1 : 1;
  return jobKinds.indexOf(a.kind) - jobKinds.indexOf(b.kind);
}
