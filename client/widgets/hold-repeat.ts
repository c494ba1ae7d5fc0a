/**
 * A button that acts on release, and repeats while it is held: first after
 * 400 ms. A finger that moves 10 px is scrolling: it cancels, so that a scroll
 * over a control never changes a value.
 */
const HOLD_MS = 400;
const REPEAT_MS = 120;
const SCROLL_PX = 10;

export interface HoldRepeat {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onPointerLeave: () => void;
  /** For the keyboard and assistive technology, whose clicks come without a pointer. */
  readonly onClick: (event: MouseEvent) => void;
  /** Ends a repeat that is under way; call it when the button goes away. */
  readonly stop: () => void;
}

/** Handlers for a button that does `act`. */
export function makeHoldRepeat(act: () => void): HoldRepeat {
  let start: { readonly x: number; readonly y: number } | undefined;
  let repeated = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = (): void => {
    clearTimeout(timer);
    timer = undefined;
    start = undefined;
  };
  const repeat = (): void => {
    repeated = true;
    act();
    timer = setTimeout(repeat, REPEAT_MS);
  };
  return {
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      start = { x: event.clientX, y: event.clientY };
      repeated = false;
      timer = setTimeout(repeat, HOLD_MS);
    },
    onPointerMove: (event) => {
      if (start && Math.hypot(event.clientX - start.x, event.clientY - start.y) >= SCROLL_PX) stop();
    },
    onPointerUp: () => {
      const pressed = start !== undefined && !repeated;
      stop();
      if (pressed) act();
    },
    onPointerCancel: stop,
    onPointerLeave: stop,
    onClick: (event) => {
      if (event.detail === 0) act();
    },
    stop,
  };
}
