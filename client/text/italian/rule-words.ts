/** What the rules say, in Italian, by their ids. */
import type { RuleWords } from "#core/advice/rule-words.ts";
import { conditionWords } from "./rule-words-conditions.ts";
import { dampingWords } from "./rule-words-damping.ts";
import { gripWords } from "./rule-words-grip.ts";
import { physicsWords } from "./rule-words-physics.ts";
import { questionWords } from "./rule-words-questions.ts";
import { springWords } from "./rule-words-spring.ts";
import { travelWords } from "./rule-words-travel.ts";

const wordsById: ReadonlyMap<string, RuleWords> = new Map(
  Object.entries<RuleWords>({
    ...reasons(Object.fromEntries(Object.entries(physicsWords).map(([id, words]) => [id, words.reason]))),
    ...reasons(conditionWords),
    ...springWords,
    ...travelWords,
    ...dampingWords,
    ...gripWords,
    ...reasons(questionWords),
  }),
);

/** Undefined for a rule that this version does not have. */
export function ruleWords(id: string): RuleWords | undefined {
  return wordsById.get(id);
}

function reasons(sentences: Readonly<Record<string, string>>): Readonly<Record<string, RuleWords>> {
  return Object.fromEntries(Object.entries(sentences).map(([id, reason]) => [id, { reason }]));
}
