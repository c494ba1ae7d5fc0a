/** The jobs of each rider, worked out anew only when something that concerns him has changed. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { type JobsOfRider, jobsFromRecords } from "#core/planning/job-queue.ts";
import type { Job } from "#core/planning/jobs/job.ts";
import { isWeekendOver } from "#core/weekend/programme.ts";

/** @param stampOf tells whether anything about a rider has changed, see `create-rider-stamps.ts` */
export function rememberJobs(ledger: Ledger, stampOf: (riderId: string) => string): () => JobsOfRider {
  const known = new Map<string, { readonly stamp: string; readonly jobs: readonly Job[] }>();
  return () => {
    const workOut = jobsFromRecords(ledger);
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
