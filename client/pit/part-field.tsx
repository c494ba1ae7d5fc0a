import { createMemo } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { CourseType } from "#core/team/course-type.ts";
import type { CourseFormState } from "./create-course-form.ts";
import { Field } from "./field.tsx";

/** How much of the course is of one type. */
export function PartField(props: { form: CourseFormState; type: CourseType }) {
  const part = createMemo(() => props.form.draft().mix[props.type]);
  return (
    <Field label={pit.course.parts[props.type]}>
      <Stepper
        label={pit.course.parts[props.type]}
        unit={pit.course.partUnit}
        value={part()}
        step={0.05}
        minimum={0}
        maximum={1}
        onChange={(value) => props.form.setPart(props.type, value)}
      />
    </Field>
  );
}
