/** What shaped an adjustment, or kept one from being made, as facts and in English. */
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { describeQuantity } from "#core/team/quantity-schema.ts";
import { adjusterName } from "./adjuster-names.ts";
import { describeLimitProblem, type LimitProblem } from "./limits.ts";

/** One thing that stood in the way. */
export type Hindrance =
  /** It was changed for the same rule before and did not help. */
  | { readonly type: "changed for this already"; readonly path: AdjusterPath }
  /** Nothing settled is known of what it reads. */
  | { readonly type: "reading not known"; readonly path: AdjusterPath }
  /** It was changed since the run, past what the run's measurements ask for. */
  | { readonly type: "enough by now"; readonly path: AdjusterPath }
  /** No value of it brings the sag to its target. */
  | { readonly type: "sag out of reach"; readonly path: AdjusterPath }
  | { readonly type: "limit"; readonly problem: LimitProblem }
  /** The measurements ask for `asked`, or for more than the adjuster gives; `most` is one large step. */
  | { readonly type: "held to a large step"; readonly asked?: TypedQuantity; readonly most: TypedQuantity }
  | { readonly type: "no adjuster for it" };

/** One sentence for a person; quantities as `quantityText` writes them. */
export function describeHindrance(hindrance: Hindrance, quantityText = describeQuantity): string {
  switch (hindrance.type) {
    case "changed for this already":
      return `${adjusterName(hindrance.path)} was changed for this already.`;
    case "reading not known":
      return `${adjusterName(hindrance.path)}: what is on the bike is not known, or in dispute.`;
    case "enough by now":
      return `${adjusterName(hindrance.path)}: what is on the bike now is enough by the measurements of that run.`;
    case "sag out of reach":
      return `${adjusterName(hindrance.path)}: its range does not bring the sag to its target.`;
    case "limit":
      return describeLimitProblem(hindrance.problem, quantityText);
    case "held to a large step":
      return hindrance.asked
        ? `The measurements ask for ${quantityText(hindrance.asked)}; no more than ${quantityText(hindrance.most)} at a time, then ride again.`
        : `The measurements ask for more than this adjuster gives; ${quantityText(hindrance.most)} at a time, then ride again.`;
    case "no adjuster for it":
      return "The bike has no adjuster for this.";
  }
}
