/** Undo by Ctrl+Z or Cmd+Z, wherever a screen shows its undo. */
import { onCleanup } from "solid-js";
import { isScreenLocked } from "./screen-lock.ts";

/** For the button that does the same. */
export const undoKeyNames = "Control+Z Meta+Z";

/** Whether a key press means the screen's undo: not while something is typed, whose own undo that is, nor behind a dialog. */
export function isUndoKey(event: KeyboardEvent): boolean {
  if (event.defaultPrevented || event.repeat || event.shiftKey || event.altKey) return false;
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return false;
  const target = event.target instanceof Element ? event.target : undefined;
  return !target?.matches("input:not([type=radio], [type=checkbox]), textarea, select, dialog, dialog *");
}

/** Calls `undo` for the key while the owner lives and the screen is not locked. */
export function createUndoKey(undo: (event: KeyboardEvent) => void): void {
  const onKeyDown = (event: KeyboardEvent): void => {
    if (!isUndoKey(event) || isScreenLocked() || document.querySelector("dialog[open]")) return;
    event.preventDefault();
    undo(event);
  };
  document.addEventListener("keydown", onKeyDown);
  onCleanup(() => document.removeEventListener("keydown", onKeyDown));
}
