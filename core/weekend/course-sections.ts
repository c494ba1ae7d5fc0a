/** The sections of a weekend's course that the team has named. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { knownValue } from "#core/team/roster.ts";
import type { CourseSection } from "./course-shape.ts";
import { courseKind } from "./record-kinds.ts";

/** In the order of the course; none while none are named. */
export function courseSections(ledger: Ledger, weekendId: string): readonly CourseSection[] {
  return knownValue(ledger, courseKind, weekendId)?.sections ?? [];
}
