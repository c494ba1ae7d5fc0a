/** The sags that were measured on a bike at its runs: what the model of its springs is fitted to. */
import { ridingValues } from "#core/advice/riding-values.ts";
import type { MeasuredSag } from "#core/advice/suspension-model.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { partStays } from "#core/team/part-stays.ts";
import { placesOf } from "#core/team/parts-on-bike.ts";
import { type End, suspensionOf } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { programme, weekends } from "#core/weekend/programme.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { settingsAtRun } from "./settings-at-run.ts";

/** How many of the latest measurements are used: parts change over a season, and old sags with them. */
const LATEST = 12;

/**
 * The latest sags at `end`, each with what was set and where; runs without known settings of that part, conditions or
 * course are left out, and so is the run `without`. What was measured before the part came onto the bike was measured on
 * another part, or on another bike.
 */
export function measuredSags(
  ledger: Ledger,
  mounted: RiderBike,
  end: End,
  without: string | undefined,
): readonly MeasuredSag[] {
  const place = suspensionOf(end);
  const at = placesOf(ledger, mounted.bikeId, mounted.bike)[place];
  const since = at.state === "mounted" ? partStays(ledger, at.partId, mounted.bikeId).at(-1)?.from : undefined;
  const found: MeasuredSag[] = [];
  for (const { id: weekendId } of weekends(ledger)) {
    const plan = programme(ledger, weekendId);
    for (const logged of loggedRuns(ledger, weekendId, mounted.riderId)) {
      const { run, id } = logged;
      const sag = run[end].sag;
      const air = plan?.sessions.find((session) => session.id === run.session)?.conditions?.air;
      if (!sag || !air || !plan?.course || id === without || run.bike !== mounted.bikeId) continue;
      const heldAt = { temperature: air, altitude: plan.course.altitude };
      if (since !== undefined && Date.parse(logged.at) < since) continue;
      const values = ridingValues(mounted, settingsAtRun(ledger, logged), heldAt);
      if (!Object.keys(values).some((path) => path.startsWith(`${place}.`))) continue;
      found.push({ sag, values, heldAt, mass: mounted.rider.mass });
      if (found.length === LATEST) return found;
    }
  }
  return found;
}
