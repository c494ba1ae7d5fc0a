/**
 * Rebound follows the spring: the clicks that keep the baseline's damping ratio
 * when the spring's rate at sag changes.
 */
import { clicksToKeepDampingRatio } from "#core/physics/damping.ts";
import { adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import { predict } from "./prediction.ts";
import type { SuspensionModel } from "./suspension-model.ts";

/**
 * The change of the rebound adjuster, in whole clicks of its scale (counted from closed: positive opens it, faster).
 * 0 when it rounds to none, or when the part has no rebound adjuster.
 */
export function reboundChange(
  mounted: RiderBike,
  model: SuspensionModel,
  before: SetupValues,
  after: SetupValues,
): number {
  const found = mountedAdjuster(mounted.parts, adjusterPath(model.place, "rebound"));
  const rateBefore = predict(model, before)?.rateAtSag;
  const rateAfter = predict(model, after)?.rateAtSag;
  if (!found || rateBefore === undefined || rateAfter === undefined) return 0;
  const clicks = clicksToKeepDampingRatio({ rateBefore, rateAfter, perClick: found.adjuster.perClick });
  return -Math.round(clicks) || 0;
}
