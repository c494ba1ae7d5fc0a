import { createMemo, createUniqueId, For, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { Caution } from "#client/widgets/caution.tsx";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Modal } from "#client/widgets/modal.tsx";
import { Problem } from "#client/widgets/problem.tsx";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { createByHand } from "./create-by-hand.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { valueText } from "./names.ts";

/** Any value that the adjuster allows, set by hand; on a run's card it answers that run. */
export function ByHandModal(props: { bench: RiderBench; path: AdjusterPath; run?: LoggedRun; onClose: () => void }) {
  const form = createByHand(props.bench, props.path, props.run);
  const value = createMemo(() => form.draft().value);
  const chooser = createUniqueId();
  const note = createUniqueId();
  let element: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    if (focusInvalidField(element) === undefined && form.save()) props.onClose();
  };
  return (
    <Modal title={pit.byHand.title} onClose={props.onClose}>
      <form ref={element} class="stack" onSubmit={save}>
        <Problem sentence={form.problem()} />
        <div>
          <label class="field" for={chooser}>
            {pit.byHand.adjuster}
          </label>
          <select id={chooser} onChange={(event) => form.choose(event.currentTarget.value as AdjusterPath)}>
            <For each={form.paths()}>
              {(path) => (
                <option value={path} selected={path === form.draft().path}>
                  {trade.adjuster(path)}
                </option>
              )}
            </For>
          </select>
        </div>
        <p>{pit.byHand.now(valueText(form.now()))}</p>
        <Show when={form.field()} keyed>
          {(field) => (
            <Stepper
              label={pit.byHand.value}
              unit={field.unit}
              value={value()}
              step={field.step}
              minimum={field.minimum}
              maximum={field.maximum}
              onChange={form.setValue}
            />
          )}
        </Show>
        <div>
          <label class="field" for={note}>
            {pit.byHand.note}
          </label>
          <textarea id={note} maxlength={500} onInput={(event) => form.setNote(event.currentTarget.value)}>
            {form.draft().note}
          </textarea>
        </div>
        <Caution>
          {pit.bench.cautions[0]} {pit.bench.cautions[2]}
        </Caution>
        <div class="pit-actions">
          <button type="submit" class="main">
            {pit.byHand.save}
          </button>
          <button type="button" onClick={() => props.onClose()}>
            {common.cancel}
          </button>
        </div>
      </form>
    </Modal>
  );
}
