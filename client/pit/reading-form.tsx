import { createSignal, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { MountedAdjuster } from "#core/team/roster.ts";
import { focusInvalidField } from "./invalid-field.ts";

/** One value of an adjuster, by its own steps and within its own limits. */
export function ReadingForm(props: {
  found: MountedAdjuster | undefined;
  label: string;
  onSave: (value: number | undefined) => void;
}) {
  const [value, setValue] = createSignal<number>();
  let form: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    if (focusInvalidField(form) === undefined) props.onSave(value());
  };
  return (
    <Show when={props.found?.adjuster}>
      {(adjuster) => (
        <form ref={form} class="row" onSubmit={save}>
          <Stepper
            label={props.label}
            unit={adjuster().unit}
            value={value()}
            step={adjuster().step}
            minimum={adjuster().minimum}
            maximum={adjuster().maximum}
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
