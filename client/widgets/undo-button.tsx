import { type JSX, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { makeOneTouch } from "./one-touch.ts";
import { createUndoKey, undoKeyNames } from "./undo-key.ts";

/** Takes back what `what` names, by touch or by the keyboard; `fallback` stands there while there is nothing. */
export function UndoButton(props: { what: string | undefined; onUndo: () => void; fallback?: JSX.Element }) {
  const isMeant = makeOneTouch();
  const take = (event: Event): void => {
    if (isMeant(event.timeStamp)) props.onUndo();
  };
  createUndoKey(take);
  return (
    <Show when={props.what} fallback={props.fallback}>
      {(what) => (
        <button type="button" aria-keyshortcuts={undoKeyNames} onClick={take}>
          {pit.undo.label(what())}
        </button>
      )}
    </Show>
  );
}
