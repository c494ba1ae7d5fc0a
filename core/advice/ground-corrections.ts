/** Turns the condition rules into corrections for one bike on one day. */
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";
import { adjusterPath } from "#core/team/adjuster.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import type { Conditions } from "#core/weekend/conditions.ts";
import type { CourseMix } from "#core/weekend/course.ts";
import type { BlendBasis, BlendShare } from "./baseline-blend.ts";
import { type ConditionRule, conditionRules } from "./condition-rules.ts";
import type { Correction } from "./correction.ts";

/** The corrections that apply, rule by rule, in the order of the table. Each rule's own belong together. */
export function groundCorrections(
  mounted: RiderBike,
  basis: BlendBasis,
  mix: CourseMix,
  conditions: Day,
): readonly (readonly Correction[])[] {
  return conditionRules.map((rule) => {
    const weight = weightOf(rule, basis, mounted, mix, conditions);
    if (weight <= 0) return [];
    return rule.moves.flatMap((move) =>
      move.places.flatMap((place) => {
        const path = adjusterPath(place, move.adjuster);
        const found = mountedAdjuster(mounted.parts, path);
        if (!found) return [];
        return {
          rule: rule.id,
          path,
          change: move.felt * found.adjuster.felt * weight,
          because: {
            type: "condition rule" as const,
            rule: rule.id,
            ...(weight < 0.995 && { percent: Math.round(weight * 100) }),
          },
          provenance: "common practice" as const,
        };
      }),
    );
  });
}

/** What a day is like for the rules. */
type Day = Pick<Conditions, "ground" | "air">;

/** From 0, does not apply, to 1, applies in full. */
function weightOf(rule: ConditionRule, basis: BlendBasis, mounted: RiderBike, mix: CourseMix, day: Day): number {
  const { when, heldBy } = rule;
  switch (when.type) {
    case "ground":
      return when.grounds.includes(day.ground)
        ? shareOf(
            basis,
            ({ type, baseline }) =>
              type !== heldBy && !(baseline.ground !== undefined && when.grounds.includes(baseline.ground)),
          )
        : 0;
    case "no own baseline":
      return basis.missing.some((entry) => entry.type === when.courseType) ? mix[when.courseType] : 0;
    case "cold": {
      const air = celsius(day.air);
      if (air >= when.belowCelsius) return 0;
      return shareOf(basis, ({ baseline }) => celsius(baseline.heldAt.temperature) - air >= when.colderBy);
    }
    case "riding style": {
      const { style } = mounted.rider;
      if (style !== when.style) return 0;
      return shareOf(basis, ({ baseline }) => baseline.style !== undefined && baseline.style !== style);
    }
  }
}

/** The part of the blend that comes from baselines for which `holds` is true. */
function shareOf(basis: BlendBasis, holds: (share: BlendShare) => boolean): number {
  return basis.shares.reduce((sum, entry) => sum + (holds(entry) ? entry.share : 0), 0);
}

function celsius(temperature: TypedQuantity): number {
  return convert(temperature, "°C").value;
}
