/** The course: how much of it is steep, jumpy and wet, in parts of one. */
import * as z from "zod/mini";
import { courseTypes } from "#core/team/course-type.ts";
import { altitudeSchema } from "#core/team/surroundings.ts";
import { courseProfileSchema, courseSectionsSchema } from "./course-shape.ts";

const part = z.number().check(z.gte(0, { error: "a part is 0 or more" }), z.lte(1, { error: "a part is 1 or less" }));

/** How far from one the parts may add up, so that three parts typed to two decimals pass. */
const SUM_TOLERANCE = 0.011;

export const courseMixSchema = z.object({ steep: part, jumpy: part, wet: part }).check(
  z.refine((mix) => Math.abs(sumOf(mix) - 1) <= SUM_TOLERANCE, {
    error: (issue) =>
      `the parts steep, jumpy and wet must add up to 1, not ${Number(sumOf(issue.input as CourseMix).toFixed(3))}`,
  }),
);
export type CourseMix = { readonly steep: number; readonly jumpy: number; readonly wet: number };

/**
 * `altitude` is the height above sea level at which the bikes are set up and ridden. `profile` and `sections` are there
 * once the team has taken the one from a file and named the others.
 */
export const courseSchema = z.object({
  mix: courseMixSchema,
  altitude: altitudeSchema,
  profile: z.optional(courseProfileSchema),
  sections: z.optional(courseSectionsSchema),
});
export type Course = z.infer<typeof courseSchema>;

function sumOf(mix: CourseMix): number {
  return courseTypes.reduce((sum, type) => sum + mix[type], 0);
}
