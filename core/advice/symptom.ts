/**
 * Symptoms: what a run's measurements and the rider's words say about one end,
 * in a closed list that the rules speak in. What was not said is not a symptom.
 */
import { toSi } from "#core/quantity/unit.ts";
import type { EndFeedback } from "#core/weekend/run.ts";
import type { SuspensionModel } from "./suspension-model.ts";

export const symptoms = [
  "sag above target",
  "sag below target",
  "sag on target",
  "all travel used too easily",
  "travel left over",
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
export type Symptom = (typeof symptoms)[number];

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

/** The symptoms of one end, in the order of {@link symptoms}. Sag and travel need the part's stroke, hence the model. */
export function symptomsOf(feedback: EndFeedback, model: SuspensionModel | undefined): readonly Symptom[] {
  const found = new Set<Symptom>([...measuredSymptoms(feedback, model), ...felt(feedback)]);
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

function felt(feedback: EndFeedback): readonly Symptom[] {
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
