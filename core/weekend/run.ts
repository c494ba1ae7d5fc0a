/**
 * One run of a rider, with what was measured and what the rider felt. All of
 * it is optional but the session: what was not said is not known, and is never
 * read as "good".
 */
import * as z from "zod/mini";
import { identifierSchema } from "#core/team/identifier.ts";
import { quantitySchema } from "#core/team/quantity-schema.ts";
import { courseSectionSchema } from "./course-shape.ts";

/** What a rider can say of a part of the stroke, of the return, and of the grip. Our own words, from too little to too much. */
export const feelings = {
  start: ["harsh", "good", "too soft"],
  middle: ["harsh", "good", "dives"],
  end: ["never reached", "good", "hits hard"],
  returnSpeed: ["too slow", "good", "too fast"],
  grip: ["slides", "good"],
} as const;
export type FeelingOf = keyof typeof feelings;

/** What else a rider may have noticed at an end; any number of them. Our own words, the last three are about wear and damage. */
export const noticeable = {
  front: [
    "dives under braking",
    "harsher hit by hit",
    "kicks back off lips",
    "bounces off stones",
    "pushes wide",
    "hands go numb",
    "tyre squirms",
    "rim strikes",
    "knocks",
    "oil on the shaft",
    "loses air",
  ],
  rear: [
    "sinks in berms",
    "harsher hit by hit",
    "kicks back off lips",
    "bounces off stones",
    "skips under braking",
    "steps out",
    "hangs back",
    "tyre squirms",
    "rim strikes",
    "knocks",
    "oil on the shaft",
    "loses air",
  ],
} as const;
export type Noticed = (typeof noticeable)["front" | "rear"][number];

const travel = quantitySchema("length", { minimum: { value: 0, unit: "mm" }, maximum: { value: 300, unit: "mm" } });

/** `sag` and `travelUsed` are measured on the part: along the fork, or along the shock's shaft. */
export const endFeedbackSchema = z.object({
  sag: z.optional(travel),
  travelUsed: z.optional(travel),
  bottomOuts: z.optional(z.int().check(z.gte(0), z.lte(99))),
  start: z.optional(z.enum(feelings.start)),
  middle: z.optional(z.enum(feelings.middle)),
  end: z.optional(z.enum(feelings.end)),
  returnSpeed: z.optional(z.enum(feelings.returnSpeed)),
  grip: z.optional(z.enum(feelings.grip)),
  noticed: z.optional(z.array(z.enum([...new Set([...noticeable.front, ...noticeable.rear])])).check(z.maxLength(16))),
});
export type EndFeedback = z.infer<typeof endFeedbackSchema>;

export const confidences = ["low", "fair", "high"] as const;

/**
 * `setup` names the records of the settings that were on the bike, as far as the writing device knew. They tell with
 * which settings the measurements and feelings belong together, whatever any clock says.
 *
 * `section` is the part of the course that the rider speaks of, as it was named and where it lay then, so that it stays
 * the same ground when the team moves or renames it; absent when he speaks of the whole run.
 */
export const runSchema = z.object({
  bike: identifierSchema,
  weekend: identifierSchema,
  session: identifierSchema,
  setup: z.optional(z.array(z.string()).check(z.maxLength(64))),
  section: z.optional(courseSectionSchema),
  timeSeconds: z.optional(z.number().check(z.gt(0), z.lte(3600))),
  front: endFeedbackSchema,
  rear: endFeedbackSchema,
  confidence: z.optional(z.enum(confidences)),
  note: z.optional(z.string().check(z.maxLength(1000))),
});
export type Run = z.infer<typeof runSchema>;
