/** Counts what a person's hands do on a device, from the events that reach the page. */
import type { Locator, Page } from "playwright-core";

export interface Hands {
  readonly taps: number;
  readonly keys: number;
  readonly seconds: number;
}

export interface HandsCounter {
  /** Chooses in a native list, whose own picker sends the page no events: one tap opens it, one chooses. */
  choose(list: Locator, label: string): Promise<void>;
  /** Taps the field and types over what is in it. */
  type(field: Locator, text: string): Promise<void>;
  /** What was done since the counter was made. */
  count(): Hands;
}

/** Begins to count on this page, and on what it shows later. */
export async function countHands(page: Page): Promise<HandsCounter> {
  let taps = 0;
  let keys = 0;
  const started = performance.now();
  await page.exposeFunction("noteHand", (type: string) => {
    if (type === "pointerdown") taps += 1;
    else keys += 1;
  });
  const listen = (): void => {
    const { noteHand } = globalThis as unknown as { noteHand: (type: string) => void };
    for (const type of ["pointerdown", "keydown"])
      document.addEventListener(type, (event) => event.isTrusted && noteHand(type), true);
  };
  await page.addInitScript(listen);
  await page.evaluate(listen);
  return {
    choose: async (list, label) => {
      await list.selectOption({ label });
      taps += 2;
    },
    type: async (field, text) => {
      await field.click({ clickCount: 1 });
      await field.selectText();
      await page.keyboard.type(text);
    },
    count: () => ({ taps, keys, seconds: (performance.now() - started) / 1000 }),
  };
}
