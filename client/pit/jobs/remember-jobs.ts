/** The jobs of each rider, worked out anew only when something that concerns him has changed. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { type JobsOfRider, jobsFromRecords } from "#core/planning/job-queue.ts";
import type { Job } from "#core/planning/jobs/job.ts";
import { isWeekendOver } from "#core/weekend/programme.ts";

/** @param stampOf tells whether anything about a rider has changed, see `rider-stamp.ts` */
export function rememberJobs(ledger: Ledger, stampOf: (riderId: string) => string): () => JobsOfRider {
  const known = new Map<string, { readonly stamp: string; readonly jobs: readonly Job[] }>();
  // What is ridden on the bikes concerns all: it is looked through once for them.
  let ofAll: { readonly stamp: string; readonly workOut: JobsOfRider } | undefined;
  return () => {
    const stampOfAll = stampOf("");
    if (ofAll?.stamp !== stampOfAll) ofAll = { stamp: stampOfAll, workOut: jobsFromRecords(ledger) };
    const { workOut } = ofAll;
    return (moment, mounted) => {
      const { programme, standings, sessionId, now } = moment;
      // The time itself matters only by what it makes of the sessions, so that a minute that passes costs nothing.
      const phases = standings.map(({ phase }) => phase).join();
      const when = `${programme.weekendId}/${sessionId}/${phases}/${isWeekendOver(programme.weekend, now)}`;
      const stamp = `${when}/${stampOf(mounted.riderId)}`;
      const last = known.get(mounted.riderId);
      if (last?.stamp === stamp) return last.jobs;
      const jobs = workOut(moment, mounted);
      known.set(mounted.riderId, { stamp, jobs });
      return jobs;
    };
  };
}
