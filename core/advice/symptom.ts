/**
 * Symptoms: what a run's measurements and the rider's words say about one end,
 * in a closed list that the rules speak in. What was not said is not a symptom.
 */
import { toSi } from "#core/quantity/unit.ts";
import { type EndFeedback, type Noticed, noticeable, type Run } from "#core/weekend/run.ts";
import type { SuspensionModel } from "./suspension-model.ts";

const measured = [
  "sag above target",
  "sag below target",
  "sag on target",
  "all travel used too easily",
  "travel left over",
  "softer than the other end",
  "firmer than the other end",
  "confidence low",
] as const;

const felt = [
  "start harsh",
  "start too soft",
  "middle harsh",
  "middle dives",
  "end hits hard",
  "end never reached",
  "returns too slowly",
  "returns too fast",
  "slides",
] as const;

/** Every symptom there is: measured, felt along the stroke, and noticed besides. */
export const symptoms = [...measured, ...felt, ...new Set([...noticeable.front, ...noticeable.rear])] as const;
export type Symptom = (typeof measured)[number] | (typeof felt)[number] | Noticed;

/**
 * Sag as a part of the stroke, at rest on level ground. Common practice, no source; the rider's own baseline sag, where
 * it was measured, is the better target and replaces the middle of this range.
 */
export const SAG_RANGE: Readonly<Record<"fork" | "shock", { readonly low: number; readonly high: number }>> = {
  fork: { low: 0.15, high: 0.25 },
  shock: { low: 0.25, high: 0.35 },
};

/** Below this part of the stroke travel is left over. Common practice, no source. */
export const TRAVEL_LEFT = 0.85;

/** Bottom-outs in one run from which they are too many: one on the hardest hit is what travel is for. Common practice, no source. */
export const TOO_MANY_BOTTOM_OUTS = 2;

/**
 * Relative shift of the front-to-rear ratio of natural frequencies against the rider's own baseline from which the ends
 * are out of balance. Common practice, no source: about what 5 psi does to a fork.
 */
export const BALANCE_SHIFT = 0.06;

/** What is known of an end besides what was said of it. */
export interface EndKnowledge {
  /** Sag and travel need the part's stroke. */
  readonly model?: SuspensionModel | undefined;
  /** How much firmer (above 0) or softer this end has become against the other one, relative to the baseline. */
  readonly balanceShift?: number | undefined;
  readonly confidence?: Run["confidence"];
}

/** The symptoms of one end, in the order of {@link symptoms}. */
export function symptomsOf(feedback: EndFeedback, known: EndKnowledge): readonly Symptom[] {
  const shift = known.balanceShift ?? 0;
  const found = new Set<Symptom>([...measuredSymptoms(feedback, known.model), ...feltSymptoms(feedback)]);
  if (shift > BALANCE_SHIFT) found.add("firmer than the other end");
  if (shift < -BALANCE_SHIFT) found.add("softer than the other end");
  if (known.confidence === "low") found.add("confidence low");
  for (const noticed of feedback.noticed ?? []) found.add(noticed);
  return symptoms.filter((symptom) => found.has(symptom));
}

function measuredSymptoms(feedback: EndFeedback, model: SuspensionModel | undefined): readonly Symptom[] {
  const list: Symptom[] = [];
  if (model && feedback.sag) {
    const part = toSi(feedback.sag) / model.stroke;
    const { low, high } = SAG_RANGE[model.place];
    list.push(part > high ? "sag above target" : part < low ? "sag below target" : "sag on target");
  }
  const used = model && feedback.travelUsed && toSi(feedback.travelUsed) / model.stroke;
  const bottomOuts = feedback.bottomOuts ?? 0;
  if (bottomOuts >= TOO_MANY_BOTTOM_OUTS) list.push("all travel used too easily");
  if (used !== undefined && used < TRAVEL_LEFT) list.push("travel left over");
  return list;
}

function feltSymptoms(feedback: EndFeedback): readonly Symptom[] {
  const list: Symptom[] = [];
  if (feedback.start === "harsh") list.push("start harsh");
  if (feedback.start === "too soft") list.push("start too soft");
  if (feedback.middle === "harsh") list.push("middle harsh");
  if (feedback.middle === "dives") list.push("middle dives");
  if (feedback.end === "hits hard") list.push("end hits hard");
  if (feedback.end === "never reached") list.push("end never reached");
  if (feedback.returnSpeed === "too slow") list.push("returns too slowly");
  if (feedback.returnSpeed === "too fast") list.push("returns too fast");
  if (feedback.grip === "slides") list.push("slides");
  return list;
}
