import { createMemo, createUniqueId, For, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { Caution } from "#client/widgets/caution.tsx";
import { Choice } from "#client/widgets/choice.tsx";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Modal } from "#client/widgets/modal.tsx";
import { Problem } from "#client/widgets/problem.tsx";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { createServiceForm } from "./create-service-form.ts";
import { Field } from "./field.tsx";
import { type ServicePlace, workName } from "./service-lines.ts";

/** A service that was done, written down together with what is on the bike. */
export function ServiceModal(props: { bench: RiderBench; place: ServicePlace; onClose: () => void }) {
  const form = createServiceForm({ bench: props.bench, place: props.place });
  const hoursBefore = createMemo(() => form.draft().hoursBefore);
  const note = createUniqueId();
  let element: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    if (focusInvalidField(element) === undefined && form.save()) props.onClose();
  };
  return (
    <Modal title={pit.service.done(common.places[props.place])} onClose={props.onClose}>
      <form ref={element} class="stack" onSubmit={save}>
        <Choice
          legend={pit.service.what}
          options={form.works()}
          labelOf={(work) => workName(props.place, work)}
          value={form.draft().what}
          onChange={(what) => form.set({ what })}
          required
        />
        <Show when={form.works().length > 1}>
          <p>{pit.service.completeHint}</p>
        </Show>
        <Field label={pit.service.before}>
          <Stepper
            label={pit.service.before}
            unit={pit.service.hoursUnit}
            value={hoursBefore()}
            step={1}
            start={1}
            minimum={0}
            maximum={5000}
            onChange={(hours) => form.set({ hoursBefore: hours })}
          />
        </Field>
        <p>{pit.service.beforeHint}</p>
        <div>
          <label class="field" for={note}>
            {pit.service.note}
          </label>
          <textarea id={note} maxlength={500} onInput={(event) => form.set({ note: event.currentTarget.value })}>
            {form.draft().note}
          </textarea>
        </div>
        <Show when={form.settings().length > 0} fallback={<p>{pit.service.nothingOnTheBike}</p>}>
          <details>
            <summary class="pit-summary">{pit.service.onTheBikeNow(form.settings().length)}</summary>
            <ul>
              <For each={form.settings()}>{(setting) => <li>{setting}</li>}</For>
            </ul>
          </details>
        </Show>
        <Show when={form.disputed() !== ""}>
          <p>{pit.service.inDispute(form.disputed())}</p>
        </Show>
        <Caution>{pit.bench.cautions[1]}</Caution>
        <Problem sentence={form.problem()} />
        <div class="pit-actions">
          <button type="submit" class="main">
            {pit.service.save}
          </button>
          <button type="button" onClick={() => props.onClose()}>
            {common.cancel}
          </button>
        </div>
      </form>
    </Modal>
  );
}
