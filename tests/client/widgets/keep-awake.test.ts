/** The screen that stays on, against a screen whose locks are counted. */
import { createRoot, createSignal } from "solid-js";
import { expect, test } from "vitest";
import { type Awake, createKeepAwake, type Lock, type ScreenPort } from "#client/widgets/keep-awake.ts";

/** A screen that gives locks to a page in view and takes them from a hidden one, as browsers do. */
class CountingScreen implements ScreenPort {
  held = 0;
  asked = 0;
  refuses = false;
  private visible = true;
  private readonly watchers = new Set<() => void>();
  private readonly ends = new Set<() => void>();

  readonly request = async (): Promise<Lock> => {
    this.asked += 1;
    if (this.refuses || !this.visible) throw new DOMException("no", "NotAllowedError");
    this.held += 1;
    const listeners: (() => void)[] = [];
    const end = (): void => {
      if (!this.ends.delete(end)) return;
      this.held -= 1;
      for (const listener of listeners) listener();
    };
    this.ends.add(end);
    return { release: async () => end(), onRelease: (listener) => void listeners.push(listener) };
  };

  isVisible(): boolean {
    return this.visible;
  }

  onVisibility(listener: () => void): () => void {
    this.watchers.add(listener);
    return () => this.watchers.delete(listener);
  }

  show(visible: boolean): void {
    this.visible = visible;
    if (!visible) for (const end of [...this.ends]) end();
    for (const watcher of [...this.watchers]) watcher();
  }

  get watched(): number {
    return this.watchers.size;
  }
}

function open(screen: ScreenPort) {
  return createRoot((dispose) => {
    const [isWanted, want] = createSignal(true);
    const awake = createKeepAwake(screen, isWanted);
    return { awake: (): Awake => awake(), want, leave: dispose };
  });
}

/** Lets everything happen that waits for promises alone. */
async function settle(): Promise<void> {
  for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
}

test("the screen is kept on while the list is open, and not after it is left", async () => {
  const screen = new CountingScreen();
  const list = open(screen);
  await settle();
  expect([list.awake(), screen.held]).toEqual(["on", 1]);
  list.leave();
  await settle();
  expect([screen.held, screen.watched]).toEqual([0, 0]);
});

test("a page that comes back asks again", async () => {
  const screen = new CountingScreen();
  const list = open(screen);
  await settle();
  screen.show(false);
  await settle();
  expect([list.awake(), screen.held, screen.asked]).toEqual(["asking", 0, 1]);
  screen.show(true);
  await settle();
  expect([list.awake(), screen.held, screen.asked]).toEqual(["on", 1, 2]);
});

test("with nothing left to set the screen may go dark, and stays on again with the next step", async () => {
  const screen = new CountingScreen();
  const list = open(screen);
  await settle();
  list.want(false);
  await settle();
  expect([list.awake(), screen.held]).toEqual(["asking", 0]);
  list.want(true);
  await settle();
  expect([list.awake(), screen.held]).toEqual(["on", 1]);
});

test("a lock that comes after the list was left is given back", async () => {
  const screen = new CountingScreen();
  const list = open(screen);
  expect(screen.asked).toBe(1);
  list.leave();
  await settle();
  expect(screen.held).toBe(0);
});

test("a refusal is said, and is no reason not to ask again", async () => {
  const screen = new CountingScreen();
  screen.refuses = true;
  const list = open(screen);
  await settle();
  expect([list.awake(), screen.held]).toEqual(["refused", 0]);
  screen.refuses = false;
  screen.show(true);
  await settle();
  expect([list.awake(), screen.held]).toEqual(["on", 1]);
});

test("a browser that cannot keep the screen on is said so", async () => {
  const list = open({ request: undefined, isVisible: () => true, onVisibility: () => () => {} });
  await settle();
  expect(list.awake()).toBe("unavailable");
});
