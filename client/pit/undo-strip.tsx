import { Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { createUndoKey, undoKeyNames } from "#client/widgets/undo-key.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { createUndo } from "./create-undo.ts";

/** What the last act did or why it was refused, and the undo of the last own act: always in the same place. */
export function UndoStrip(props: { bench: RiderBench }) {
  const undo = createUndo(props.bench);
  const isMeant = makeOneTouch();
  const take = (event: Event): void => {
    if (isMeant(event.timeStamp)) undo.undo();
  };
  createUndoKey(take);
  return (
    <div class="pit-strip">
      <Problem sentence={props.bench.acts.problem()} />
      <div class="pit-strip-row">
        <output aria-live="polite">{props.bench.acts.notice()}</output>
        <Show when={undo.what()} fallback={<span class="small">{pit.undo.none}</span>}>
          {(what) => (
            <button type="button" aria-keyshortcuts={undoKeyNames} onClick={take}>
              {pit.undo.label(what())}
            </button>
          )}
        </Show>
      </div>
    </div>
  );
}
