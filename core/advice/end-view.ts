/** One end of the bike at a run: what was said of it, what that amounts to, and what the physics knows. */
import { toSi } from "#core/quantity/unit.ts";
import { type End, ends } from "#core/team/place.ts";
import type { AdviceInput, Question } from "./adjustment.ts";
import { balanceShifts, type EndModels } from "./balance.ts";
import type { ConflictRule, FeedbackRule } from "./feedback-rule.ts";
import { conflictRules } from "./feedback-rules/conflict-rules.ts";
import type { SizingContext } from "./move-size.ts";
import type { MeasuredHit } from "./prediction.ts";
import { strokeAt } from "./sizing.ts";
import { type SuspensionModel, suspensionModel } from "./suspension-model.ts";
import { type Symptom, symptomsOf } from "./symptom.ts";

export interface EndView {
  readonly end: End;
  readonly symptoms: readonly Symptom[];
  /** Symptoms that contradict each other: no rule acts on them until the rider was asked. */
  readonly inConflict: ReadonlySet<Symptom>;
  readonly questions: readonly Question[];
  readonly context: SizingContext | undefined;
  /** The hardest hit of the run, where the travel it used is known. */
  readonly hit: MeasuredHit | undefined;
}

/** Both ends at a run. */
export function endViews(input: AdviceInput): Readonly<Record<End, EndView>> {
  const models: Partial<Record<End, SuspensionModel>> = {};
  for (const end of ends) {
    const model = modelAtRun(input, end);
    if (model) models[end] = model;
  }
  const shifts = balanceShifts(models, input.riding, input.baseline);
  return { front: viewOf(input, "front", models, shifts), rear: viewOf(input, "rear", models, shifts) };
}

/** True when a rule speaks about this end at this run. */
export function applies(rule: FeedbackRule, { end, symptoms, inConflict }: EndView): boolean {
  return (
    rule.ends.includes(end) &&
    rule.when.all.every((symptom) => symptoms.includes(symptom) && !inConflict.has(symptom)) &&
    !rule.when.none?.some((symptom) => symptoms.includes(symptom))
  );
}

/** The model of an end, fitted to the run's own sag and to those measured before. */
export function modelAtRun(input: AdviceInput, end: End): SuspensionModel | undefined {
  const { sag } = input.run[end];
  const own = sag && {
    sag,
    values: input.ridingAtRun,
    heldAt: input.course,
    mass: input.mounted.rider.mass,
  };
  return suspensionModel(input.mounted, end, input.course, [...(own ? [own] : []), ...input.measuredBefore[end]]);
}

function viewOf(
  input: AdviceInput,
  end: End,
  models: EndModels,
  shifts: Readonly<Record<End, number>> | undefined,
): EndView {
  const feedback = input.run[end];
  const model = models[end];
  const balanceShift = shifts?.[end];
  const symptoms = symptomsOf(feedback, { model, balanceShift, confidence: input.run.confidence });
  const conflicts = conflictRules.filter((rule) => contradicts(rule, end, symptoms));
  return {
    end,
    symptoms,
    inConflict: new Set(conflicts.flatMap((rule) => rule.all)),
    questions: conflicts.map((rule) => ({ rule: rule.id, end })),
    context: model && {
      model,
      feedback,
      valuesAtRun: input.ridingAtRun,
      valuesNow: input.riding,
      baselineSag: input.baselineSag[model.place],
      balanceShift,
    },
    hit: model && hardestHit(input, end, model),
  };
}

function contradicts(rule: ConflictRule, end: End, symptoms: readonly Symptom[]): boolean {
  return rule.ends.includes(end) && rule.all.every((symptom) => symptoms.includes(symptom));
}

/** A bottom-out used all of the stroke, whatever the ring shows. */
function hardestHit(input: AdviceInput, end: End, model: SuspensionModel): MeasuredHit | undefined {
  const feedback = input.run[end];
  if ((feedback.bottomOuts ?? 0) > 0) return { strokeUsed: model.stroke, values: input.ridingAtRun };
  if (!feedback.travelUsed) return undefined;
  const used = Math.min(toSi(feedback.travelUsed) / model.stroke, 1);
  return { strokeUsed: strokeAt(model, used), values: input.ridingAtRun };
}
