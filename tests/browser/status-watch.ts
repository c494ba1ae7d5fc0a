/**
 * Watches what a screen says of its records, and whether "on the server" is true
 * at that moment: what the device then has on its disk is on the laptop's disk.
 */
import type { Page } from "playwright-core";
import { recordsOnDevice } from "./device-disk.ts";
import type { LaptopLog } from "./laptop-log.ts";

export interface StatusWatch {
  /** The sentences that the screen has shown, oldest first. */
  said(): readonly string[];
  /** How often "on the server" was compared with the laptop's disk. */
  compared(): number;
  /** Where "on the server" was not true. */
  lies(): readonly string[];
  /** Returns when every comparison that was begun has ended. */
  settle(): Promise<void>;
}

/** Watches until the page is closed; a reload ends it. */
export async function watchStatus(page: Page, log: LaptopLog, documents: readonly string[]): Promise<StatusWatch> {
  const said: string[] = [];
  const lies: string[] = [];
  const comparisons: Promise<void>[] = [];
  let compared = 0;
  const compare = async (): Promise<void> => {
    for (const document of documents) {
      const device = await recordsOnDevice(page, document);
      // What was written meanwhile is not what the sentence was about.
      if ((await stateOf(page)) !== "on the server") return;
      const laptop = new Set(log.records(document));
      const missing = device.filter((record) => !laptop.has(record));
      if (missing.length > 0) lies.push(`${document}: ${missing.join(", ")}`);
    }
    compared += 1;
  };
  await page.exposeFunction("statusSaid", (state: string, sentence: string) => {
    said.push(sentence);
    if (state === "on the server") comparisons.push(compare());
  });
  await page.evaluate(() => {
    const line = document.querySelector("[data-sync]");
    if (!line) throw new Error("The screen has no status line.");
    const tell = Reflect.get(window, "statusSaid") as (state: string, sentence: string) => void;
    let last = "";
    const look = (): void => {
      const sentence = line.textContent ?? "";
      if (sentence === last) return;
      last = sentence;
      tell(line.getAttribute("data-sync") ?? "", sentence);
    };
    new MutationObserver(look).observe(line, { attributes: true, characterData: true, childList: true, subtree: true });
    look();
  });
  return {
    said: () => said,
    compared: () => compared,
    lies: () => lies,
    settle: async () => {
      for (let done = 0; done < comparisons.length; done += 1) await comparisons[done];
    },
  };
}

function stateOf(page: Page): Promise<string | null> {
  return page.locator("[data-sync]").getAttribute("data-sync");
}
