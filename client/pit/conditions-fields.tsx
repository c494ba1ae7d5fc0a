import { createMemo, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { numberIn } from "#client/widgets/entry-field.ts";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { grounds } from "#core/team/ground.ts";
import { temperatureField } from "./course-draft.ts";
import type { CourseFormState } from "./create-course-form.ts";
import { Field } from "./field.tsx";

/** Where a first step starts. */
const START: TypedQuantity = { value: 15, unit: "°C" };

/** The conditions of one session. */
export function ConditionsFields(props: { form: CourseFormState; sessionId: string }) {
  const fields = createMemo(() => props.form.draft().sessions.find((session) => session.sessionId === props.sessionId));
  const temperature = temperatureField();
  const start = Math.round(numberIn(temperature, START) ?? 0);
  // A memo each, so that a change of one field never resets what is typed in another.
  const name = createMemo(() => fields()?.name ?? "");
  const air = createMemo(() => fields()?.air);
  const bench = createMemo(() => fields()?.bench);
  return (
    <section class="card stack">
      <h2>{name()}</h2>
      <div class="pit-fields">
        <Field label={pit.course.air}>
          <Stepper
            label={`${name()}: ${pit.course.air}`}
            unit={temperature.unit}
            value={air()}
            step={temperature.step}
            start={start}
            minimum={temperature.minimum}
            maximum={temperature.maximum}
            onChange={(value) => props.form.setConditions(props.sessionId, { air: value })}
          />
        </Field>
        <Field label={pit.course.bench}>
          <Stepper
            label={`${name()}: ${pit.course.bench}`}
            unit={temperature.unit}
            value={bench()}
            step={temperature.step}
            start={air() ?? start}
            minimum={temperature.minimum}
            maximum={temperature.maximum}
            onChange={(value) => props.form.setConditions(props.sessionId, { bench: value })}
          />
        </Field>
      </div>
      <Choice
        legend={pit.course.ground}
        options={grounds}
        labelOf={(ground) => common.grounds[ground]}
        value={fields()?.ground}
        onChange={(ground) => props.form.setConditions(props.sessionId, { ground })}
      />
      <Show when={props.form.draft().sessions[0]?.sessionId === props.sessionId}>
        <button type="button" onClick={() => props.form.copyToAll(props.sessionId)}>
          {pit.course.sameForAll}
        </button>
      </Show>
    </section>
  );
}
