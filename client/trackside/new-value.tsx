import { createSignal, Show } from "solid-js";
import { trackside } from "#client/text/trackside.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { Caution } from "#client/widgets/caution.tsx";
import { entryField } from "#client/widgets/entry-field.ts";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Stepper } from "#client/widgets/stepper.tsx";
import { isDamperAdjuster } from "#core/team/adjuster.ts";
import type { AdjusterView } from "./bike-view.ts";

/** The value that an adjuster is at now, starting from what was known. */
export function NewValue(props: { adjuster: AdjusterView; onSave: (value: number | undefined) => void }) {
  const adjuster = () => props.adjuster.found.adjuster;
  const field = () => entryField(adjuster());
  const [value, setValue] = createSignal(props.adjuster.number);
  const isPressure = () => props.adjuster.found.adjuster.kind.endsWith("pressure");
  let form: HTMLElement | undefined;
  const save = (): void => {
    // What is typed and was refused is said beside it; the value before it is not what the rider means.
    if (focusInvalidField(form) === undefined) props.onSave(value());
  };
  return (
    <section ref={form} class="stack card">
      <h2>{adjusterLabel(props.adjuster.path)}</h2>
      <p>{trackside.change.before(props.adjuster.now)}</p>
      <p class="field-name">{trackside.change.setTo}</p>
      <Stepper
        label={adjusterLabel(props.adjuster.path)}
        unit={field().unit}
        value={value()}
        step={field().step}
        minimum={field().minimum}
        maximum={field().maximum}
        onChange={setValue}
      />
      <Show when={isDamperAdjuster(adjuster().kind)}>
        <p>{trackside.change.clicks}</p>
      </Show>
      <button type="button" class="main" onClick={save}>
        {trackside.change.save}
      </button>
      <p>{trackside.change.hint}</p>
      <Show when={isPressure()}>
        <Caution>{trackside.change.pressure}</Caution>
      </Show>
      <Caution>{trackside.change.firstRide}</Caution>
    </section>
  );
}
