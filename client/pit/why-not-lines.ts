/** The rules' answer to a change that somebody has in mind, in words. */
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { whyNot as words } from "#client/text/why-not.ts";
import type { Obstacle, SilentRule, WhyNot } from "#core/advice/why-not.ts";
import { settingLine } from "./adjustment-text.ts";

export interface WhyNotLines {
  readonly answer: string | undefined;
  /** One for each rule that would make the change, the nearest first. */
  readonly rules: readonly RuleLine[];
}

export interface RuleLine {
  /** What the rule answers: "Front: It dives …". */
  readonly rule: string;
  /** What keeps it from speaking here. */
  readonly obstacle: string;
}

/** One sentence, or a line for each rule. */
export function whyNotLines(result: WhyNot): WhyNotLines {
  switch (result.type) {
    case "no such adjuster":
      return { answer: words.noAdjuster, rules: [] };
    case "no rule":
      return { answer: words.noRule, rules: [] };
    case "proposed":
      return {
        answer: result.waitsFor ? words.proposedLater(trade.waitsFor(result.waitsFor)) : words.proposed,
        rules: [],
      };
    case "silent rules":
      return {
        answer: result.opposite && words.opposite(settingLine(result.opposite.setting)),
        rules: result.rules.map(ruleLine),
      };
  }
}

function ruleLine({ rule, end, obstacle }: SilentRule): RuleLine {
  return {
    rule: words.wouldIf(pit.feedback.ends[end], trade.rule(rule)?.reason ?? rule),
    obstacle: obstacleText(obstacle),
  };
}

function obstacleText(obstacle: Obstacle): string {
  switch (obstacle.type) {
    case "not said":
      return words.notSaid(listed(obstacle.symptoms));
    case "spoken against":
      return words.spokenAgainst(listed(obstacle.symptoms));
    case "in question":
      return words.inQuestion(listed(obstacle.symptoms));
    case "another way first":
      return words.anotherWay(trade.adjuster(obstacle.path));
    case "hindered":
      return trade.hindrance(obstacle.hindrance);
    case "two changes did not help":
      return words.twoChanges;
  }
}

function listed(symptoms: readonly (keyof typeof trade.symptoms)[]): string {
  return symptoms.map((symptom) => trade.symptoms[symptom]).join(", ");
}
