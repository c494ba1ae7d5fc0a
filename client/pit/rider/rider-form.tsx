import { createMemo, Show } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { Field } from "#client/pit/field.tsx";
import { riderDetails as words } from "#client/text/rider-details.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { numberIn } from "#client/widgets/entry-field.ts";
import { formatNumber } from "#client/widgets/format.ts";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { Stepper } from "#client/widgets/stepper.tsx";
import { DEFAULT_FRONT_SHARE } from "#core/advice/suspension-model.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { ridingStyles } from "#core/team/riding-style.ts";
import { createRiderDetails, massField } from "./create-rider-details.ts";

/** Where a first step starts. */
const START_MASS: TypedQuantity = { value: 75, unit: "kg" };

/** The rider's mass, front share and style. */
export function RiderForm(props: { bench: RiderBench; riderId: string; onSaved: () => void }) {
  const details = createRiderDetails(props.bench.device, props.bench.acts, props.riderId);
  const field = massField();
  const mass = createMemo(() => details.draft().mass);
  const frontShare = createMemo(() => details.draft().frontShare);
  let element: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    if (focusInvalidField(element) === undefined && details.save()) props.onSaved();
  };
  return (
    <form ref={element} class="card stack" onSubmit={save} novalidate>
      <Show when={details.disputed()}>
        <p class="problem">{words.disputed}</p>
      </Show>
      <p>{words.about}</p>
      <div class="pit-fields">
        <Field label={words.mass}>
          <Stepper
            label={words.mass}
            unit={field.unit}
            value={mass()}
            step={field.step}
            start={numberIn(field, START_MASS) ?? field.minimum}
            minimum={field.minimum}
            maximum={field.maximum}
            onChange={(value) => details.set({ mass: value })}
          />
        </Field>
        <Field label={words.share}>
          <Stepper
            label={words.share}
            unit={words.shareUnit}
            value={frontShare()}
            step={0.01}
            start={DEFAULT_FRONT_SHARE}
            minimum={0.2}
            maximum={0.7}
            onChange={(value) => details.set({ frontShare: value })}
          />
        </Field>
      </div>
      <p>{words.shareAbout(formatNumber(DEFAULT_FRONT_SHARE))}</p>
      <Choice
        legend={words.style}
        options={ridingStyles}
        labelOf={(style) => words.styles[style]}
        value={details.draft().style}
        onChange={(style) => details.set({ style })}
      />
      <p>{words.styleAbout}</p>
      <Problem sentence={details.problem()} />
      <div>
        <button type="submit" class="main">
          {words.save}
        </button>
      </div>
    </form>
  );
}
