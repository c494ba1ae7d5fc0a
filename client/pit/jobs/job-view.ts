/** A job in words, with what one touch can do about it and the place where the rest is done. */
import { jobQueue as words } from "#client/text/job-queue.ts";
import { formatMoment } from "#client/widgets/format.ts";
import type { Job } from "#core/planning/jobs/job.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { changeView, pressureView } from "./bench-job-view.ts";
import { disputeView, reportedView, serviceView } from "./bike-job-view.ts";
import { decisionView, missingView } from "./feedback-job-view.ts";
import type { JobContext, JobTouch } from "./job-touch.ts";

/** What one kind of job has of its own. */
export interface JobContent {
  readonly what: string;
  readonly why: string;
  /** What more there is to know before the touch, a line each; shown when asked for. */
  readonly steps: readonly string[];
  /** The main one first; none for a job that one touch cannot honestly do. */
  readonly touches: readonly JobTouch[];
  /** Where the job is done, or looked at more closely. */
  readonly place: { readonly label: string; readonly path: string } | undefined;
}

export interface JobView extends JobContent {
  /** The rider's name, or the team's. */
  readonly who: string;
  readonly kind: string;
  /** Until when: the session and its start as it was entered; undefined when no session is left. */
  readonly until: { readonly session: string; readonly startsAt: string; readonly start: string } | undefined;
}

export function jobView(context: JobContext, job: Job): JobView {
  const { riderId, due, kind } = job;
  const rider = riderId === undefined ? undefined : knownValue(context.device.ledger(), riderKind, riderId);
  return {
    ...contentOf(context, job),
    who: rider?.name ?? words.team,
    kind: words.kinds[kind],
    until: due && { session: words.until(due.name), startsAt: due.startsAt, start: formatMoment(due.startsAt) },
  };
}

function contentOf(context: JobContext, job: Job): JobContent {
  switch (job.kind) {
    case "change to make":
      return changeView(context, job);
    case "pressure check":
      return pressureView(context, job);
    case "reported change to confirm":
      return reportedView(context, job);
    case "feedback to decide on":
      return decisionView(context, job);
    case "feedback missing":
      return missingView(context, job);
    case "dispute to check":
      return disputeView(context, job);
    case "service due":
    case "service overdue":
      return serviceView(context, job);
  }
}
