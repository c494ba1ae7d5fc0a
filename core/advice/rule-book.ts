/** The rule book: everything that the advice goes by, in the order in which it goes. */
import { conditionRules } from "./condition-rules.ts";
import { conflictRules } from "./feedback-rules/conflict-rules.ts";
import { feedbackRules } from "./feedback-rules/rule-table.ts";
import { physicsRules } from "./physics-rules.ts";
import type { RuleEntry } from "./rule-entry.ts";

export const chapterNames = ["physics", "conditions", "feedback", "questions"] as const;
export type ChapterName = (typeof chapterNames)[number];

const entries: Readonly<Record<ChapterName, readonly RuleEntry[]>> = {
  physics: physicsRules.map((rule) => ({ type: "physics", rule })),
  conditions: conditionRules.map((rule) => ({ type: "condition", rule })),
  feedback: feedbackRules.map((rule) => ({ type: "feedback", rule })),
  questions: conflictRules.map((rule) => ({ type: "question", rule })),
};

/** The rules of one chapter. */
export function chapterEntries(chapter: ChapterName): readonly RuleEntry[] {
  return entries[chapter];
}
