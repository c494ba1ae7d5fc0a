import { type Logger, reasonOf } from "../logging.ts";
import type { UpdateStore } from "../store/update-store.ts";
import { type SnapshotOutcome, takeSnapshot } from "./take-snapshot.ts";

/** When a document's updates are put together. */
export type SnapshotLimits = {
  /** A snapshot is due when more updates than this stand beside the newest one … */
  readonly rows: number;
  /** … or more bytes of them. */
  readonly bytes: number;
  /** An open document is left alone until nothing was written to it for so long, milliseconds … */
  readonly quietMs: number;
  /** … unless it has so many times the updates or bytes at which a snapshot is due. */
  readonly mostTimes: number;
  /** A larger document, in bytes of its log, waits until nobody has it open. */
  readonly largeBytes: number;
  /** After a failure a document is left alone for so long, milliseconds. */
  readonly retryMs: number;
};

/** A season of 10,000 records has about 2 MB; reading 2000 updates takes about 20 ms more than reading them as one. */
export const defaultSnapshotLimits: SnapshotLimits = {
  rows: 2000,
  bytes: 1024 * 1024,
  quietMs: 5000,
  mostTimes: 4,
  largeBytes: 8 * 1024 * 1024,
  retryMs: 300_000,
};

/** What has been done since the start. */
export type SnapshotReport = {
  readonly snapshots: number;
  readonly failures: number;
  /** Time that they took, without the turns of others in between. */
  readonly totalSeconds: number;
  /** The longest time for which others had to wait. */
  readonly longestTurnSeconds: number;
};

/** Takes snapshots, one at a time, in turns that are short enough to disturb nobody. */
export type SnapshotKeeper = {
  /** Updates of this document were written to the log. */
  written(document: string): void;
  /** Nobody has this document open any more. */
  closed(document: string): void;
  /** Throws away what is on its way and does no more. */
  stop(): void;
  report(): SnapshotReport;
};

export type SnapshotKeeperNeeds = {
  readonly store: UpdateStore;
  readonly logger: Logger;
  readonly limits: SnapshotLimits;
  /** Milliseconds of a clock that never goes back. */
  readonly now: () => number;
  /** Runs something once, after so many milliseconds, in a turn of its own. @returns what calls it off. */
  readonly after: (ms: number, act: () => void) => () => void;
  readonly isOpen: (document: string) => boolean;
  /** Whether updates wait for the next flush, which comes first. */
  readonly isFlushDue: () => boolean;
};

type Job = { readonly document: string; readonly turns: Generator<void, SnapshotOutcome>; seconds: number };

export function createSnapshotKeeper(needs: SnapshotKeeperNeeds): SnapshotKeeper {
  const { store, logger, limits, now, after, isOpen, isFlushDue } = needs;
  const lastWritten = new Map<string, number>();
  const notBefore = new Map<string, number>();
  let [snapshots, failures, totalSeconds, longestTurnSeconds] = [0, 0, 0, 0];
  let callOff: (() => void) | undefined;
  let lookAt = Number.POSITIVE_INFINITY;
  let job: Job | undefined;
  let isStopped = false;

  function excess(document: string): number {
    const { rows, rowBytes } = store.extent(document);
    return Math.max(rows / limits.rows, rowBytes / limits.bytes);
  }

  function isRipe(document: string): boolean {
    if (now() < (notBefore.get(document) ?? 0)) return false;
    if (!isOpen(document)) return true;
    const { rowBytes, snapshotBytes } = store.extent(document);
    if (rowBytes + snapshotBytes > limits.largeBytes) return false;
    const quietSince = lastWritten.get(document) ?? Number.NEGATIVE_INFINITY;
    return now() - quietSince >= limits.quietMs || excess(document) > limits.mostTimes;
  }

  /** An earlier look that is on its way stays: one that is put off again and again would never come under load. */
  function lookIn(ms: number): void {
    const at = now() + ms;
    if (isStopped || job !== undefined || lookAt <= at) return;
    callOff?.();
    lookAt = at;
    callOff = after(ms, look);
  }

  function look(): void {
    lookAt = Number.POSITIVE_INFINITY;
    const due = [...store.positions().keys()].filter((document) => excess(document) > 1);
    const ripe = due.find(isRipe);
    if (ripe === undefined) {
      if (due.length > 0) lookIn(limits.quietMs);
      return;
    }
    job = { document: ripe, turns: workOn(store, ripe), seconds: 0 };
    callOff = after(0, takeTurn);
  }

  function takeTurn(): void {
    if (job === undefined) return;
    if (isFlushDue()) {
      callOff = after(1, takeTurn);
      return;
    }
    const begun = now();
    const outcome = advance(job.turns);
    const seconds = (now() - begun) / 1000;
    job.seconds += seconds;
    totalSeconds += seconds;
    longestTurnSeconds = Math.max(longestTurnSeconds, seconds);
    if (outcome === undefined) {
      callOff = after(0, takeTurn);
      return;
    }
    const { document, seconds: took } = job;
    job = undefined;
    if (outcome.ok) succeeded(document, took, outcome.bytes);
    else failed(document, outcome.reason);
  }

  function succeeded(document: string, seconds: number, bytes: number): void {
    snapshots += 1;
    notBefore.delete(document);
    logger.info("snapshot taken", { document, bytes, ms: Math.round(seconds * 1000) });
    lookIn(0);
  }

  function failed(document: string, reason: string): void {
    failures += 1;
    notBefore.set(document, now() + limits.retryMs);
    logger.error("snapshot failed; the log stays as it was", { document, reason });
    lookIn(0);
  }

  // What an earlier run of the server has left: nobody has it open yet.
  lookIn(0);
  return {
    written(document) {
      if (isStopped) return;
      lastWritten.set(document, now());
      const times = excess(document);
      if (times > limits.mostTimes && isRipe(document)) lookIn(0);
      else if (times > 1) lookIn(limits.quietMs);
    },
    closed(document) {
      if (isStopped) return;
      lastWritten.delete(document);
      if (excess(document) > 1) lookIn(0);
    },
    stop() {
      isStopped = true;
      callOff?.();
      job?.turns.return({ ok: false, reason: "the server stops" });
      job = undefined;
    },
    report: () => ({ snapshots, failures, totalSeconds, longestTurnSeconds }),
  };
}

function* workOn(store: UpdateStore, document: string): Generator<void, SnapshotOutcome> {
  const outcome = yield* takeSnapshot(store.draftSnapshot(document));
  if (!outcome.ok) return outcome;
  yield;
  try {
    while (store.giveBackSpace()) yield;
  } catch {
    // The snapshot stands; the space is free for later updates, and the next snapshot tries again to give it back.
  }
  return outcome;
}

/** @returns undefined while there is more to do. */
function advance(turns: Job["turns"]): SnapshotOutcome | undefined {
  try {
    const turn = turns.next();
    return turn.done === true ? turn.value : undefined;
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
}
