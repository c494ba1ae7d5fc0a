/**
 * The jobs of the whole team, what is due first at the top: the start of the next session that a job concerns, then its
 * urgency, then the riders' plates.
 */
import type { Ledger } from "#core/ledger/ledger.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { type RiderBike, riderBikes } from "#core/team/roster.ts";
import { programme } from "#core/weekend/programme.ts";
import { sessionStandings } from "#core/weekend/session-clock.ts";
import { compareJobs, type DisputeJob, type Job } from "./jobs/job.ts";
import { nextDue, type QueueMoment, riderJobs } from "./jobs/rider-jobs.ts";
import { isPlaceInDispute, type OpenDispute, openDisputes } from "./open-disputes.ts";
import { runsByBike } from "./service-status.ts";

/** What the queue is asked for. */
export interface QueueQuestion {
  readonly weekendId: string;
  /** The session that the bikes are prepared for. */
  readonly sessionId: string;
  /** Wall-clock milliseconds at the venue, see `core/weekend/session-clock.ts`. */
  readonly now: number;
}

/** The jobs of one rider; a screen passes one that remembers what has not changed since. */
export type JobsOfRider = (moment: QueueMoment, mounted: RiderBike) => readonly Job[];

/** All jobs, in a stable order; none for a weekend that is not known but the disputes, which need no weekend. */
export function jobQueue(
  ledger: Ledger,
  question: QueueQuestion,
  jobsOfRider: JobsOfRider = jobsFromRecords(ledger),
): readonly Job[] {
  const plan = programme(ledger, question.weekendId);
  const riders = riderBikes(ledger);
  if (!plan) return disputeJobs(ledger, undefined, riders);
  const standings = sessionStandings(plan.sessions, question.now);
  const moment: QueueMoment = { programme: plan, standings, sessionId: question.sessionId, now: question.now };
  return inOrder(
    [...disputeJobs(ledger, moment, riders), ...riders.flatMap((mounted) => jobsOfRider(moment, mounted))],
    riders,
  );
}

/** Each rider's jobs worked out anew. */
export function jobsFromRecords(ledger: Ledger): JobsOfRider {
  let runs: ReturnType<typeof runsByBike> | undefined;
  return (moment, mounted) => {
    runs ??= runsByBike(ledger);
    return riderJobs(ledger, moment, mounted, runs);
  };
}

/** Jobs in their order; what is equal in time and urgency by the riders' order, the team's own before them. */
export function inOrder<Entry extends Job>(jobs: readonly Entry[], riders: readonly RiderBike[]): readonly Entry[] {
  const places = new Map(riders.map(({ riderId }, index) => [riderId, index]));
  const placeOf = ({ riderId }: Job) => (riderId === undefined ? -1 : (places.get(riderId) ?? riders.length));
  return [...jobs].sort((a, b) => compareJobs(a, b) || placeOf(a) - placeOf(b));
}

function disputeJobs(
  ledger: Ledger,
  moment: QueueMoment | undefined,
  riders: readonly RiderBike[],
): readonly DisputeJob[] {
  const due = moment && nextDue(moment);
  const known = new Set(riders.map(({ riderId }) => riderId));
  return openDisputes(ledger).map((dispute) => {
    const riderId = riderOf(dispute);
    return {
      kind: "dispute to check",
      id: `${dispute.kind}:${dispute.key}`,
      ...(known.has(riderId) && { riderId }),
      ...(due && { due }),
      dispute,
    };
  });
}

/** The first part of the key: a rider's, where the kind is about one. */
function riderOf(dispute: OpenDispute): string {
  if (isPlaceInDispute(dispute)) return dispute.mounted.riderId;
  const { kind, key } = dispute;
  return kind === riderKind.kind ? key : key.slice(0, Math.max(0, key.indexOf("/")));
}
