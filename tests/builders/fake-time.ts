/** Time that goes on only when a test says so. */
import type { Timers } from "#client/device/storage/device-storage.ts";

export interface FakeTime extends Timers {
  /** Lets `ms` pass, running what falls due in its order, with room for promises between. */
  pass(ms: number): Promise<void>;
}

/** A clock that stands at `start` (ms since the epoch). */
export function createFakeTime(start = 0): FakeTime {
  let now = start;
  let serial = 0;
  const due = new Map<number, { readonly at: number; readonly act: () => void }>();
  const settle = async (): Promise<void> => {
    for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
  };
  return {
    now: () => now,
    after: (ms, act) => {
      serial += 1;
      const id = serial;
      due.set(id, { at: now + ms, act });
      return () => void due.delete(id);
    },
    pass: async (ms) => {
      const until = now + ms;
      await settle();
      for (;;) {
        const [next] = [...due.entries()]
          .filter(([, { at }]) => at <= until)
          .sort((a, b) => a[1].at - b[1].at || a[0] - b[0]);
        if (!next) break;
        due.delete(next[0]);
        now = Math.max(now, next[1].at);
        next[1].act();
        await settle();
      }
      now = until;
    },
  };
}
