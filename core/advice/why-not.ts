/**
 * Why the advice on a run does not propose a change that somebody has in mind: every rule that makes this change at all,
 * with what keeps it from speaking here.
 */
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type End, ends } from "#core/team/place.ts";
import { mountedAdjuster } from "#core/team/roster.ts";
import type { Adjustment, Advice, AdviceInput, WaitsFor } from "./adjustment.ts";
import { adviseOnRun } from "./adjustments.ts";
import { type EndView, endViews } from "./end-view.ts";
import type { FeedbackRule } from "./feedback-rule.ts";
import { feedbackRules } from "./feedback-rules/rule-table.ts";
import type { Hindrance } from "./hindrance.ts";
import { pathOfMove } from "./move-path.ts";
import { signOf } from "./move-size.ts";
import type { Symptom } from "./symptom.ts";

/** A change that somebody has in mind: "up" raises the adjuster's number (opens a damper, whose clicks count from closed). */
export interface ChangeInMind {
  readonly path: AdjusterPath;
  readonly direction: "up" | "down";
}

/** What keeps a rule from making the change. */
export type Obstacle =
  /** These symptoms, which the rule needs, were neither said nor measured. */
  | { readonly type: "not said"; readonly symptoms: readonly Symptom[] }
  /** These were, and with them the rule does not hold. */
  | { readonly type: "spoken against"; readonly symptoms: readonly Symptom[] }
  /** These contradict others: the rider is to be asked first. */
  | { readonly type: "in question"; readonly symptoms: readonly Symptom[] }
  /** The rule answers by another adjuster, which comes first in it. */
  | { readonly type: "another way first"; readonly path: AdjusterPath }
  | { readonly type: "hindered"; readonly hindrance: Hindrance }
  | { readonly type: "two changes did not help" };

/** One rule that would make the change, at the end whose symptoms it answers. */
export interface SilentRule {
  readonly rule: string;
  readonly end: End;
  readonly obstacle: Obstacle;
}

export type WhyNot =
  | { readonly type: "no such adjuster" }
  /** It is proposed: now, or after what `waitsFor` names. */
  | { readonly type: "proposed"; readonly waitsFor?: WaitsFor }
  /** No rule answers anything by this change. */
  | { readonly type: "no rule" }
  | {
      readonly type: "silent rules";
      /** Those that are nearest to speaking come first. */
      readonly rules: readonly SilentRule[];
      /** The advice moves this adjuster the other way. */
      readonly opposite?: Adjustment;
    };

/** The answer from the rules themselves. Pure: the same input gives the same answer. */
export function whyNot(input: AdviceInput, change: ChangeInMind): WhyNot {
  if (!mountedAdjuster(input.mounted.parts, change.path)) return { type: "no such adjuster" };
  const advice = adviseOnRun(input);
  const ofPath = advice.adjustments.filter(({ setting }) => setting.path === change.path);
  const proposed = ofPath.find((adjustment) => directionOf(adjustment) === change.direction);
  if (proposed) return { type: "proposed", ...(proposed.waitsFor && { waitsFor: proposed.waitsFor }) };
  const views = endViews(input);
  const rules = feedbackRules.flatMap((rule) =>
    ends
      .filter((end) => rule.ends.includes(end) && makes(rule, end, change))
      .map((end) => ({ rule: rule.id, end, obstacle: obstacleOf(rule, views[end], advice, change) })),
  );
  if (rules.length === 0) return { type: "no rule" };
  const [opposite] = ofPath;
  return { type: "silent rules", rules: nearestFirst(rules), ...(opposite && { opposite }) };
}

function directionOf({ setting: { from, to } }: Adjustment): ChangeInMind["direction"] {
  return to.value > from.value ? "up" : "down";
}

function makes(rule: FeedbackRule, end: End, { path, direction }: ChangeInMind): boolean {
  const sign = direction === "up" ? 1 : -1;
  return rule.moves.some((move) => pathOfMove(move, end) === path && signOf(move.direction) === sign);
}

function obstacleOf(
  rule: FeedbackRule,
  { end, symptoms, inConflict }: EndView,
  advice: Advice,
  { path }: ChangeInMind,
): Obstacle {
  const missing = rule.when.all.filter((symptom) => !symptoms.includes(symptom));
  if (missing.length > 0) return { type: "not said", symptoms: missing };
  const questioned = rule.when.all.filter((symptom) => inConflict.has(symptom));
  if (questioned.length > 0) return { type: "in question", symptoms: questioned };
  const against = (rule.when.none ?? []).filter((symptom) => symptoms.includes(symptom));
  if (against.length > 0) return { type: "spoken against", symptoms: against };
  const isOfRule = (each: { readonly rule: string; readonly end: End }) => each.rule === rule.id && each.end === end;
  if (advice.referrals.some(isOfRule)) return { type: "two changes did not help" };
  const taken = advice.adjustments.find(isOfRule);
  const hindrances = taken?.limits ?? advice.unanswered.find(isOfRule)?.why ?? [];
  const hindrance = hindrances.find((each) => pathOfHindrance(each) === path);
  if (hindrance) return { type: "hindered", hindrance };
  if (taken) return { type: "another way first", path: taken.setting.path };
  throw new Error(`The rule "${rule.id}" speaks at the ${end}, and the advice has nothing of it.`);
}

function pathOfHindrance(hindrance: Hindrance): AdjusterPath | undefined {
  if (hindrance.type === "limit") return hindrance.problem.path;
  return "path" in hindrance ? hindrance.path : undefined;
}

/** A rule that speaks and is held comes before one that needs a symptom more, and that before one that needs two. */
function nearestFirst(rules: readonly SilentRule[]): readonly SilentRule[] {
  const missing = ({ obstacle }: SilentRule) => (obstacle.type === "not said" ? obstacle.symptoms.length : 0);
  return [...rules].sort((a, b) => missing(a) - missing(b));
}
