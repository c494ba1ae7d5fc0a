import { describe, expect, test } from "vitest";
import { conditionRules } from "#core/advice/condition-rules.ts";
import type { FeedbackRule } from "#core/advice/feedback-rule.ts";
import { conflictRules } from "#core/advice/feedback-rules/conflict-rules.ts";
import { feedbackRules } from "#core/advice/feedback-rules/rule-table.ts";
import { signOf } from "#core/advice/move-size.ts";
import { type Symptom, symptoms } from "#core/advice/symptom.ts";
import { type End, ends } from "#core/team/place.ts";
import { noticeable } from "#core/weekend/run.ts";

const ids = [...feedbackRules, ...conflictRules, ...conditionRules].map(({ id }) => id);

describe("the rule table", () => {
  test("has at least 45 rules besides its questions, each with an id of its own", () => {
    expect(feedbackRules.length + conditionRules.length).toBeGreaterThanOrEqual(45);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each(feedbackRules.map((rule) => [rule.id, rule] as const))("%s says all that a mechanic needs", (_id, rule) => {
    for (const sentence of [rule.reason, rule.notice, rule.otherwise]) expect(sentence).toMatch(/^[A-Z].{10,}\.$/s);
    expect(rule.ends.length).toBeGreaterThan(0);
    expect(rule.when.all.length).toBeGreaterThan(0);
    expect(rule.when.none?.filter((symptom) => rule.when.all.includes(symptom)) ?? []).toEqual([]);
  });

  test("a damper is opened or closed, and everything else is raised or lowered", () => {
    const dampers = ["rebound", "low-speed-compression", "high-speed-compression"];
    const odd = feedbackRules.flatMap((rule) =>
      rule.moves.filter(
        ({ adjuster, direction }) => dampers.includes(adjuster) !== (direction === "open" || direction === "close"),
      ),
    );
    expect(odd).toEqual([]);
    expect(signOf("close")).toBe(-1);
  });

  test("no rule moves the same adjuster of the same end twice", () => {
    const doubled = feedbackRules.filter((rule) => {
      const moves = rule.moves.map(({ at, end, adjuster }) => `${end} ${at} ${adjuster}`);
      return new Set(moves).size !== moves.length;
    });
    expect(doubled.map(({ id }) => id)).toEqual([]);
  });

  test("every symptom that a rider can say or that is measured is answered by a rule at its end", () => {
    const silent = ends.flatMap((end) =>
      symptoms
        .filter((symptom) => canBeSaid(symptom, end))
        .filter((symptom) => !feedbackRules.some((rule) => rule.ends.includes(end) && rule.when.all.includes(symptom)))
        .map((symptom) => `${end}: ${symptom}`),
    );
    expect(silent).toEqual([]);
  });

  test("no complaint alone is left without an answer by the exceptions of its rules", () => {
    const alone: readonly Symptom[] = symptoms.filter(
      (symptom) =>
        !["sag on target", "travel left over", "confidence low"].includes(symptom) && !symptom.includes("other end"),
    );
    const unanswered = ends.flatMap((end) =>
      alone.filter((symptom) => canBeSaid(symptom, end) && !feedbackRules.some((rule) => fires(rule, end, [symptom]))),
    );
    expect(unanswered).toEqual([]);
  });

  test("a worn or damaged part comes before every setting", () => {
    const firstTuning = feedbackRules.findIndex(({ stage }) => stage !== "damage");
    expect(feedbackRules.slice(firstTuning).some(({ stage }) => stage === "damage")).toBe(false);
    expect(feedbackRules.filter(({ moves }) => moves.length === 0).every(({ stage }) => stage === "damage")).toBe(true);
  });
});

function canBeSaid(symptom: Symptom, end: End): boolean {
  const other: End = end === "front" ? "rear" : "front";
  const own: readonly string[] = noticeable[end];
  return own.includes(symptom) || !(noticeable[other] as readonly string[]).includes(symptom);
}

function fires(rule: FeedbackRule, end: End, said: readonly Symptom[]): boolean {
  return (
    rule.ends.includes(end) &&
    rule.when.all.every((symptom) => said.includes(symptom)) &&
    !rule.when.none?.some((symptom) => said.includes(symptom))
  );
}
