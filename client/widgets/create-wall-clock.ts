/** The clock on the wall, as the sessions of a weekend are written by it. */
import { type Accessor, createSignal, onCleanup } from "solid-js";

const MINUTE_MS = 60_000;

/** What a clock needs from around it: the time in ms since the epoch, and an alarm with the way to stop it. */
export interface ClockSource {
  now(): number;
  after(ms: number, act: () => void): () => void;
  /** Calls back when the page is seen again: a device that has slept has missed its alarms. */
  onReturn(act: () => void): () => void;
}

const browserSource: ClockSource = {
  now: () => Date.now(),
  after: (ms, act) => {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
  onReturn: (act) => {
    document.addEventListener("visibilitychange", act);
    return () => document.removeEventListener("visibilitychange", act);
  },
};

/** Wall-clock milliseconds of this device at a moment (ms since the epoch), counted as if its clock ran in UTC. */
export function wallClockAt(moment: number): number {
  return moment - new Date(moment).getTimezoneOffset() * MINUTE_MS;
}

/** The same for now. */
export function wallClockNow(): number {
  return wallClockAt(Date.now());
}

/** The wall clock, which goes on at every full minute. It stops with its owner. */
export function createWallClock(source: ClockSource = browserSource): Accessor<number> {
  const [now, setNow] = createSignal(wallClockAt(source.now()));
  let stop = (): void => {};
  const tick = (): void => {
    stop();
    const moment = source.now();
    setNow(wallClockAt(moment));
    stop = source.after(MINUTE_MS - (moment % MINUTE_MS), tick);
  };
  tick();
  const stopReturn = source.onReturn(tick);
  onCleanup(() => {
    stop();
    stopReturn();
  });
  return now;
}
