/**
 * A button that acts only after it was held for a second, by a finger or by a
 * key: a drop of rain or a sleeve does not do that. Common practice, no source.
 */
const HOLD_MS = 1000;
/** A glove slips a little while it presses. */
const SLIP_PX = 30;

export interface HoldActs {
  readonly begun: () => void;
  /** Ended too early, or went elsewhere. */
  readonly broken: () => void;
  readonly held: () => void;
  /** Pressed by what has neither finger nor key: a screen reader, a switch, a voice. */
  readonly pressedOtherwise: () => void;
}

export interface HoldToOpen {
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent) => void;
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerUp: () => void;
    readonly onPointerCancel: () => void;
    readonly onPointerLeave: () => void;
    readonly onKeyDown: (event: KeyboardEvent) => void;
    readonly onKeyUp: () => void;
    readonly onBlur: () => void;
    readonly onContextMenu: (event: Event) => void;
    readonly onClick: (event: MouseEvent) => void;
  };
  /** Ends a hold that is under way; call it when the button goes away. */
  readonly stop: () => void;
}

/** Handlers of such a button. */
export function makeHoldToOpen(acts: HoldActs): HoldToOpen {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let start: { readonly x: number; readonly y: number } | undefined;
  const stop = (): void => {
    clearTimeout(timer);
    timer = undefined;
    start = undefined;
  };
  const begin = (): void => {
    stop();
    acts.begun();
    timer = setTimeout(() => {
      stop();
      acts.held();
    }, HOLD_MS);
  };
  const end = (): void => {
    if (timer === undefined) return;
    stop();
    acts.broken();
  };
  return {
    stop,
    handlers: {
      onPointerDown: (event) => {
        if (event.button !== 0) return;
        begin();
        start = { x: event.clientX, y: event.clientY };
      },
      onPointerMove: (event) => {
        if (start && Math.hypot(event.clientX - start.x, event.clientY - start.y) >= SLIP_PX) end();
      },
      onPointerUp: end,
      onPointerCancel: end,
      onPointerLeave: end,
      onKeyDown: (event) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        // Else the key would press the button as well, at once or when it is let go.
        event.preventDefault();
        if (!event.repeat) begin();
      },
      onKeyUp: end,
      onBlur: end,
      // A long press of a finger asks for the browser's menu.
      onContextMenu: (event) => event.preventDefault(),
      onClick: (event) => {
        if (event.detail === 0) acts.pressedOtherwise();
      },
    },
  };
}
