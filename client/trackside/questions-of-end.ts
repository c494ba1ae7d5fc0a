/** What can be asked of an end of a bike: without suspension there is only grip to ask about. */
import { SAG_RANGE } from "#core/advice/symptom.ts";
import { toSi } from "#core/quantity/unit.ts";
import { type End, suspensionOf } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { type FeelingOf, type Noticed, noticeable } from "#core/weekend/run.ts";
import { asked } from "./run-draft.ts";

export interface QuestionsOfEnd {
  readonly feelings: readonly FeelingOf[];
  readonly noticed: readonly Noticed[];
  /** mm along the part: its stroke, and where a first step of the sag starts. Absent without suspension. */
  readonly measured: { readonly stroke: number; readonly usualSag: number } | undefined;
}

const withoutSuspension: readonly Noticed[] = ["steps out", "tyre squirms", "rim strikes", "knocks"];

/** The questions for `end` of this bike. */
export function questionsOfEnd({ parts }: RiderBike, end: End): QuestionsOfEnd {
  const place = suspensionOf(end);
  const part = parts[place];
  if (!part || part.archetype === "tyre")
    return { feelings: ["grip"], noticed: withoutSuspension, measured: undefined };
  const stroke = Math.round(toSi(part.geometry.stroke) * 1000);
  const { low, high } = SAG_RANGE[place];
  return {
    feelings: asked,
    noticed: noticeable[end],
    measured: { stroke, usualSag: Math.round((stroke * (low + high)) / 2) },
  };
}
