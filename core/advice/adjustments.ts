/**
 * From a run's feedback to ranked adjustments. The rules are data
 * (feedback-rules/); this is the one engine that reads them.
 */
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";
import { type AdjusterPath, adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type End, suspensionOf } from "#core/team/place.ts";
import { type MountedAdjuster, mountedAdjuster } from "#core/team/roster.ts";
import type { Adjustment, Advice, AdviceInput, ProposedSetting, Referral, Unanswered } from "./adjustment.ts";
import { applies, type EndView, endViews } from "./end-view.ts";
import type { FeedbackRule, Move } from "./feedback-rule.ts";
import { stages } from "./feedback-rule.ts";
import { feedbackRules } from "./feedback-rules/rule-table.ts";
import type { Hindrance } from "./hindrance.ts";
import { checkValue, settable } from "./limits.ts";
import { endOfMove, pathOfMove } from "./move-path.ts";
import { sizeMove } from "./move-size.ts";
import { predict } from "./prediction.ts";
import { reboundChange } from "./rebound-follows.ts";

/** After this many runs whose answer to the same complaint did not cure it, tuning stops. Common practice, no source. */
const ANSWERS_BEFORE_SERVICE = 2;

type Views = Readonly<Record<End, EndView>>;
type Answer =
  | { readonly type: "adjustment"; readonly adjustment: Adjustment }
  | { readonly type: "referral"; readonly referral: Referral }
  | { readonly type: "unanswered"; readonly unanswered: Unanswered };

/** Advice on one run. Pure: the same input gives the same advice. */
export function adviseOnRun(input: AdviceInput): Advice {
  const views = endViews(input);
  const both = [views.front, views.rear];
  const answers = feedbackRules.flatMap((rule) =>
    both.filter((view) => applies(rule, view)).map((view) => answer(input, views, rule, view)),
  );
  const referrals = answers.flatMap((result) => (result.type === "referral" ? result.referral : []));
  return {
    referrals,
    adjustments: inOrder(
      answers.flatMap((result) => (result.type === "adjustment" ? result.adjustment : [])),
      referrals,
    ),
    unanswered: answers.flatMap((result) => (result.type === "unanswered" ? result.unanswered : [])),
    questions: both.flatMap(({ questions }) => questions),
  };
}

/**
 * By stage, then as in the table; an end that has to be looked at comes last. Only the first is for now: one change at a
 * time, and none at an end with a worn part before somebody has looked.
 */
function inOrder(adjustments: readonly Adjustment[], referrals: readonly Referral[]): readonly Adjustment[] {
  const referralOf = ({ end }: Adjustment) => referrals.find((referral) => referral.end === end);
  const ranked = [...adjustments].sort(
    (a, b) =>
      Number(referralOf(a) !== undefined) - Number(referralOf(b) !== undefined) ||
      stages.indexOf(a.stage) - stages.indexOf(b.stage),
  );
  const [first] = ranked;
  return ranked.map((adjustment) => {
    const referral = referralOf(adjustment);
    if (referral) return { ...adjustment, waitsFor: { type: "a look at the bike", referral } };
    if (first === undefined || adjustment === first) return adjustment;
    return { ...adjustment, waitsFor: { type: "another change", path: first.setting.path } };
  });
}

function answer(input: AdviceInput, views: Views, rule: FeedbackRule, view: EndView): Answer {
  const { end } = view;
  const symptoms = rule.when.all;
  const refer = (cause: Referral["cause"]): Answer => ({
    type: "referral",
    referral: { rule: rule.id, end, symptoms, cause },
  });
  if (rule.moves.length === 0) return refer("nothing to tune");
  const paths = rule.moves.map((move) => pathOfMove(move, end));
  const tried = input.earlier.filter((move) => move.rule === rule.id && paths.includes(move.path));
  if (new Set(tried.map(({ run }) => run)).size >= ANSWERS_BEFORE_SERVICE) {
    return refer("two changes did not help");
  }
  const why: Hindrance[] = [];
  for (const move of rule.moves) {
    const path = pathOfMove(move, end);
    const found = mountedAdjuster(input.mounted.parts, path);
    if (!found) continue;
    if (tried.some((earlier) => earlier.path === path)) {
      why.push({ type: "changed for this already", path });
      continue;
    }
    const attempt = attemptMove(input, move, found, moveView(views, move, end));
    if ("type" in attempt) why.push(attempt);
    else return { type: "adjustment", adjustment: adjustmentOf(input, views, rule, view, attempt, why) };
  }
  if (why.length === 0) why.push({ type: "no adjuster for it" });
  return { type: "unanswered", unanswered: { rule: rule.id, end, symptoms, why } };
}

