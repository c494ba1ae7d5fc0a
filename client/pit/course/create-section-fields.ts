/** One section of the course form: what it is called, where it lies, and changing it. */
import { type Accessor, createMemo } from "solid-js";
import { sections as words } from "#client/text/sections.ts";
import { LONGEST_COURSE } from "#core/weekend/course-shape.ts";
import type { CourseFormState } from "../create-course-form.ts";
import type { SectionDraft } from "./section-draft.ts";

export function createSectionFields(form: CourseFormState, id: Accessor<string>) {
  const index = createMemo(() => form.draft().sections.findIndex((section) => section.id === id()));
  const section = createMemo(() => form.draft().sections[index()]);
  const title = createMemo(() => words.position(index() + 1));
  return {
    section,
    /** By its place in the list, which the bars of the chart name too. */
    title,
    /** Its name, where it has one by now. */
    called: () => section()?.name.trim() || title(),
    /** Where the course ends, m. */
    end: createMemo(() => Math.ceil(form.draft().profile?.points.at(-1)?.[0] ?? LONGEST_COURSE)),
    set: (fields: Partial<Omit<SectionDraft, "id">>): void =>
      form.setSections(form.draft().sections.map((one) => (one.id === id() ? { ...one, ...fields } : one))),
    remove: (): void => form.setSections(form.draft().sections.filter((one) => one.id !== id())),
  };
}
