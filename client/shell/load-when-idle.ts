/** Loads what is not needed yet when the browser has nothing else to do: the network may be gone when it is needed. */

/** ms after which it is loaded all the same, and between two parts where the browser does not tell when it is idle. */
const LATEST_MS = 5000;
const PAUSE_MS = 500;

/** One after the other, so that none of them holds up what somebody does meanwhile. A part that cannot be had is asked for when it is opened. */
export function loadWhenIdle(loads: readonly (() => Promise<unknown>)[]): void {
  const [first, ...rest] = loads;
  if (!first) return;
  const load = (): void => void first().then(next, next);
  const next = (): void => loadWhenIdle(rest);
  // Safari has no requestIdleCallback.
  if (typeof requestIdleCallback === "function") requestIdleCallback(load, { timeout: LATEST_MS });
  else setTimeout(load, PAUSE_MS);
}
