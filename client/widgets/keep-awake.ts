/**
 * Keeps the screen on while it is wanted (W3C Screen Wake Lock). The browser takes a lock away when the page is hidden,
 * and gives none to a hidden page: it is asked for again when the page comes back.
 */
import { type Accessor, createEffect, createSignal, onCleanup } from "solid-js";

/** The part of a lock that is needed. */
export interface Lock {
  release(): Promise<void>;
  /** Calls `listener` once the lock is gone, whoever ended it. */
  onRelease(listener: () => void): void;
}

/** Where locks come from: of a page, {@link pageScreen}. */
export interface ScreenPort {
  /** Absent where the browser knows no such thing, or not on this page. */
  readonly request: (() => Promise<Lock>) | undefined;
  isVisible(): boolean;
  /** Calls `listener` when the page is shown or hidden; returns the end of it. */
  onVisibility(listener: () => void): () => void;
}

export type Awake = "on" | "asking" | "refused" | "unavailable";

/** The page's own screen. */
export function pageScreen(): ScreenPort {
  const wakeLock = "wakeLock" in navigator ? navigator.wakeLock : undefined;
  return {
    request: wakeLock
      ? async () => {
          const sentinel = await wakeLock.request("screen");
          return {
            release: () => sentinel.release(),
            onRelease: (listener) => sentinel.addEventListener("release", listener, { once: true }),
          };
        }
      : undefined,
    isVisible: () => document.visibilityState === "visible",
    onVisibility: (listener) => {
      document.addEventListener("visibilitychange", listener);
      return () => document.removeEventListener("visibilitychange", listener);
    },
  };
}

/** Whether the screen is kept on, which it is while `isWanted` and the owner lives. */
export function createKeepAwake(screen: ScreenPort, isWanted: Accessor<boolean>): Accessor<Awake> {
  const [awake, setAwake] = createSignal<Awake>(screen.request ? "asking" : "unavailable");
  createEffect(() => {
    if (isWanted()) onCleanup(keepAwake(screen, setAwake));
  });
  return awake;
}

/** Asks for a lock, and again whenever the page comes back without one; returns the end of it. */
function keepAwake(screen: ScreenPort, say: (awake: Awake) => void): () => void {
  const { request } = screen;
  if (!request) return () => {};
  let isOver = false;
  let isAsking = false;
  let held: Lock | undefined;
  const take = async (): Promise<void> => {
    if (isOver || isAsking || held || !screen.isVisible()) return;
    isAsking = true;
    const lock = await request().catch(() => undefined);
    isAsking = false;
    if (isOver) return void lock?.release();
    if (!lock) return say("refused");
    held = lock;
    say("on");
    lock.onRelease(() => {
      held = undefined;
      if (!isOver) say("asking");
    });
  };
  const forget = screen.onVisibility(() => void take());
  void take();
  return () => {
    isOver = true;
    forget();
    void held?.release();
    say("asking");
  };
}
