/** Turns the condition rules into corrections for one bike on one day. */
import { adjusterPath } from "#core/team/adjuster.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import type { Conditions } from "#core/weekend/conditions.ts";
import type { CourseMix } from "#core/weekend/course.ts";
import type { BlendBasis } from "./baseline-blend.ts";
import { type ConditionRule, conditionRules } from "./condition-rules.ts";
import type { Correction } from "./correction.ts";

/** The corrections that apply, rule by rule, in the order of the table. Each rule's own belong together. */
export function groundCorrections(
  mounted: RiderBike,
  basis: BlendBasis,
  mix: CourseMix,
  conditions: Pick<Conditions, "ground">,
): readonly (readonly Correction[])[] {
  return conditionRules.map((rule) => {
    const weight = weightOf(rule, basis, mix, conditions);
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
          sentence: weight < 0.995 ? `${rule.reason} For ${Math.round(weight * 100)} % of it.` : rule.reason,
          provenance: "common practice" as const,
        };
      }),
    );
  });
}

/** From 0, does not apply, to 1, applies in full. */
function weightOf(
  rule: ConditionRule,
  basis: BlendBasis,
  mix: CourseMix,
  conditions: Pick<Conditions, "ground">,
): number {
  const { when, heldBy } = rule;
  switch (when.type) {
    case "ground": {
      if (!when.grounds.includes(conditions.ground)) return 0;
      const held = basis.shares.filter(
        ({ type, baseline }) =>
          type === heldBy || (baseline.ground !== undefined && when.grounds.includes(baseline.ground)),
      );
      return 1 - held.reduce((sum, { share }) => sum + share, 0);
    }
    case "no own baseline":
      return basis.missing.some((entry) => entry.type === when.courseType) ? mix[when.courseType] : 0;
  }
}
