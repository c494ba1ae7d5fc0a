/** Named sections as they are typed, and as they are written. */
import { sections as words } from "#client/text/sections.ts";
import { formatNumber } from "#client/widgets/format.ts";
import type { Course } from "#core/weekend/course.ts";
import { type CourseSection, MOST_SECTIONS } from "#core/weekend/course-shape.ts";

/** Ends in m along the course. */
export interface SectionDraft {
  readonly id: string;
  readonly name: string;
  readonly from: number | undefined;
  readonly to: number | undefined;
}

export function sectionDrafts(course: Course | undefined): readonly SectionDraft[] {
  return (course?.sections ?? []).map(({ id, name, from, to }) => ({ id, name, from, to }));
}

/** One more, which begins where the last one ends; the same when there are as many as there may be. */
export function withNewSection(drafts: readonly SectionDraft[], id: string): readonly SectionDraft[] {
  if (drafts.length >= MOST_SECTIONS) return drafts;
  return [...drafts, { id, name: "", from: drafts.at(-1)?.to, to: undefined }];
}

/** The sections in the order of the course, those without ends last; or what is wrong, in a sentence. `length` of the course in m. */
export function sectionsOf(drafts: readonly SectionDraft[], length: number | undefined): CourseSection[] | string {
  const sections: CourseSection[] = [];
  for (const [index, { id, from, to, ...typed }] of drafts.entries()) {
    const name = typed.name.trim();
    if (name === "" || name.length > 80) return words.problems.noName(words.position(index + 1));
    if (sections.some((section) => section.name === name)) return words.problems.twice(name);
    if (from === undefined && to === undefined) sections.push({ id, name });
    else if (from === undefined || to === undefined) return words.problems.oneEnd(name);
    else if (from >= to) return words.problems.backwards(name, formatNumber(from), formatNumber(to));
    else if (length !== undefined && to > Math.ceil(length)) {
      return words.problems.beyond(name, formatNumber(to), formatNumber(Math.ceil(length)));
    } else sections.push({ id, name, from, to });
  }
  return sections.sort((a, b) => (a.from ?? Number.POSITIVE_INFINITY) - (b.from ?? Number.POSITIVE_INFINITY) || 0);
}
