/**
 * From a run's feedback to ranked adjustments. The rules are data
 * (feedback-rules/); this is the one engine that reads them.
 */
import { convert, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { type AdjusterPath, adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type End, ends, suspensionOf, tyreOf } from "#core/team/place.ts";
import { type MountedAdjuster, mountedAdjuster } from "#core/team/roster.ts";
import { nameOfPath } from "./adjuster-names.ts";
import type { Adjustment, Advice, AdviceInput, ProposedSetting, Question, Unanswered } from "./adjustment.ts";
import type { FeedbackRule, Move } from "./feedback-rule.ts";
import { stages } from "./feedback-rule.ts";
import { conflictRules } from "./feedback-rules/conflict-rules.ts";
import { feedbackRules } from "./feedback-rules/rule-table.ts";
import { checkValue, describeLimitProblem, settable } from "./limits.ts";
import { type SizedMove, type SizingContext, sizeMove } from "./move-size.ts";
import { type MeasuredHit, predict } from "./prediction.ts";
import { reboundChange } from "./rebound-follows.ts";
import { strokeAt } from "./sizing.ts";
import { suspensionModel } from "./suspension-model.ts";
import { type Symptom, symptomsOf } from "./symptom.ts";

/** After this many changes for the same complaint that did not cure it, tuning stops. Common practice, no source. */
const CHANGES_BEFORE_SERVICE = 2;

/** Advice on one run. Pure: the same input gives the same advice. */
export function adviseOnRun(input: AdviceInput): Advice {
  const views = ends.map((end) => viewOf(input, end));
  const questions = views.flatMap(questionsOf);
  const results = feedbackRules.flatMap((rule) =>
    views.filter((view) => applies(rule, view)).map((view) => answer(input, rule, view)),
  );
  const adjustments = results
    .flatMap((result) => ("setting" in result ? result : []))
    .sort((a, b) => stages.indexOf(a.stage) - stages.indexOf(b.stage));
  const [first] = adjustments;
  return {
    adjustments: adjustments.map((adjustment) =>
      first === undefined || adjustment === first
        ? adjustment
        : { ...adjustment, waitsFor: `One change at a time: first the ${nameOfPath(first.setting.path)}, then ride.` },
    ),
    unanswered: results.flatMap((result) => ("why" in result ? result : [])),
    questions,
  };
}

/** One end with what was said about it, and what the physics knows of it. */
interface EndView {
  readonly end: End;
  readonly symptoms: readonly Symptom[];
  /** Symptoms that contradict each other: no rule acts on them until the rider was asked. */
  readonly inConflict: ReadonlySet<Symptom>;
  readonly context: SizingContext | undefined;
  readonly hit: MeasuredHit | undefined;
}

function viewOf(input: AdviceInput, end: End): EndView {
  const feedback = input.run[end];
  const measured = feedback.sag && {
    sag: feedback.sag,
    values: input.ridingAtRun,
    heldAt: input.course,
    mass: input.mounted.rider.mass,
  };
  const model = suspensionModel(input.mounted, end, input.course, measured);
  const found = symptomsOf(feedback, model);
  const conflicts = conflictRules.filter(
    (rule) => rule.ends.includes(end) && rule.all.every((symptom) => found.includes(symptom)),
  );
  const used = model && feedback.travelUsed && Math.min(toSi(feedback.travelUsed) / model.stroke, 1);
  const bottomed = (feedback.bottomOuts ?? 0) > 0 ? 1 : used;
  return {
    end,
    symptoms: found,
    inConflict: new Set(conflicts.flatMap((rule) => rule.all)),
    context: model && {
      model,
      feedback,
      valuesAtRun: input.ridingAtRun,
      valuesNow: input.riding,
      baselineSag: input.baselineSag[model.place],
    },
    hit:
      model && bottomed !== undefined
        ? { strokeUsed: strokeAt(model, bottomed), values: input.ridingAtRun }
        : undefined,
  };
}

function questionsOf({ end, symptoms }: EndView): readonly Question[] {
  return conflictRules
    .filter((rule) => rule.ends.includes(end) && rule.all.every((symptom) => symptoms.includes(symptom)))
    .map((rule) => ({ rule: rule.id, end, question: rule.question }));
}

function applies(rule: FeedbackRule, { end, symptoms, inConflict }: EndView): boolean {
  return (
    rule.ends.includes(end) &&
    rule.when.all.every((symptom) => symptoms.includes(symptom) && !inConflict.has(symptom)) &&
    !rule.when.none?.some((symptom) => symptoms.includes(symptom))
  );
}

function answer(input: AdviceInput, rule: FeedbackRule, view: EndView): Adjustment | Unanswered {
  const symptoms = rule.when.all;
  const tried = input.earlier.filter((move) => move.rule === rule.id && endOfPath(move.path) === view.end);
  const attempts = new Set(tried.map((move) => move.path));
  const why: string[] = [];
  if (tried.length >= CHANGES_BEFORE_SERVICE) {
    why.push("Two changes for this have not cured it: stop tuning, and look at service and damage.");
    return { rule: rule.id, end: view.end, symptoms, why };
  }
  for (const move of rule.moves) {
    const path = pathOf(move, view.end);
    const found = mountedAdjuster(input.mounted.parts, path);
    if (!found) continue;
    if (attempts.has(path)) {
      why.push(`${sentenceCase(nameOfPath(path))} was changed for this already.`);
      continue;
    }
    const attempt = attemptMove(input, move, found, view);
    if ("refused" in attempt) why.push(attempt.refused);
    else return adjustmentOf(input, rule, view, attempt, why);
  }
  if (why.length === 0) why.push("The bike has no adjuster for this.");
  return { rule: rule.id, end: view.end, symptoms, why };
}

interface Attempt {
  readonly found: MountedAdjuster;
  readonly from: TypedQuantity;
  readonly to: TypedQuantity;
  readonly size: SizedMove;
}

function attemptMove(
  input: AdviceInput,
  move: Move,
  found: MountedAdjuster,
  view: EndView,
): Attempt | { readonly refused: string } {
  const name = sentenceCase(nameOfPath(found.path));
  const typed = input.onTheBike[found.path];
  if (!typed) return { refused: `${name}: what is on the bike is not known, or in dispute.` };
  const from = convert(typed, found.adjuster.unit);
  const size = sizeMove(found, move.direction, move.size, view.context);
  if (!size) return { refused: `${name}: what is on the bike now is enough by the measurements of that run.` };
  const to = settable(found, from.value + size.change);
  const problem = checkValue(input.mounted, found.path, to, input.onTheBike);
  return problem ? { refused: describeLimitProblem(problem) } : { found, from, to, size };
}

function adjustmentOf(
  input: AdviceInput,
  rule: FeedbackRule,
  view: EndView,
  { found, from, to, size }: Attempt,
  why: readonly string[],
): Adjustment {
  const model = found.part.archetype === "tyre" ? undefined : view.context?.model;
  const ridingAfter = shifted(input.riding, found.path, to.value - from.value);
  const coupled =
    rule.coupled === "rebound" && model ? coupledRebound(input, view, found.path, ridingAfter) : undefined;
  const before = model && predict(model, input.riding, view.hit);
  const after = model && predict(model, ridingAfter, view.hit);
  return {
    rule: rule.id,
    end: view.end,
    stage: rule.stage,
    symptoms: rule.when.all,
    setting: { path: found.path, from, to },
    coupled: coupled?.setting ? [coupled.setting] : [],
    sizedBy: size.basis,
    fitted: model?.fitted ?? false,
    ...(before && { before }),
    ...(after && { after }),
    reason: rule.reason,
    notice: rule.notice,
    otherwise: rule.otherwise,
    provenance: rule.provenance,
    limits: [...why, ...(size.held ? [size.held] : []), ...(coupled?.refused ? [coupled.refused] : [])],
  };
}

/** The rebound that follows a changed spring; nothing when the rule moved the rebound itself or the clicks round to none. */
function coupledRebound(
  input: AdviceInput,
  view: EndView,
  moved: AdjusterPath,
  ridingAfter: SetupValues,
): { readonly setting?: ProposedSetting; readonly refused?: string } | undefined {
  const path = adjusterPath(suspensionOf(view.end), "rebound");
  const found = mountedAdjuster(input.mounted.parts, path);
  const typed = input.onTheBike[path];
  if (!view.context || !found || !typed || path === moved) return undefined;
  const change = reboundChange(input.mounted, view.context.model, input.riding, ridingAfter);
  if (change === 0) return undefined;
  const from = convert(typed, found.adjuster.unit);
  const to = settable(found, from.value + change);
  const problem = checkValue(input.mounted, path, to, input.onTheBike);
  return problem ? { refused: describeLimitProblem(problem) } : { setting: { path, from, to } };
}

function pathOf(move: Move, end: End): AdjusterPath {
  return adjusterPath(move.at === "tyre" ? tyreOf(end) : suspensionOf(end), move.adjuster);
}

function endOfPath(path: AdjusterPath): End {
  return path.startsWith("fork.") || path.startsWith("front-tyre.") ? "front" : "rear";
}

/** A change of a reading at the bench is, to a few parts in a hundred, the same change at the temperature of the ride. */
function shifted(values: SetupValues, path: AdjusterPath, change: number): SetupValues {
  const value = values[path];
  return value ? { ...values, [path]: { ...value, value: value.value + change } } : values;
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
