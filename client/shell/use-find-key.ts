/** Ctrl+/ (or Cmd+/) leads to the search, from every screen. A key without a modifier could be meant for a screen reader. */
import { useNavigate } from "@solidjs/router";
import { onCleanup, onMount } from "solid-js";

/** For as long as its owner is shown; not while a dialog is open, nor while `isOffered` says no. */
export function useFindKey(isOffered: () => boolean): void {
  const navigate = useNavigate();
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== "/" || !(event.ctrlKey || event.metaKey) || event.defaultPrevented) return;
    if (!isOffered() || document.querySelector("dialog[open]")) return;
    event.preventDefault();
    navigate("/find");
  };
  onMount(() => addEventListener("keydown", onKeyDown));
  onCleanup(() => removeEventListener("keydown", onKeyDown));
}
