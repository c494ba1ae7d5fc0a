import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { formatNumber } from "#client/widgets/format.ts";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { Stepper } from "#client/widgets/stepper.tsx";
import { courseTypes } from "#core/team/course-type.ts";
import { programme } from "#core/weekend/programme.ts";
import { ConditionsFields } from "./conditions-fields.tsx";
import { CourseShape } from "./course/course-shape.tsx";
import { disputedParts, isAccepted, sumOfParts } from "./course-draft.ts";
import { createCourseForm } from "./create-course-form.ts";
import { Field } from "./field.tsx";
import { PartField } from "./part-field.tsx";

/** The course of a weekend and the conditions of its sessions, all on one page and saved together. */
export function CourseForm(props: { weekendId: string; onSaved: (said: string) => void }) {
  const device = useDevice();
  const form = createCourseForm(device, props.weekendId);
  const sum = createMemo(() => sumOfParts(form.draft().mix));
  const disputed = createMemo(() => {
    const plan = programme(device.ledger(), props.weekendId);
    return plan ? disputedParts(device.ledger(), plan) : [];
  });
  const altitude = createMemo(() => form.draft().altitude);
  let element: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    const said = form.save(focusInvalidField(element));
    if (said !== undefined) props.onSaved(said);
  };
  return (
    <form ref={element} class="stack" onSubmit={save}>
      <Show when={disputed().length > 0}>
        <p class="problem">
          {pit.course.disputed} {disputed().join(", ")}
        </p>
      </Show>
      <section>
        <h2>{pit.course.mix}</h2>
        <p>{pit.course.mixHint}</p>
        <div class="pit-fields">
          <For each={courseTypes}>{(type) => <PartField form={form} type={type} />}</For>
          <Field label={pit.course.altitude}>
            <Stepper
              label={pit.course.altitude}
              unit="m"
              value={altitude()}
              step={50}
              minimum={-400}
              maximum={5000}
              start={0}
              onChange={form.setAltitude}
            />
          </Field>
        </div>
        <p aria-live="polite">
          <strong>
            {isAccepted(form.draft().mix)
              ? pit.course.sum(formatNumber(sum()))
              : pit.course.sumMust(formatNumber(sum()))}
          </strong>
        </p>
      </section>
      <CourseShape form={form} />
      <p>{pit.course.benchHint}</p>
      <div class="columns">
        <For each={form.draft().sessions.map(({ sessionId }) => sessionId)}>
          {(sessionId) => <ConditionsFields form={form} sessionId={sessionId} />}
        </For>
      </div>
      <div class="pit-sticky-bottom">
        <Problem sentence={form.problem()} />
        <button type="submit" class="main">
          {common.save}
        </button>
      </div>
    </form>
  );
}
