/** One rule of the rule book, whatever it is about. Its words are in `rule-text.ts`. */
import type { ConditionRule } from "./condition-rules.ts";
import type { ConflictRule, FeedbackRule } from "./feedback-rule.ts";
import type { PhysicsRule } from "./physics-rules.ts";
import type { Provenance } from "./reason.ts";

export type RuleEntry =
  | { readonly type: "physics"; readonly rule: PhysicsRule }
  | { readonly type: "condition"; readonly rule: ConditionRule }
  | { readonly type: "feedback"; readonly rule: FeedbackRule }
  | { readonly type: "question"; readonly rule: ConflictRule };

/** A rule in words, as the rule book shows it. */
export interface RuleText {
  readonly id: string;
  /** When it speaks: one phrase. */
  readonly when: string;
  /** What it does, in order of preference; one phrase each. Empty where there is nothing to set. */
  readonly moves: readonly string[];
  readonly reason: string;
  readonly notice?: string;
  readonly otherwise?: string;
  readonly provenance: Provenance;
}
