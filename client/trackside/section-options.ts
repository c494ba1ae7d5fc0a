/** What a rider can choose from for where it was. */
import { sections as words } from "#client/text/sections.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { courseSections } from "#core/weekend/course-sections.ts";
import type { CourseSection } from "#core/weekend/course-shape.ts";

/** No identifier begins with a space. */
const WHOLE = " whole";

export interface SectionOptions {
  readonly options: readonly string[];
  readonly labelOf: (option: string) => string;
  /** Undefined when the section that was chosen is named no more. */
  readonly chosen: string | undefined;
  /** Undefined for the whole run. */
  readonly sectionOf: (option: string | undefined) => CourseSection | undefined;
}

/** The whole run and the named sections; undefined when there is nothing to choose. */
export function sectionChoice(
  ledger: Ledger,
  weekendId: string | undefined,
  chosen: CourseSection | undefined,
): SectionOptions | undefined {
  const named = weekendId === undefined ? [] : courseSections(ledger, weekendId);
  if (named.length === 0 && chosen === undefined) return undefined;
  const sectionOf = (option: string | undefined) => named.find(({ id }) => id === option);
  return {
    options: [WHOLE, ...named.map(({ id }) => id)],
    labelOf: (option) => sectionOf(option)?.name ?? words.whole,
    chosen: chosen === undefined ? WHOLE : sectionOf(chosen.id)?.id,
    sectionOf,
  };
}
