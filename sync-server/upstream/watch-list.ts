import { deadAfterMs, longestWaitMs, waitBeforeRetry } from "#core/protocol/reconnection.ts";
import type { Logger } from "../logging.ts";
import type { Timers, UpstreamPort } from "./upstream-port.ts";

/** By document, the number of its newest update in the upstream's log. */
export type Positions = ReadonlyMap<string, number>;

/** Asks the upstream again and again which documents it has; so it also knows whether the upstream can be reached. */
export type ListWatch = {
  readonly isConnected: boolean;
  /** A link was lost: asks soon whether the upstream is still there. */
  hurry(): void;
  close(): void;
};

export type ListWatchNeeds = {
  readonly port: UpstreamPort;
  readonly timers: Timers;
  /** From 0 to below 1. */
  readonly random: () => number;
  readonly logger: Logger;
  /** Milliseconds from one question to the next, on the average. */
  readonly everyMs: number;
  readonly isDocumentName: (name: string) => boolean;
  /** `isNew` when the upstream could not be reached before. */
  readonly onList: (positions: Positions, isNew: boolean) => void;
  readonly onLost: () => void;
};

/** Each wait is drawn between three and five quarters of this. */
export const defaultListEveryMs = 10_000;

export function watchList(needs: ListWatchNeeds): ListWatch {
  const { port, timers, random, logger, everyMs, isDocumentName, onList, onLost } = needs;
  let isConnected = false;
  let isClosed = false;
  let failures = 0;
  let lastProblem: string | undefined;
  let callOffNext: (() => void) | undefined;
  let nextAt = 0;
  let giveUp: (() => void) | undefined;

  function askIn(ms: number): void {
    callOffNext?.();
    nextAt = timers.now() + ms;
    callOffNext = timers.after(ms, ask);
  }

  function ask(): void {
    callOffNext = undefined;
    const abort = new AbortController();
    let isSettled = false;
    const settle = (act: () => void): void => {
      if (isSettled) return;
      isSettled = true;
      callOffPatience();
      giveUp = undefined;
      if (!isClosed) act();
    };
    const callOffPatience = timers.after(deadAfterMs, () => {
      settle(() => failed("The upstream does not answer."));
      abort.abort();
    });
    giveUp = () => {
      settle(() => {});
      abort.abort();
    };
    port.listDocuments(abort.signal).then((listing) =>
      settle(() => {
        if (listing.ok) listed(listing.list.documents);
        else failed(listing.problem.sentence);
      }),
    );
  }

  function listed(documents: readonly { readonly name: string; readonly position: number }[]): void {
    const isNew = !isConnected;
    if (isNew) logger.info("upstream reached", { documents: documents.length });
    isConnected = true;
    failures = 0;
    lastProblem = undefined;
    askIn(everyMs * (0.75 + random() / 2));
    onList(new Map(documents.flatMap(({ name, position }) => (isDocumentName(name) ? [[name, position]] : []))), isNew);
  }

  function failed(problem: string): void {
    // Told once, not with each try of a day without internet.
    if (problem !== lastProblem) logger.warn("upstream out of reach", { reason: problem });
    lastProblem = problem;
    failures += 1;
    askIn(waitBeforeRetry(failures, random));
    if (!isConnected) return;
    isConnected = false;
    onLost();
  }

  askIn(0);
  return {
    get isConnected() {
      return isConnected;
    },
    hurry() {
      if (isClosed || giveUp !== undefined || !isConnected) return;
      const wait = random() * longestWaitMs;
      // Many links that are lost at once ask once.
      if (timers.now() + wait < nextAt) askIn(wait);
    },
    close() {
      isClosed = true;
      callOffNext?.();
      giveUp?.();
    },
  };
}
