/** The team's queue while it is shown: what is open, what was done here a moment ago, and taking that back. */

import { type Accessor, batch, createMemo, createSignal, untrack } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { takeBack } from "#client/device/take-back.ts";
import { jobQueue as words } from "#client/text/job-queue.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { inOrder, jobQueue } from "#core/planning/job-queue.ts";
import type { Job } from "#core/planning/jobs/job.ts";
import { canTakeBack } from "#core/planning/own-acts.ts";
import { type RiderBike, riderBikes } from "#core/team/roster.ts";
import type { ChosenSession } from "../chosen-session.ts";
import { createRiderTurns, type Later } from "./create-rider-turns.ts";
import type { JobTouch, TouchResult } from "./job-touch.ts";
import { rememberJobs } from "./remember-jobs.ts";
import { riderStamp } from "./rider-stamp.ts";

/** What one touch did. */
export interface DoneJob {
  readonly job: Job;
  /** What was done, in words. */
  readonly said: string;
  /** The records that it wrote. */
  readonly records: readonly string[];
  /** What was done to the same job before; an undo goes back to that. */
  readonly before: DoneJob | undefined;
}

export interface QueueRow {
  readonly job: Job;
  /** Absent while the job is open. */
  readonly done: DoneJob | undefined;
}

export interface JobQueueState {
  /** The open jobs, and where they stood those that were done here since the screen was opened. */
  readonly rows: Accessor<readonly QueueRow[]>;
  /** The riders, by plate, each with the number of open jobs. */
  readonly riders: Accessor<readonly { readonly mounted: RiderBike; readonly open: number }[]>;
  /** Not all riders have had their turn yet. */
  readonly isWorking: Accessor<boolean>;
  /** What the last touch did. */
  readonly notice: Accessor<string | undefined>;
  /** Why the last touch on that job was refused. */
  problemOf(jobId: string): string | undefined;
  touch(job: Job, touch: JobTouch): void;
  /** Whether what was done can be taken back: nobody has changed it since. */
  canUndo(done: DoneJob): boolean;
  undo(done: DoneJob, title: string): void;
}

/** What the queue is asked for by its screen. */
export interface JobQueueContext {
  readonly device: Pick<Device, "ledger" | "revert">;
  /** All copies have been read once: before that there are no jobs to speak of. */
  readonly isRead: Accessor<boolean>;
  readonly chosen: Pick<ChosenSession, "programme" | "session">;
  /** Wall-clock milliseconds, see `core/weekend/session-clock.ts`. */
  readonly now: Accessor<number>;
  /** The riders' jobs are worked out one rider a turn. */
  readonly later: Later;
}

/** The queue of the chosen weekend, for the chosen session. */
export function createJobQueue({ device, isRead, chosen, now, later }: JobQueueContext): JobQueueState {
  const ledger = untrack(device.ledger);
  const remembered = rememberJobs(ledger, (riderId) => riderStamp(ledger, riderId));
  const [done, setDone] = createSignal<ReadonlyMap<string, DoneJob>>(new Map());
  const [notice, setNotice] = createSignal<string>();
  const [problem, setProblem] = createSignal<{ readonly jobId: string; readonly sentence: string }>();
  const [ownActs, setOwnActs] = createSignal(0);
  /**
   * The device's signal waits until a press is answered. What was done here is followed at once: else the row that an undo
   * brings back would be gone for a frame.
   */
  const follow = (): void => {
    ownActs();
    device.ledger();
  };
  const bikes = createMemo(() => {
    follow();
    return riderBikes(ledger);
  });
  const workedOut = createRiderTurns(isRead, () => bikes().length, later);
  const open = createMemo((): readonly Job[] => {
    if (!isRead()) return [];
    follow();
    const question = {
      weekendId: chosen.programme()?.weekendId ?? "",
      sessionId: chosen.session()?.id ?? "",
      now: now(),
    };
    const jobsOf = remembered();
    const inTurn = new Set(
      bikes()
        .slice(0, workedOut())
        .map(({ riderId }) => riderId),
    );
    return jobQueue(ledger, question, (at, mounted) => (inTurn.has(mounted.riderId) ? jobsOf(at, mounted) : []));
  });
  const rows = createMemo((): readonly QueueRow[] => {
    const openIds = new Set(open().map(({ id }) => id));
    const doneHere = [...done().values()].filter(({ job }) => !openIds.has(job.id));
    const doneById = new Map(doneHere.map((one) => [one.job.id, one]));
    return inOrder([...open(), ...doneHere.map(({ job }) => job)], bikes()).map((job) => ({
      job,
      done: doneById.get(job.id),
    }));
  });
  const putBack = (jobId: string, earlier: DoneJob | undefined): void => {
    setDone((all) => {
      const others = [...all].filter(([id]) => id !== jobId);
      return new Map(earlier ? [...others, [jobId, earlier]] : others);
    });
  };
  const refuse = (jobId: string, sentence: string): void => {
    setNotice(undefined);
    setProblem({ jobId, sentence });
  };
  const accept = (sentence: string): void => {
    setProblem(undefined);
    setNotice(sentence);
  };
  return {
    rows,
    isWorking: () => workedOut() < bikes().length,
    riders: () => {
      const counts = new Map<string | undefined, number>();
      for (const { riderId } of open()) counts.set(riderId, (counts.get(riderId) ?? 0) + 1);
      return bikes().map((mounted) => ({ mounted, open: counts.get(mounted.riderId) ?? 0 }));
    },
    notice,
    problemOf: (jobId) => (problem()?.jobId === jobId ? problem()?.sentence : undefined),
    // In one batch, so that the row is never gone in between: it keeps its place, and the finger its button.
    touch: (job, touch) =>
      batch(() => {
        const result = touch.write();
        if (!result.ok) return refuse(job.id, sentenceOf(result));
        setOwnActs((count) => count + 1);
        const records = result.records.map(({ id }) => id);
        setDone(
          (before) => new Map([...before, [job.id, { job, said: touch.said, records, before: before.get(job.id) }]]),
        );
        accept(words.doneNow(touch.said));
      }),
    canUndo: ({ records }) => {
      follow();
      return records.length > 0 && records.every((id) => canTakeBack(ledger, id));
    },
    undo: ({ job, records, before }, title) =>
      batch(() => {
        const result = takeBack(device, records);
        if (!result.ok) return refuse(job.id, recordProblemText(result.problem));
        setOwnActs((count) => count + 1);
        putBack(job.id, before);
        accept(title);
      }),
  };
}

function sentenceOf(result: Extract<TouchResult, { readonly ok: false }>): string {
  return "sentence" in result ? result.sentence : recordProblemText(result.problem);
}
