import { createMemo, For, Show } from "solid-js";
import { ulid } from "ulid";
import { sections as words } from "#client/text/sections.ts";
import { MOST_SECTIONS } from "#core/weekend/course-shape.ts";
import type { CourseFormState } from "../create-course-form.ts";
import { withNewSection } from "./section-draft.ts";
import { SectionFields } from "./section-fields.tsx";

/** The sections that riders can speak of, to be named and moved. */
export function SectionsCard(props: { form: CourseFormState }) {
  const sections = createMemo(() => props.form.draft().sections);
  // By id, so that a field keeps what is being typed in it while another one changes.
  const ids = createMemo(() => sections().map(({ id }) => id));
  return (
    <section class="card stack">
      <h2>{words.title}</h2>
      <p>{words.hint}</p>
      <Show when={ids().length > 0} fallback={<p>{words.none}</p>}>
        <ol class="plain course-sections">
          <For each={ids()}>{(id) => <SectionFields form={props.form} id={id} />}</For>
        </ol>
      </Show>
      <Show when={ids().length < MOST_SECTIONS} fallback={<p>{words.full(MOST_SECTIONS)}</p>}>
        <div>
          <button type="button" onClick={() => props.form.setSections(withNewSection(sections(), ulid()))}>
            {words.add}
          </button>
        </div>
      </Show>
    </section>
  );
}
