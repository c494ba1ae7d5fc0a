/** The sentences of one language's rules, found by the rule's id. */
import type { RuleWords } from "#core/advice/rule-words.ts";

export interface RuleWordsByChapter {
  readonly physics: Readonly<Record<string, { readonly reason: string }>>;
  /** The reasons of the rules of ground and course. */
  readonly conditions: Readonly<Record<string, string>>;
  /** The rules after a run, in as many parts as the language keeps them in. */
  readonly feedback: readonly Readonly<Record<string, RuleWords>>[];
  readonly questions: Readonly<Record<string, string>>;
}

/** The finder; it gives undefined for a rule that this version does not have. */
export function ruleWordsById(chapters: RuleWordsByChapter): (id: string) => RuleWords | undefined {
  const { physics, conditions, feedback, questions } = chapters;
  const reasons = [conditions, questions].flatMap(Object.entries<string>);
  const words = new Map<string, RuleWords>([
    ...[physics, ...feedback].flatMap(Object.entries<RuleWords>),
    ...reasons.map(([id, reason]): [string, RuleWords] => [id, { reason }]),
  ]);
  return (id) => words.get(id);
}
