/** The browser's clock, and the moments at which a page comes back to life. */
import type { Timers } from "./storage/device-storage.ts";

export const browserTimers: Timers = {
  now: () => Date.now(),
  after: (ms, act) => {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
};

/**
 * Calls back when the browser has nothing more pressing to do: to paint, or to answer a touch.
 * @param latestMs after which it is called all the same
 * @param pauseMs after which it is called where the browser does not tell when it is idle
 */
export function whenIdle(act: () => void, latestMs: number, pauseMs: number): void {
  // Safari has no requestIdleCallback.
  if (typeof requestIdleCallback === "function") requestIdleCallback(act, { timeout: latestMs });
  else setTimeout(act, pauseMs);
}

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
