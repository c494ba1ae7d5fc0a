/** The rules in English, made from the rules themselves so that the rule book cannot tell anything else. */
import type { CourseType } from "#core/team/course-type.ts";
import type { End } from "#core/team/place.ts";
import { nameOfKind } from "./adjuster-names.ts";
import type { ConditionMove, ConditionRule } from "./condition-rules.ts";
import type { Move, Sizing } from "./feedback-rule.ts";
import type { ChapterName } from "./rule-book.ts";
import { ruleInWords } from "./rule-in-words.ts";
import { ruleWords } from "./rule-words.ts";
import type { Symptom } from "./symptom.ts";

/** What each chapter of the rule book is called and about. */
export const chapterText: Readonly<Record<ChapterName, { readonly title: string; readonly about: string }>> = {
  physics: {
    title: "Before the weekend: the physics",
    about: "What the rider's own baselines are corrected by, worked out for each bike.",
  },
  conditions: {
    title: "Before the weekend: ground and course",
    about:
      "What the rider's own baselines do not hold yet. A felt step is the part's own smallest change that is felt.",
  },
  feedback: {
    title: "After a run: feedback",
    about: "One change at a time, in this order: damage, sag, travel, spring feel, damping, grip, balance.",
  },
  questions: {
    title: "After a run: questions",
    about: "Symptoms that exclude each other. They are asked about before anything is changed.",
  },
};

function feltText(ends: readonly End[], all: readonly Symptom[], none: readonly Symptom[]): string {
  const not = none.length > 0 ? `, and not: ${none.join(", ")}` : "";
  return `${ends.join(" or ")}: ${all.join(", ")}${not}`;
}

const sizingText: Record<Sizing, string> = {
  "sag to target": "sized to bring the sag to its target",
  "hit within travel": "sized to keep the hardest hit within the travel",
  "hit uses travel": "sized to let the measured hit use the travel",
  "balance as before": "sized to the baseline's balance of the two ends",
  felt: "by the smallest change that is felt",
};

function moveText({ at, end, adjuster, direction, size }: Move, reboundFollows: boolean): string {
  const name = at === "tyre" ? "tyre pressure" : nameOfKind(adjuster);
  const where = end === "other" ? " at the other end" : "";
  const follows = reboundFollows ? "; rebound follows" : "";
  return `${direction} ${name}${where}, ${sizingText[size]}${follows}`;
}

function heldByText(courseType: CourseType): string {
  return `; only for the part of the course that the own ${courseType} baseline does not hold`;
}

function conditionText(when: ConditionRule["when"]): string {
  switch (when.type) {
    case "ground":
      return `the ground is ${when.grounds.join(" or ")}`;
    case "no own baseline":
      return `part of the course is ${when.courseType} and the rider has no baseline for that`;
    case "cold":
      return `the air is below ${when.belowCelsius} °C, and ${when.colderBy} °C or more colder than at the baseline`;
    case "riding style":
      return `the rider rides ${when.style} now, and did not at the baseline`;
  }
}

function conditionMoveText({ places, adjuster, felt }: ConditionMove): string {
  const size = Math.abs(felt) === 1 ? "a felt step" : `${Math.abs(felt)} felt steps`;
  return `${places.map((place) => place.replace("-", " ")).join(" and ")}: ${nameOfKind(adjuster)} ${felt > 0 ? "up" : "down"} by ${size}`;
}

function conflictText(ends: readonly End[], all: readonly Symptom[]): string {
  return `${ends.join(" or ")}: ${all.join(", and yet ")}`;
}

/** A rule in words. */
export const ruleText = ruleInWords({
  words: ruleWords,
  physics: () => undefined,
  felt: feltText,
  move: moveText,
  condition: conditionText,
  heldBy: heldByText,
  conditionMove: conditionMoveText,
  conflict: conflictText,
});
