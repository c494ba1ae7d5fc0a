/** Where and for what a setting is made: what the bike reads at the bench of one session. */
import type { Current } from "#core/ledger/ledger.ts";
import { benchReadings } from "#core/planning/bench-readings.ts";
import type { Occasion } from "#core/planning/entries.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { valuesOnBike } from "#core/weekend/on-the-bike.ts";
import type { Programme } from "#core/weekend/programme.ts";
import type { Setting } from "#core/weekend/setting.ts";

/** The occasion at the bench of a session; while course or conditions are not known, values are as they were typed. */
export function benchOccasion(
  mounted: RiderBike,
  settings: ReadonlyMap<AdjusterPath, Current<Setting>>,
  plan: Programme,
  sessionId: string | undefined,
): Occasion {
  const heldAt = benchOf(plan, sessionId);
  return {
    mounted,
    weekendId: plan.weekendId,
    ...(sessionId !== undefined && { sessionId }),
    ...(heldAt && { heldAt }),
    onTheBike: heldAt ? benchReadings(mounted, settings, heldAt) : valuesOnBike(settings),
  };
}

function benchOf({ course, sessions }: Programme, sessionId: string | undefined): Surroundings | undefined {
  const conditions = sessions.find(({ id }) => id === sessionId)?.conditions;
  if (!course || !conditions) return undefined;
  return { temperature: conditions.bench ?? conditions.air, altitude: course.altitude };
}
