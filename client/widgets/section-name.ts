/** A section of the course in words. */
import { sections } from "#client/text/sections.ts";
import type { CourseSection } from "#core/weekend/course-shape.ts";
import { formatNumber } from "./format.ts";

/** With its ends where they are known: "Rock garden, 300 to 420 m". */
export function sectionName({ name, from, to }: CourseSection): string {
  return from === undefined || to === undefined ? name : sections.stretch(name, formatNumber(from), formatNumber(to));
}
