/** The adjuster that carries the load of an end, and how far physics may turn it when it looks for a value. */
import { differenceToSi, fromSi, toSi } from "#core/quantity/unit.ts";
import { type AdjusterKind, adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type MountedAdjuster, mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import { CHAMBER_MARGIN } from "./limits.ts";

/** Main pressure of an air spring, rate of a coil spring. */
export function loadAdjuster(mounted: RiderBike, place: "fork" | "shock"): MountedAdjuster | undefined {
  return (
    mountedAdjuster(mounted.parts, adjusterPath(place, "main-pressure")) ??
    mountedAdjuster(mounted.parts, adjusterPath(place, "spring-rate"))
  );
}

/** The range, in the adjuster's unit, in which a value makes a spring, the other values standing. */
export function searchRange(
  found: MountedAdjuster,
  values: SetupValues,
): { readonly low: number; readonly high: number } {
  const { minimum, maximum, unit, kind } = found.adjuster;
  const beside = (other: AdjusterKind, sign: 1 | -1): number | undefined => {
    const value = values[adjusterPath(found.place, other)];
    return value && fromSi(toSi(value) + sign * differenceToSi(CHAMBER_MARGIN), unit).value;
  };
  if (kind === "main-pressure")
    return { low: minimum, high: Math.min(maximum, beside("secondary-pressure", -1) ?? maximum) };
  if (kind === "secondary-pressure")
    return { low: Math.max(minimum, beside("main-pressure", 1) ?? minimum), high: maximum };
  return { low: minimum, high: maximum };
}
