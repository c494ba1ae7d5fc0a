import { createSignal, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { entryField } from "#client/widgets/entry-field.ts";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { MountedAdjuster } from "#core/team/roster.ts";

/** One value of an adjuster, within its own limits; `onSave` gets it as it was typed. */
export function ReadingForm(props: {
  found: MountedAdjuster | undefined;
  label: string;
  onSave: (reading: TypedQuantity | undefined) => void;
}) {
  const [value, setValue] = createSignal<number>();
  const field = () => props.found && entryField(props.found.adjuster);
  let form: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    const unit = field()?.unit;
    const typed = value();
    if (focusInvalidField(form) === undefined)
      props.onSave(unit && typed !== undefined ? { value: typed, unit } : undefined);
  };
  return (
    <Show when={field()}>
      {(shown) => (
        <form ref={form} class="row" onSubmit={save}>
          <Stepper
            label={props.label}
            unit={shown().unit}
            value={value()}
            step={shown().step}
            minimum={shown().minimum}
            maximum={shown().maximum}
            onChange={setValue}
          />
          <button type="submit" class="main">
            {common.save}
          </button>
        </form>
      )}
    </Show>
  );
}
