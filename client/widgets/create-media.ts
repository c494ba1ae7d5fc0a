/** Whether a media query holds, now and later: a phone that is turned, a window that is made wide. */
import { type Accessor, createSignal, onCleanup } from "solid-js";

/** Follows the query for as long as its owner lives. */
export function createMedia(query: string): Accessor<boolean> {
  const list = matchMedia(query);
  const [holds, setHolds] = createSignal(list.matches);
  const follow = (): void => void setHolds(list.matches);
  list.addEventListener("change", follow);
  onCleanup(() => list.removeEventListener("change", follow));
  return holds;
}
