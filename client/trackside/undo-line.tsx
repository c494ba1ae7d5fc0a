import { Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { pit } from "#client/text/pit.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import { createUndoKey, undoKeyNames } from "#client/widgets/undo-key.ts";
import { createOwnUndo } from "./own-undo.ts";

/** The undo of what the rider saved last, by touch or by the keyboard. */
export function UndoLine(props: { riderId: string }) {
  const undo = createOwnUndo(useDevice(), () => props.riderId);
  const isMeant = makeOneTouch();
  const take = (event: Event): void => {
    if (isMeant(event.timeStamp)) undo.undo();
  };
  createUndoKey(take);
  return (
    <>
      <output aria-live="polite">{undo.said()}</output>
      <Show when={undo.what()}>
        {(what) => (
          <button type="button" aria-keyshortcuts={undoKeyNames} onClick={take}>
            {pit.undo.label(what())}
          </button>
        )}
      </Show>
    </>
  );
}
