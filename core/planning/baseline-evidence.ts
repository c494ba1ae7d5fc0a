/** How much riding stands behind a baseline. */
import { readingAfter } from "#core/advice/bench-reading.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { onceForEachState } from "#core/ledger/once-for-each-state.ts";
import { convert, dimensionOf } from "#core/quantity/unit.ts";
import type { Baseline } from "#core/team/baseline.ts";
import { bikeKind } from "#core/team/record-kinds.ts";
import { knownValue, type MountedAdjuster, mountedAdjusters, partsOn } from "#core/team/roster.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { settingsAtRun } from "./settings-at-run.ts";

export interface BaselineEvidence {
  readonly runs: number;
  /** On how many weekends these runs were. */
  readonly weekends: number;
}

/** What tells which settings a run was ridden with. */
type RiddenRun = Pick<LoggedRun, "run" | "riderId">;

/** All runs of all weekends by rider, so that many baselines can be judged in one go. */
export const runsByRider = onceForEachState(
  [runKind],
  (ledger): ReadonlyMap<string, readonly RiddenRun[]> =>
    new Map(ledger.owners(runKind).map((riderId) => [riderId, runsOf(ledger, riderId)])),
);

function runsOf(ledger: Ledger, riderId: string): readonly RiddenRun[] {
  return ledger.keys(runKind, riderId).flatMap((key) => {
    const run = knownValue(ledger, runKind, key);
    return run ? [{ run, riderId }] : [];
  });
}

/**
 * The runs of the rider that were ridden with `baseline` on its bike. A run counts where, for every value of the baseline
 * that has an adjuster on that bike now, the run's own record names a setting that differs by less than the adjuster's
 * felt step. A pressure is compared as it would have read in the surroundings that the baseline holds at; one that was
 * written without surroundings is compared as typed. A run that does not say what one of these adjusters was set to does
 * not count: what was not said is not known. Neither does any run while the bike is not known or has none of the adjusters.
 */
export function baselineEvidence(
  ledger: Ledger,
  baseline: Baseline,
  runs: readonly RiddenRun[] | undefined,
): BaselineEvidence {
  const bike = knownValue(ledger, bikeKind, baseline.bike);
  const adjusters = bike ? judgedFirstByCounts(mountedAdjusters(partsOn(ledger, baseline.bike, bike)), baseline) : [];
  const weekends = new Set<string>();
  let count = 0;
  for (const ridden of adjusters.length > 0 ? (runs ?? []) : []) {
    if (ridden.run.bike !== baseline.bike) continue;
    const settings = settingsAtRun(ledger, ridden);
    if (!adjusters.every((found) => isWith(found, baseline, settings.get(found.path)))) continue;
    count += 1;
    weekends.add(ridden.run.weekend);
  }
  return { runs: count, weekends: weekends.size };
}

/** The adjusters that have a value in the baseline; pressures, which take some physics, after all else. */
function judgedFirstByCounts(mounted: readonly MountedAdjuster[], { values }: Baseline): readonly MountedAdjuster[] {
  const isPressure = ({ adjuster }: MountedAdjuster): number => Number(dimensionOf(adjuster.unit) === "pressure");
  return mounted.filter(({ path }) => values[path] !== undefined).sort((a, b) => isPressure(a) - isPressure(b));
}

function isWith({ path, adjuster }: MountedAdjuster, baseline: Baseline, setting: Setting | undefined): boolean {
  const wanted = baseline.values[path];
  if (!wanted || !setting) return false;
  const { quantity, heldAt } = setting;
  const there = heldAt ? readingAfter(quantity, heldAt, baseline.heldAt) : quantity;
  const off = convert(there, adjuster.unit).value - convert(wanted, adjuster.unit).value;
  return Math.abs(off) < adjuster.felt - 1e-9;
}
