/** The lock against rain of one screen. */
import { type Accessor, createEffect, createSignal, onCleanup } from "solid-js";
import { type HoldToOpen, makeHoldToOpen } from "./hold-to-open.ts";
import { lockScreen } from "./screen-lock.ts";

/** Open, or locked and what became of the last press on the button that opens. */
export type RainLockState = "open" | "locked" | "holding" | "short" | "confirm";

export interface RainLock {
  readonly state: Accessor<RainLockState>;
  readonly isLocked: Accessor<boolean>;
  lock(): void;
  open(): void;
  readonly hold: HoldToOpen["handlers"];
}

/** A lock that is open; it ends with its screen. */
export function createRainLock(): RainLock {
  const [state, setState] = createSignal<RainLockState>("open");
  const isLocked = () => state() !== "open";
  const hold = makeHoldToOpen({
    begun: () => setState("holding"),
    broken: () => setState("short"),
    held: () => setState("open"),
    pressedOtherwise: () => setState("confirm"),
  });
  createEffect(() => lockScreen(isLocked()));
  onCleanup(() => {
    hold.stop();
    lockScreen(false);
  });
  return {
    state,
    isLocked,
    lock: () => void setState("locked"),
    open: () => void setState("open"),
    hold: hold.handlers,
  };
}
