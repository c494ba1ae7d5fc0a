/** What every language does alike to tell a rule; the phrases are each language's own. */
import type { CourseType } from "#core/team/course-type.ts";
import type { End } from "#core/team/place.ts";
import type { ConditionMove, ConditionRule } from "./condition-rules.ts";
import type { ConflictRule, FeedbackRule, Move } from "./feedback-rule.ts";
import type { PhysicsRule } from "./physics-rules.ts";
import type { RuleEntry, RuleText } from "./rule-entry.ts";
import type { RuleWords } from "./rule-words.ts";
import type { Symptom } from "./symptom.ts";

/** The phrases of one language. */
export interface RulePhrases {
  /** The sentences of a rule by its id; undefined leaves them as the rule book has them. */
  readonly words: (id: string) => RuleWords | undefined;
  /** When a correction by physics speaks and what it does; undefined leaves it as the rule book has it. */
  readonly physics: (id: string) => Pick<PhysicsRule, "when" | "move" | "reason"> | undefined;
  /** When a feedback rule speaks: what is felt at which ends, and what must not be. */
  readonly felt: (ends: readonly End[], all: readonly Symptom[], none: readonly Symptom[]) => string;
  /** One move of a feedback rule; the rebound may have to follow it. */
  readonly move: (move: Move, reboundFollows: boolean) => string;
  readonly condition: (when: ConditionRule["when"]) => string;
  /** Joined to the condition: the baseline of this course type already holds its part of the course. */
  readonly heldBy: (courseType: CourseType) => string;
  readonly conditionMove: (move: ConditionMove) => string;
  /** When a question is asked: symptoms that exclude each other. */
  readonly conflict: (ends: readonly End[], all: readonly Symptom[]) => string;
}

/** Tells any rule in the language of the phrases. */
export function ruleInWords(phrases: RulePhrases): (entry: RuleEntry) => RuleText {
  return (entry) => {
    switch (entry.type) {
      case "physics":
        return physicsInWords(phrases, entry.rule);
      case "condition":
        return conditionInWords(phrases, entry.rule);
      case "feedback":
        return feedbackInWords(phrases, entry.rule);
      case "question":
        return questionInWords(phrases, entry.rule);
    }
  };
}

function physicsInWords(phrases: RulePhrases, rule: PhysicsRule): RuleText {
  const { when, move, reason } = phrases.physics(rule.id) ?? rule;
  return { id: rule.id, when, moves: [move], reason, provenance: rule.provenance };
}

function conditionInWords(phrases: RulePhrases, { id, when, heldBy, moves, reason }: ConditionRule): RuleText {
  const held = heldBy === undefined ? "" : phrases.heldBy(heldBy);
  return {
    id,
    when: `${phrases.condition(when)}${held}`,
    moves: moves.map(phrases.conditionMove),
    reason: phrases.words(id)?.reason ?? reason,
    provenance: "common practice",
  };
}

function feedbackInWords(phrases: RulePhrases, rule: FeedbackRule): RuleText {
  const { id, ends, when, moves, coupled, provenance } = rule;
  const { reason, notice = rule.notice, otherwise = rule.otherwise } = phrases.words(id) ?? rule;
  return {
    id,
    when: phrases.felt(ends, when.all, when.none ?? []),
    moves: moves.map((move) => phrases.move(move, coupled !== undefined && isFollowed(move))),
    reason,
    notice,
    otherwise,
    provenance,
  };
}

function isFollowed({ at, adjuster }: Move): boolean {
  return at === "suspension" && adjuster !== "rebound";
}

function questionInWords(phrases: RulePhrases, { id, ends, all, question }: ConflictRule): RuleText {
  return {
    id,
    when: phrases.conflict(ends, all),
    moves: [],
    reason: phrases.words(id)?.reason ?? question,
    provenance: "common practice",
  };
}
