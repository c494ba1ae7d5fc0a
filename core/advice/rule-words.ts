/** The rules' own words, by their ids: records and advice carry ids only. */
import { conditionRules } from "./condition-rules.ts";
import { conflictRules } from "./feedback-rules/conflict-rules.ts";
import { feedbackRules } from "./feedback-rules/rule-table.ts";
import { physicsRules } from "./physics-rules.ts";

/** What a rule says, each one sentence. A rule that asks a question has it as its reason. */
export interface RuleWords {
  readonly reason: string;
  /** What the rider should notice on the next run. */
  readonly notice?: string;
  /** What to do when it does not help. */
  readonly otherwise?: string;
}

const wordsById: ReadonlyMap<string, RuleWords> = new Map<string, RuleWords>([
  ...physicsRules.map(({ id, reason }): [string, RuleWords] => [id, { reason }]),
  ...conditionRules.map(({ id, reason }): [string, RuleWords] => [id, { reason }]),
  ...feedbackRules.map(({ id, reason, notice, otherwise }): [string, RuleWords] => [id, { reason, notice, otherwise }]),
  ...conflictRules.map(({ id, question }): [string, RuleWords] => [id, { reason: question }]),
]);

/** In English; undefined for a rule that this version does not have. */
export function ruleWords(id: string): RuleWords | undefined {
  return wordsById.get(id);
}
