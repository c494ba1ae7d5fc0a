import { createMemo } from "solid-js";
import { sections as words } from "#client/text/sections.ts";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { CourseFormState } from "../create-course-form.ts";
import { Field } from "../field.tsx";
import { LabelledInput } from "../weekend/labelled-input.tsx";
import { createSectionFields } from "./create-section-fields.ts";

/** One section: its name, and where it begins and ends. */
export function SectionFields(props: { form: CourseFormState; id: string }) {
  const fields = createSectionFields(props.form, () => props.id);
  const from = createMemo(() => fields.section()?.from);
  const to = createMemo(() => fields.section()?.to);
  return (
    <li class="card stack course-section">
      <h3>{fields.title()}</h3>
      <LabelledInput
        label={words.name}
        fullLabel={words.fieldOf(fields.title(), words.name)}
        type="text"
        value={fields.section()?.name ?? ""}
        onInput={(name) => fields.set({ name })}
      />
      <div class="course-section-ends">
        <Field label={words.from}>
          <Stepper
            label={words.fieldOf(fields.title(), words.from)}
            unit="m"
            value={from()}
            step={10}
            minimum={0}
            maximum={fields.end()}
            onChange={(metres) => fields.set({ from: metres })}
          />
        </Field>
        <Field label={words.to}>
          <Stepper
            label={words.fieldOf(fields.title(), words.to)}
            unit="m"
            value={to()}
            step={10}
            start={from() ?? 0}
            minimum={0}
            maximum={fields.end()}
            onChange={(metres) => fields.set({ to: metres })}
          />
        </Field>
      </div>
      <div>
        <button type="button" onClick={fields.remove}>
          {words.remove(fields.called())}
        </button>
      </div>
    </li>
  );
}
