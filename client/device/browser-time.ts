/** The browser's clock, and the moments at which a page comes back to life. */
import type { Timers } from "./storage/device-storage.ts";

export const browserTimers: Timers = {
  now: () => Date.now(),
  after: (ms, act) => {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
};

/** ms between two turns of background work where the browser has no priorities: enough for a touch to come between. */
const BACKGROUND_PAUSE_MS = 10;

/**
 * Calls back as soon as nothing more pressing waits: a touch, a timer, or a frame to paint. It does not
 * wait for idle periods, of which the browser has 20 in a second, so that work in many turns is done soon.
 */
export function inTheBackground(act: () => void): void {
  // Older browsers have no scheduler.
  const { scheduler } = globalThis as { scheduler?: Pick<Scheduler, "postTask"> };
  if (scheduler) void scheduler.postTask(act, { priority: "background" });
  else setTimeout(act, BACKGROUND_PAUSE_MS);
}

/** Calls back once what has been done so far is painted; a page that nobody sees paints nothing and is called soon. */
export function afterPaint(act: () => void): void {
  const soon = (): void => void setTimeout(act, 0);
  if (document.visibilityState === "visible") requestAnimationFrame(soon);
  else soon();
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
