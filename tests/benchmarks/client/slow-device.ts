/** One person's device as slow as a phone: a context of its own whose page gets a quarter of the processor. */
import type { Browser, BrowserContext, CDPSession, Page } from "playwright-core";
import { watchPages } from "./page-watch.ts";

/** Times slower than this machine. */
export const SLOWDOWN = 4;

/** For the first sync of a whole history on a slow, busy machine. */
const PATIENCE_MS = 60_000;

export interface SlowDevice {
  readonly page: Page;
  readonly devTools: CDPSession;
  /** When everything was on the device and could be used, ms since the navigation began. */
  readonly usableAt: number;
  close(): Promise<void>;
}

export interface SlowDeviceNeeds {
  readonly browser: Browser;
  readonly origin: string;
  /** Chosen at the first screen. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly hasTouch?: boolean;
}

/** Opens the app, chooses who holds the device, and waits until the server has been heard out. */
export async function openSlowDevice({ browser, origin, name, ...screen }: SlowDeviceNeeds): Promise<SlowDevice> {
  const context = await browser.newContext({
    viewport: { width: screen.width, height: screen.height },
    hasTouch: screen.hasTouch ?? false,
  });
  await watchPages(context);
  const { page, devTools } = await openSlowPage(context);
  await page.goto(origin);
  await page.getByRole("button", { name, exact: true }).click();
  await page.waitForURL((url) => url.pathname !== "/");
  await syncSays(page, "On the server");
  const usableAt = await page.evaluate(() => performance.now());
  return { page, devTools, usableAt, close: () => context.close() };
}

/** A new page of a context, slowed down before it loads anything. */
export async function openSlowPage(context: BrowserContext): Promise<{ page: Page; devTools: CDPSession }> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  const devTools = await context.newCDPSession(page);
  await devTools.send("Emulation.setCPUThrottlingRate", { rate: SLOWDOWN });
  return { page, devTools };
}

/** Waits until the sync line begins with these words. */
export async function syncSays(page: Page, words: string): Promise<void> {
  await page
    .locator("[data-sync]")
    .filter({ hasText: new RegExp(`^${words}`) })
    .waitFor();
}
