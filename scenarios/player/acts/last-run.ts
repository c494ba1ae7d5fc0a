import { type LoggedRun, loggedRuns } from "#core/weekend/runs.ts";
import type { Desk } from "./act.ts";

/** The rider's newest run of the weekend that this device has. */
export function lastRun({ device, weekendId }: Desk, riderId: string): LoggedRun | undefined {
  return loggedRuns(device.ledger, weekendId, riderId)[0];
}

/** Why there is nothing to answer. */
export const noRun = "This device has no run of the rider's on this weekend.";