interface Attempt {
  readonly move: Move;
  readonly found: MountedAdjuster;
  readonly from: TypedQuantity;
  readonly to: TypedQuantity;
  readonly basis: "measured" | "felt step";
  readonly held: Hindrance | undefined;
}

/** The move as it can be made, or what keeps it from being made. */
function attemptMove(input: AdviceInput, move: Move, found: MountedAdjuster, view: EndView): Attempt | Hindrance {
  const { path } = found;
  const typed = input.onTheBike[found.path];
  if (!typed) return { type: "reading not known", path };
  const size = sizeMove(found, move.direction, move.size, view.context);
  if (size.type === "enough") return { type: "enough by now", path };
  if (size.type === "out of reach") return { type: "sag out of reach", path };
  const from = convert(typed, found.adjuster.unit);
  const to = settable(found, from.value + size.change);
  const problem = checkValue(input.mounted, found.path, to, input.onTheBike);
  return problem ? { type: "limit", problem } : { move, found, from, to, basis: size.basis, held: size.held };
}

function adjustmentOf(
  input: AdviceInput,
  views: Views,
  rule: FeedbackRule,
  view: EndView,
  { move, found, from, to, basis, held }: Attempt,
  why: readonly Hindrance[],
): Adjustment {
  const moved = moveView(views, move, view.end);
  const model = found.part.archetype === "tyre" ? undefined : moved.context?.model;
  const ridingAfter = shifted(input.riding, found.path, to.value - from.value);
  const coupled =
    rule.coupled === "rebound" && model ? coupledRebound(input, moved, found.path, ridingAfter) : undefined;
  const before = model && predict(model, input.riding, moved.hit);
  const after = model && predict(model, ridingAfter, moved.hit);
  return {
    rule: rule.id,
    end: view.end,
    stage: rule.stage,
    symptoms: rule.when.all,
    setting: { path: found.path, from, to },
    coupled: coupled?.setting ? [coupled.setting] : [],
    sizedBy: basis,
    fitted: model?.fitted ?? false,
    ...(before && { before }),
    ...(after && { after }),
    provenance: rule.provenance,
    limits: [...why, ...(held === undefined ? [] : [held]), ...(coupled?.refused ? [coupled.refused] : [])],
  };
}

/** The rebound that follows a changed spring; nothing when the rule moved the rebound itself or the clicks round to none. */
function coupledRebound(
  input: AdviceInput,
  view: EndView,
  moved: AdjusterPath,
  ridingAfter: SetupValues,
): { readonly setting?: ProposedSetting; readonly refused?: Hindrance } | undefined {
  const path = adjusterPath(suspensionOf(view.end), "rebound");
  const found = mountedAdjuster(input.mounted.parts, path);
  const typed = input.onTheBike[path];
  if (!view.context || !found || !typed || path === moved) return undefined;
  const change = reboundChange(input.mounted, view.context.model, input.riding, ridingAfter);
  if (change === 0) return undefined;
  const from = convert(typed, found.adjuster.unit);
  const to = settable(found, from.value + change);
  const problem = checkValue(input.mounted, path, to, input.onTheBike);
  return problem ? { refused: { type: "limit", problem } } : { setting: { path, from, to } };
}

function moveView(views: Views, move: Move, end: End): EndView {
  return views[endOfMove(move, end)];
}

/** A change of a reading at the bench is, to a few parts in a hundred, the same change at the temperature of the ride. */
function shifted(values: SetupValues, path: AdjusterPath, change: number): SetupValues {
  const value = values[path];
  return value ? { ...values, [path]: { ...value, value: value.value + change } } : values;
}
