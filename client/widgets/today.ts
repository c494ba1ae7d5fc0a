/** The day by the device's own clock. */
import { wallClockNow } from "./create-wall-clock.ts";

/** The day of a moment (wall-clock milliseconds, see `core/weekend/session-clock.ts`): an ISO date such as 2026-05-30. */
export function dayOf(wallClock: number): string {
  return new Date(wallClock).toISOString().slice(0, 10);
}

/** Today where the device is. */
export function today(): string {
  return dayOf(wallClockNow());
}
