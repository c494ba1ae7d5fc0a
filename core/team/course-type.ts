/** The sorts of course for which every rider keeps a baseline. */
export const courseTypes = ["steep", "jumpy", "wet"] as const;
export type CourseType = (typeof courseTypes)[number];
