/** Readings on the bike, carried to the temperature and altitude of the ride, in each adjuster's own unit. */
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { readingAfter } from "./bench-reading.ts";

/**
 * The settings as they are at `ride`. A pressure whose surroundings were not written down is taken as read at the ride:
 * the best guess, a psi or two off at most.
 */
export function ridingValues(
  mounted: Pick<RiderBike, "parts">,
  settings: ReadonlyMap<AdjusterPath, Setting>,
  ride: Surroundings,
): SetupValues {
  const values: Partial<Record<AdjusterPath, TypedQuantity>> = {};
  for (const [path, { quantity, heldAt }] of settings) {
    const found = mountedAdjuster(mounted.parts, path);
    if (!found) continue;
    const there = heldAt ? readingAfter(quantity, heldAt, ride) : quantity;
    values[path] = convert(there, found.adjuster.unit);
  }
  return values;
}
