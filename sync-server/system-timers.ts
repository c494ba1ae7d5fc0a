import type { Timers } from "./upstream/upstream-port.ts";

/** The process's own clock and timers. */
export const systemTimers: Timers = {
  now: () => performance.now(),
  after(ms, act) {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
};
