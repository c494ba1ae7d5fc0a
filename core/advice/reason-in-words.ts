/** A reason as one sentence in English. */
import { describeQuantity } from "#core/team/quantity-schema.ts";
import { conditionRules } from "./condition-rules.ts";
import type { Because } from "./reason.ts";

/** One sentence for a person; quantities as `quantityText` writes them. */
export function describeReason(because: Because, quantityText = describeQuantity): string {
  switch (because.type) {
    case "own baseline":
      return `Own baseline for ${because.courseType}: ${quantityText(because.value)}.`;
    case "blend":
      return `Blend of own baselines: ${because.parts
        .map(({ percent, courseType, value }) => `${percent} % ${courseType} at ${quantityText(value)}`)
        .join(", ")}.`;
    case "condition rule": {
      const sentence = conditionRules.find(({ id }) => id === because.rule)?.reason ?? `By the rule "${because.rule}".`;
      return because.percent === undefined ? sentence : `${sentence} For ${because.percent} % of it.`;
    }
    case "rider mass":
      return `Rider at ${quantityText(because.now)}, baseline at ${quantityText(because.atBaseline)}: keeps the sag.`;
    case "altitude": {
      const air = because.now.value > because.atBaseline.value ? "thinner" : "denser";
      return `Baseline at ${quantityText(because.atBaseline)}, today ${quantityText(because.now)}: ${air} air, same support late in the stroke.`;
    }
    case "rebound follows":
      return `Rebound follows the ${because.spring} spring: the baseline's damping ratio stays.`;
    case "temperature":
      return `Set at ${quantityText(because.bench)} so that it reads ${quantityText(because.value)} at ${quantityText(because.course)}.`;
  }
}
