/** The first look at all riders, one a turn: on a slow phone one at once for a dozen holds up every touch. */
import { type Accessor, createEffect, createSignal, onCleanup, untrack } from "solid-js";

/** Does the next turn later; a test does it at once. */
export type Later = (turn: () => void) => void;

/** How many riders have had their turn; it grows by itself once `isBegun`, up to `count`. */
export function createRiderTurns(isBegun: Accessor<boolean>, count: Accessor<number>, later: Later): Accessor<number> {
  const [done, setDone] = createSignal(0);
  let isTaking = false;
  let isClosed = false;
  const next = (): void => {
    isTaking = false;
    if (!isClosed && untrack(done) < untrack(count)) setDone((before) => before + 1);
  };
  createEffect(() => {
    // Riders who join have their turn, too.
    if (!isBegun() || done() >= count() || isTaking) return;
    isTaking = true;
    later(next);
  });
  onCleanup(() => {
    isClosed = true;
  });
  return done;
}
