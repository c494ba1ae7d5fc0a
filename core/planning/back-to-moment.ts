/** Going back with a whole bike to a moment of its changelog, in an order that keeps every limit. */
import { DEFAULT_PUMP } from "#core/advice/bench-operations.ts";
import { type BenchSequence, benchSequence } from "#core/advice/bench-sequence.ts";
import type { Current } from "#core/ledger/ledger.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { benchReadings } from "./bench-readings.ts";
import { type EntriesResult, type Occasion, settingEntries } from "./entries.ts";

export interface BackToMoment extends BenchSequence {
  /** Adjusters that no value is known for then: they stay as they are. */
  readonly unknownThen: readonly AdjusterPath[];
  /** Adjusters in dispute then or now: somebody has to look at the bike first. */
  readonly disputed: readonly AdjusterPath[];
}

/** The steps at the bench from what is on the bike `now` to what was on it `then`; pressures as they read at `bench`. */
export function backToMoment(
  mounted: RiderBike,
  then: ReadonlyMap<AdjusterPath, Current<Setting>>,
  now: ReadonlyMap<AdjusterPath, Current<Setting>>,
  bench: Surroundings,
): BackToMoment {
  const isDisputed = (path: AdjusterPath) =>
    then.get(path)?.state === "disputed" || now.get(path)?.state === "disputed";
  const target: SetupValues = Object.fromEntries(
    Object.entries(benchReadings(mounted, then, bench)).filter(([path]) => !isDisputed(path as AdjusterPath)),
  );
  const paths = [...now.keys()];
  return {
    ...benchSequence(mounted, benchReadings(mounted, now, bench), target, { bench, pump: DEFAULT_PUMP }),
    unknownThen: paths.filter((path) => !isDisputed(path) && target[path] === undefined),
    disputed: paths.filter(isDisputed),
  };
}

/** All of these steps as one batch, with a note that says to when; refused as a whole while a limit blocks one of them. */
export function backToMomentEntries(occasion: Occasion, plan: BackToMoment, note: string): EntriesResult {
  if (plan.blocked.length > 0) return { ok: false, problem: { type: "limits", problems: plan.blocked } };
  const values: SetupValues = Object.fromEntries(plan.steps.map(({ path, to }) => [path, to]));
  return settingEntries(occasion, values, { type: "by hand", note });
}
