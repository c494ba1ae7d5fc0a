/** The browser's clock, and the moments at which a page comes back to life. */
import type { Timers } from "./storage/device-storage.ts";

export const browserTimers: Timers = {
  now: () => Date.now(),
  after: (ms, act) => {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
};

/** Calls `wake` when the network or the page is back: waiting for a timer would waste the seconds of a pit stop. */
export function wakeOnReturn(wake: () => void): () => void {
  const whenVisible = (): void => {
    if (document.visibilityState === "visible") wake();
  };
  window.addEventListener("online", wake);
  window.addEventListener("pageshow", wake);
  document.addEventListener("visibilitychange", whenVisible);
  return () => {
    window.removeEventListener("online", wake);
    window.removeEventListener("pageshow", wake);
    document.removeEventListener("visibilitychange", whenVisible);
  };
}
