import type { Ground } from "#core/team/ground.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { programme } from "#core/weekend/programme.ts";
import type { Desk } from "./act.ts";

/** Where a pressure is read while working on a bike for a session; undefined until course and conditions are entered. */
export function benchOf(desk: Desk, sessionId: string): Surroundings | undefined {
  const found = outsideOf(desk, sessionId);
  return found && { temperature: found.bench ?? found.air, altitude: found.altitude };
}

/** Where a session is ridden; undefined until course and conditions are entered. */
export function rideOf(desk: Desk, sessionId: string): Surroundings | undefined {
  const found = outsideOf(desk, sessionId);
  return found && { temperature: found.air, altitude: found.altitude };
}

/** The ground of a session; undefined until conditions are entered. */
export function groundOf(desk: Desk, sessionId: string): Ground | undefined {
  return outsideOf(desk, sessionId)?.ground;
}

function outsideOf({ device, weekendId }: Desk, sessionId: string) {
  const plan = programme(device.ledger, weekendId);
  const conditions = plan?.sessions.find(({ id }) => id === sessionId)?.conditions;
  return plan?.course && conditions && { ...conditions, altitude: plan.course.altitude };
}
