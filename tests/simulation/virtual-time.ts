/** Time that jumps from one event to the next, with room for promises between. */
import type { Timers } from "#client/device/storage/device-storage.ts";

export interface VirtualTime extends Timers {
  /** Runs the next event; false when there is none before `until`. */
  step(until: number): Promise<boolean>;
  /** How many events are still to come. */
  waiting(): number;
}

/** Turns of the promise queue after each event: more than the longest chain of awaits in the code under test. */
const PROMISE_TURNS = 16;

export function createVirtualTime(start: number): VirtualTime {
  let now = start;
  let serial = 0;
  const queue: { readonly at: number; readonly serial: number; readonly act: () => void }[] = [];
  return {
    now: () => now,
    waiting: () => queue.length,
    after: (ms, act) => {
      serial += 1;
      const event = { at: now + Math.max(0, ms), serial, act };
      let index = queue.length;
      while (index > 0 && isLater(queue[index - 1], event)) index -= 1;
      queue.splice(index, 0, event);
      return () => {
        const found = queue.indexOf(event);
        if (found >= 0) queue.splice(found, 1);
      };
    },
    step: async (until) => {
      const [next] = queue;
      if (!next || next.at > until) {
        now = Math.max(now, until);
        return false;
      }
      queue.shift();
      now = next.at;
      next.act();
      for (let turn = 0; turn < PROMISE_TURNS; turn += 1) await Promise.resolve();
      return true;
    },
  };
}

function isLater(
  one: { readonly at: number; readonly serial: number } | undefined,
  other: { readonly at: number; readonly serial: number },
): boolean {
  return one !== undefined && (one.at > other.at || (one.at === other.at && one.serial > other.serial));
}
