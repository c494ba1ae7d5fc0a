/** How the settings of a bike went over the runs of a weekend, for a chart. */

import { settable } from "#core/advice/limits.ts";
import { ridingValues } from "#core/advice/riding-values.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { convert, type Unit } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { settingsAtRun } from "./settings-at-run.ts";

export interface SettingSeries {
  readonly path: AdjusterPath;
  readonly unit: Unit;
  /** One value a run, in `unit` and on the adjuster's step; undefined where the run's record does not name it. */
  readonly values: readonly (number | undefined)[];
}

/**
 * The adjusters that stood differently in at least two of the runs, with their values run by run. Pressures are carried
 * to `ride`, since the same air reads otherwise on a colder bench; without it they are as typed.
 */
export function settingSeries(
  ledger: Ledger,
  mounted: RiderBike,
  runs: readonly LoggedRun[],
  ride: Surroundings | undefined,
): readonly SettingSeries[] {
  const setups = runs.map((logged): SetupValues => {
    const settings = settingsAtRun(ledger, logged);
    if (ride) return ridingValues(mounted, settings, ride);
    return Object.fromEntries([...settings].map(([path, { quantity }]) => [path, quantity]));
  });
  return mountedAdjusters(mounted.parts).flatMap((found): readonly SettingSeries[] => {
    const { unit } = found.adjuster;
    const values = setups.map((setup) => {
      const value = setup[found.path];
      return value && settable(found, convert(value, unit).value).value;
    });
    const different = new Set(values.filter((value) => value !== undefined));
    return different.size > 1 ? [{ path: found.path, unit, values }] : [];
  });
}
