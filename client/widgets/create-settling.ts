/** Whether a list has just shifted under the finger, by what others did. */
import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup } from "solid-js";

/** ms that somebody needs to see that what he was about to touch has moved. Common practice, no source. */
const SETTLING_MS = 600;

/**
 * True for a moment after the lines (their keys, in order) have changed. A list shows it by letting no touch through; the
 * keyboard goes on, since its focus moves along with the line.
 */
export function createSettling(keys: Accessor<readonly string[]>): Accessor<boolean> {
  const [isSettling, setSettling] = createSignal(false);
  let timer: ReturnType<typeof setTimeout> | undefined;
  // The same keys anew are no shift.
  const order = createMemo(() => keys().join("\n"));
  createEffect(
    on(
      order,
      () => {
        setSettling(true);
        clearTimeout(timer);
        timer = setTimeout(() => setSettling(false), SETTLING_MS);
      },
      { defer: true },
    ),
  );
  onCleanup(() => clearTimeout(timer));
  return isSettling;
}
