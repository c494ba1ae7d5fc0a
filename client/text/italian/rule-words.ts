/** What the rules say, in Italian, by their ids. */
import { ruleWordsById } from "../rule-words-by-id.ts";
import { conditionWords } from "./rule-words-conditions.ts";
import { dampingWords } from "./rule-words-damping.ts";
import { gripWords } from "./rule-words-grip.ts";
import { physicsWords } from "./rule-words-physics.ts";
import { questionWords } from "./rule-words-questions.ts";
import { springWords } from "./rule-words-spring.ts";
import { travelWords } from "./rule-words-travel.ts";

/** Undefined for a rule that this version does not have. */
export const ruleWords = ruleWordsById({
  physics: physicsWords,
  conditions: conditionWords,
  feedback: [springWords, travelWords, dampingWords, gripWords],
  questions: questionWords,
});
