/**
 * The rule book: everything that the advice goes by, in words, made from the
 * rules themselves so that it cannot tell anything else.
 */
import { nameOfKind } from "./adjuster-names.ts";
import { type ConditionMove, type ConditionRule, conditionRules } from "./condition-rules.ts";
import type { ConflictRule, FeedbackRule, Move, Sizing } from "./feedback-rule.ts";
import { conflictRules } from "./feedback-rules/conflict-rules.ts";
import { feedbackRules } from "./feedback-rules/rule-table.ts";
import { physicsRules } from "./physics-rules.ts";
import type { RuleEntry } from "./rule-entry.ts";

export interface RuleChapter {
  readonly title: string;
  readonly about: string;
  readonly entries: readonly RuleEntry[];
}

/** All chapters, in the order in which the advice goes. */
export function ruleBook(): readonly RuleChapter[] {
  return [
    {
      title: "Before the weekend: the physics",
      about: "What the rider's own baselines are corrected by, worked out for each bike.",
      entries: physicsRules,
    },
    {
      title: "Before the weekend: ground and course",
      about:
        "What the rider's own baselines do not hold yet. A felt step is the part's own smallest change that is felt.",
      entries: conditionRules.map(conditionEntry),
    },
    {
      title: "After a run: feedback",
      about: "One change at a time, in this order: damage, sag, travel, spring feel, damping, grip, balance.",
      entries: feedbackRules.map(feedbackEntry),
    },
    {
      title: "After a run: questions",
      about: "Symptoms that exclude each other. They are asked about before anything is changed.",
      entries: conflictRules.map(conflictEntry),
    },
  ];
}

/** The rule book as markdown. */
export function ruleBookMarkdown(): string {
  const chapters = ruleBook().map(({ title, about, entries }) =>
    [`## ${title}`, about, ...entries.map(entryMarkdown)].join("\n\n"),
  );
  const count = ruleBook().reduce((sum, { entries }) => sum + entries.length, 0);
  return `${[`# The rules of advice`, `${count} rules. Made from the rules themselves.`, ...chapters].join("\n\n")}\n`;
}

function entryMarkdown({ id, when, moves, reason, notice, otherwise, provenance }: RuleEntry): string {
  return [
    `### ${id}`,
    `*When:* ${when}`,
    ...(moves.length > 0 ? [moves.map((move, index) => `${index + 1}. ${move}`).join("\n")] : []),
    `*Why:* ${reason}`,
    ...(notice === undefined ? [] : [`*The rider should notice:* ${notice}`]),
    ...(otherwise === undefined ? [] : [`*If it does not help:* ${otherwise}`]),
    `*Source:* ${provenance}${provenance === "common practice" ? ", no source" : ""}`,
  ].join("\n\n");
}

function feedbackEntry({
  id,
  ends,
  when,
  moves,
  coupled,
  reason,
  notice,
  otherwise,
  provenance,
}: FeedbackRule): RuleEntry {
  const none = when.none?.length ? `, and not: ${when.none.join(", ")}` : "";
  return {
    id,
    when: `${ends.join(" or ")}: ${when.all.join(", ")}${none}`,
    moves: moves.map((move) => moveText(move, coupled !== undefined)),
    reason,
    notice,
    otherwise,
    provenance,
  };
}

const sizingText: Record<Sizing, string> = {
  "sag to target": "sized to bring the sag to its target",
  "hit within travel": "sized to keep the hardest hit within the travel",
  "hit uses travel": "sized to let the measured hit use the travel",
  "balance as before": "sized to the baseline's balance of the two ends",
  felt: "by the smallest change that is felt",
};

function moveText({ at, end, adjuster, direction, size }: Move, coupled: boolean): string {
  const name = at === "tyre" ? "tyre pressure" : nameOfKind(adjuster);
  const where = end === "other" ? " at the other end" : "";
  const follows = coupled && at === "suspension" && adjuster !== "rebound" ? "; rebound follows" : "";
  return `${direction} ${name}${where}, ${sizingText[size]}${follows}`;
}

function conditionEntry({ id, when, heldBy, moves, reason }: ConditionRule): RuleEntry {
  const held =
    heldBy === undefined ? "" : `; only for the part of the course that the own ${heldBy} baseline does not hold`;
  return {
    id,
    when: `${whenText(when)}${held}`,
    moves: moves.map(conditionMoveText),
    reason,
    provenance: "common practice",
  };
}

function whenText(when: ConditionRule["when"]): string {
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

function conflictEntry({ id, ends, all, question }: ConflictRule): RuleEntry {
  return {
    id,
    when: `${ends.join(" or ")}: ${all.join(", and yet ")}`,
    moves: [],
    reason: question,
    provenance: "common practice",
  };
}
