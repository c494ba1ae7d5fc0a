import { type Logger, reasonOf } from "./logging.ts";
import type { Room, Staged } from "./room.ts";
import type { UpdateStore } from "./store/update-store.ts";

/** An update on its way into the log, and what its session wants to do with the outcome. */
export type Arrival = {
  readonly room: Room;
  /** Puts it into the room's document, unheard of by anybody. */
  stage(): Staged;
  /** The outcome stands: what was staged is in the log and has been passed on, or it was refused. */
  settled(staged: Staged): void;
};

/**
 * Group commit: all updates that arrive before the next flush share one transaction and its fsync. While the log is
 * being written the others wait in the sockets, so a busy server makes large groups and a quiet one answers at once.
 */
export type CommitQueue = {
  push(arrival: Arrival): void;
  /** Commits what is there now. */
  flush(): void;
  /** Whether an update of this room still waits. */
  holds(room: Room): boolean;
  /** Whether any update waits for the next flush. */
  readonly isWaiting: boolean;
  /** Whether the newest write to the log succeeded; true before the first. */
  readonly isStoring: boolean;
};

type QueueNeeds = {
  readonly store: UpdateStore;
  readonly logger: Logger;
  /** Runs a flush soon, after the messages that are already here. */
  readonly schedule: (flush: () => void) => void;
  /** The log could not be written: this room's document is ahead of it and has to go. */
  readonly abandon: (room: Room) => void;
  /** Called for each room that had a part in a flush, at its end. */
  readonly afterFlush: (room: Room) => void;
};

export function createCommitQueue({ store, logger, schedule, abandon, afterFlush }: QueueNeeds): CommitQueue {
  let waiting: Arrival[] = [];
  let isScheduled = false;
  let isStoring = true;

  function write(outcomes: readonly { arrival: Arrival; staged: Staged }[]): boolean {
    const entries = outcomes.flatMap(({ arrival, staged }) =>
      newsIn(staged).map((update) => ({ document: arrival.room.name, update })),
    );
    if (entries.length === 0) return true;
    try {
      store.append(entries);
      isStoring = true;
    } catch (error) {
      logger.error("log could not be written", { updates: entries.length, reason: reasonOf(error) });
      isStoring = false;
    }
    return isStoring;
  }

  function flush(): void {
    isScheduled = false;
    const batch = waiting;
    waiting = [];
    const outcomes: { arrival: Arrival; staged: Staged }[] = [];
    const lost = new Set<Room>();
    for (const arrival of batch) {
      if (lost.has(arrival.room)) continue;
      try {
        outcomes.push({ arrival, staged: arrival.stage() });
      } catch (error) {
        logger.error("document could not be rebuilt", { document: arrival.room.name, reason: reasonOf(error) });
        lost.add(arrival.room);
      }
    }
    const sound = outcomes.filter(({ arrival }) => !lost.has(arrival.room));
    if (!write(sound)) {
      for (const { arrival, staged } of sound) if (newsIn(staged).length > 0) lost.add(arrival.room);
    }
    for (const room of lost) abandon(room);
    const standing = sound.filter(({ arrival }) => !lost.has(arrival.room));
    const rooms = new Set(standing.map(({ arrival }) => arrival.room));
    for (const room of rooms) room.publish();
    for (const { arrival, staged } of standing) arrival.settled(staged);
    for (const room of rooms) afterFlush(room);
  }

  return {
    push(arrival) {
      waiting.push(arrival);
      if (isScheduled) return;
      isScheduled = true;
      schedule(flush);
    },
    flush,
    holds(room) {
      return waiting.some((arrival) => arrival.room === room);
    },
    get isWaiting() {
      return waiting.length > 0;
    },
    get isStoring() {
      return isStoring;
    },
  };
}

function newsIn(staged: Staged): Uint8Array[] {
  return staged.outcome === "taken" && staged.news !== undefined ? [staged.news] : [];
}
