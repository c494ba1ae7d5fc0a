/** What the settings on a bike read at the bench, whatever the temperature was when they were made. */
import { readingAfter } from "#core/advice/bench-reading.ts";
import { settable } from "#core/advice/limits.ts";
import { type Current, settledValue } from "#core/ledger/ledger.ts";
import { convert, dimensionOf, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { Setting } from "#core/weekend/setting.ts";

/**
 * The settled settings as a gauge or a count shows them at `bench`. A pressure that was set in other surroundings is
 * carried there and rounded to its adjuster's step; all else is as typed. An adjuster in dispute has no reading.
 */
export function benchReadings(
  mounted: Pick<RiderBike, "parts">,
  settings: ReadonlyMap<AdjusterPath, Current<Setting>>,
  bench: Surroundings,
): SetupValues {
  const values: Partial<Record<AdjusterPath, TypedQuantity>> = {};
  for (const [path, current] of settings) {
    const setting = settledValue(current);
    const found = mountedAdjuster(mounted.parts, path);
    if (!setting || !found) continue;
    const { quantity, heldAt } = setting;
    const isAsTyped = dimensionOf(quantity.unit) !== "pressure" || !heldAt || isSame(heldAt, bench);
    values[path] = isAsTyped
      ? quantity
      : settable(found, convert(readingAfter(quantity, heldAt, bench), found.adjuster.unit).value);
  }
  return values;
}

function isSame(a: Surroundings, b: Surroundings): boolean {
  return toSi(a.temperature) === toSi(b.temperature) && toSi(a.altitude) === toSi(b.altitude);
}
