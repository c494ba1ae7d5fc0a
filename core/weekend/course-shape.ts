/** The shape of a course: how its height goes over its length, and the sections that the team has named. */
import * as z from "zod/mini";
import { identifierSchema, nameSchema } from "#core/team/identifier.ts";

/** Points of a profile: more than a screen has room for, and a quarter of what a record may hold. */
export const MOST_PROFILE_POINTS = 200;
export const MOST_SECTIONS = 24;
/** Longest course, m: far more than a rider descends in one run. */
export const LONGEST_COURSE = 50_000;
/** Heights above sea level, m, that any ground on earth has. */
export const heightsOnEarth = { lowest: -500, highest: 9000 } as const;

const along = z
  .number()
  .check(
    z.gte(0, { error: "a distance along the course is 0 m or more" }),
    z.lte(LONGEST_COURSE, { error: `a distance along the course is at most ${LONGEST_COURSE} m` }),
  );
const height = z.number().check(z.gte(heightsOnEarth.lowest), z.lte(heightsOnEarth.highest));

const profilePoint = z.tuple([along, height]);

/** Points of distance along the course and height above sea level, both in m, from the start at 0 downwards. */
export const courseProfileSchema = z.object({
  points: z.array(profilePoint).check(
    z.minLength(2),
    z.maxLength(MOST_PROFILE_POINTS),
    z.refine((points) => points[0]?.[0] === 0, { error: "a profile begins at 0 m" }),
    // Without a least distance a gradient could be beyond all numbers.
    z.refine((points) => points.every(([at], index) => index === 0 || at - (points[index - 1]?.[0] ?? 0) >= 1), {
      error: "the distances of a profile rise by 1 m or more from point to point",
    }),
  ),
});
export type CourseProfile = {
  readonly points: readonly (readonly [distance: number, height: number])[];
};

/** `from` and `to` in m along the course; both are left out where only the name is known. */
export const courseSectionSchema = z
  .object({ id: identifierSchema, name: nameSchema, from: z.optional(along), to: z.optional(along) })
  .check(
    z.refine(({ from, to }) => (from === undefined) === (to === undefined), {
      error: "a section has both its ends or none",
    }),
    z.refine(({ from, to }) => from === undefined || to === undefined || from < to, {
      error: "a section begins before it ends",
    }),
  );
export type CourseSection = z.infer<typeof courseSectionSchema>;

/** In the order of the course as the team sees it. They may overlap. */
export const courseSectionsSchema = z.array(courseSectionSchema).check(
  z.maxLength(MOST_SECTIONS),
  z.refine((sections) => new Set(sections.map(({ id }) => id)).size === sections.length, {
    error: "no two sections have the same id",
  }),
  z.refine((sections) => new Set(sections.map(({ name }) => name)).size === sections.length, {
    error: "no two sections have the same name",
  }),
);
