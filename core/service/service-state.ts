/** Where a work stands within its interval, and how long it still lasts. */
import type { RidingRate } from "./riding-hours.ts";

/**
 * - "in use": below the part of the interval from which on it is due
 * - "due": from there on, up to the whole interval
 * - "overdue": past the interval
 */
export const serviceStates = ["in use", "due", "overdue"] as const;
export type ServiceState = (typeof serviceStates)[number];

/** Hours come from sums of many runs: a difference below a hundredth of a second is none. */
const ROUNDING_HOURS = 1e-6;

/**
 * @param usedHours weighted hours since the work was last done
 * @param limitHours the interval
 * @param dueFrom part of the interval, above 0, 1 at most
 */
export function serviceState(usedHours: number, limitHours: number, dueFrom: number): ServiceState {
  if (usedHours > limitHours + ROUNDING_HOURS) return "overdue";
  return usedHours >= limitHours * dueFrom - ROUNDING_HOURS ? "due" : "in use";
}

/** What can be ridden before something is reached. */
export interface Remaining {
  /** Whole runs that still stay below it; 0 when it is reached. */
  readonly runs: number;
  /** Whole sessions likewise; undefined while no run tells how many runs a session has. */
  readonly sessions: number | undefined;
}

/** What is left of `usedHours` to `untilHours` at `rate`. */
export function remaining(usedHours: number, untilHours: number, rate: RidingRate): Remaining {
  const left = Math.max(0, untilHours - usedHours) + ROUNDING_HOURS;
  const runs = Math.floor(left / rate.hoursPerRun);
  const sessions =
    rate.runsPerSession === undefined ? undefined : Math.floor(left / (rate.hoursPerRun * rate.runsPerSession));
  return { runs, sessions };
}
