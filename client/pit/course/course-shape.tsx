import type { CourseFormState } from "../create-course-form.ts";
import { CourseProfileCard } from "./course-profile-card.tsx";
import { SectionsCard } from "./sections-card.tsx";
import { shapeSummary } from "./shape-summary.ts";

/** Profile and sections of the course, folded into one line: whoever only enters conditions passes it by. */
export function CourseShape(props: { form: CourseFormState }) {
  return (
    <details class="course-shape">
      <summary class="pit-summary">{shapeSummary(props.form.draft())}</summary>
      <div class="stack">
        <CourseProfileCard form={props.form} />
        <SectionsCard form={props.form} />
      </div>
    </details>
  );
}
