/** One person with a device of his own: a browser context, and a way to the pit laptop that can be cut. */
import type { Browser, BrowserContext, Locator, Page } from "playwright-core";
import { expect } from "vitest";
import type { Chance } from "#scenarios/player/chance.ts";
import { openPitNetwork, type PitNetwork } from "./pit-network.ts";

/** How long a person waits for something to appear: generous, since the machines of a test may be slow. */
const WAIT_MS = Number(process.env.PITSLATE_WAIT_MS ?? 30_000);

export interface Person {
  readonly page: Page;
  readonly network: PitNetwork;
  /** Errors that the page threw or logged; a test ends with none. */
  readonly faults: string[];
  /** How often {@link Person.tap} was called. */
  taps(): number;
  /** Taps one control. */
  tap(control: Locator): Promise<void>;
  /** Waits until the text is in view. */
  sees(text: string | RegExp): Promise<void>;
  /** Waits until the page has the text, in view or not: counts on tabs stand in the page at every width. */
  has(text: string | RegExp): Promise<void>;
  /** Waits until the sync line begins with these words. */
  syncSays(words: string): Promise<void>;
  close(): Promise<void>;
}

export interface PersonOptions {
  readonly browser: Browser;
  readonly port: number;
  readonly width: number;
  readonly height: number;
  readonly hasTouch?: boolean;
  /** What the owner reads (BCP 47); English without it. */
  readonly locale?: string;
  /** Draws the times and lengths of this person's network. */
  readonly chance?: Chance;
}

/** Opens a device at the choice of who holds it, and chooses `name`. */
export async function openPerson(name: string, options: PersonOptions): Promise<Person> {
  const person = await openDevice(name, options, async () => {});
  await person.page.getByRole("button", { name, exact: true }).click();
  await person.page.waitForURL((url) => url.pathname !== "/");
  return person;
}

/** Opens a device whose sockets lead nowhere, so that it stays without a team. */
export function openNewDevice(options: PersonOptions): Promise<Person> {
  return openDevice("new device", options, (page) => page.routeWebSocket(/\/sync\//, () => {}));
}

async function openDevice(
  name: string,
  options: PersonOptions,
  prepare: (page: Page) => Promise<void>,
): Promise<Person> {
  const network = await openPitNetwork(options.port, options.chance);
  const context: BrowserContext = await options.browser.newContext({
    viewport: { width: options.width, height: options.height },
    hasTouch: options.hasTouch ?? false,
    ...(options.locale !== undefined && { locale: options.locale }),
  });
  const page = await context.newPage();
  page.setDefaultTimeout(WAIT_MS);
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(`${name}: ${error.message}`));
  let taps = 0;
  const tap = async (control: Locator): Promise<void> => {
    taps += 1;
    if (options.hasTouch) await control.tap();
    else await control.click();
  };
  await prepare(page);
  await page.goto(network.origin);
  await hasAllScreens(page);
  return {
    page,
    network,
    faults,
    taps: () => taps,
    tap,
    sees: async (text) => {
      await page.getByText(text).first().waitFor();
    },
    has: async (text) => {
      await page.getByText(text).first().waitFor({ state: "attached" });
    },
    syncSays: async (words) => {
      await page
        .locator("[data-sync]")
        .filter({ hasText: new RegExp(`^${words}`) })
        .waitFor();
    },
    close: async () => {
      expect(faults).toEqual([]);
      await context.close();
      await network.close();
    },
  };
}

/** A moment after its start a page has loaded the screens that it does not show yet; a test that cuts the network counts on that. */
async function hasAllScreens(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const files = performance.getEntriesByType("resource").map((entry) => entry.name);
    const scripts = (name: RegExp) => files.filter((file) => name.test(file)).length;
    return scripts(/(pit|trackside|review)-screens-.*\.js$/) >= 3 && scripts(/hand-off-.*\.js$/) >= 2;
  });
}

/** Types a number into the field of that label and leaves it, as with Tab. */
export async function enter(page: Page, label: string | RegExp, value: number | string): Promise<void> {
  const field = page.getByRole("spinbutton", { name: label });
  await field.fill(String(value));
  await field.press("Tab");
}
