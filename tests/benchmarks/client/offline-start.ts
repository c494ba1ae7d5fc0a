/** A device that has everything is switched on without a network: until the team board shows its riders and takes a press. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { type KeptBrowser, openKeptBrowser } from "#tests/browser/kept-browser.ts";
import { openPitNetwork } from "#tests/browser/pit-network.ts";
import { describe, line, quartiles } from "../measure.ts";
import { demoRiders } from "./history-laptop.ts";
import type { AfterStart } from "./long-tasks.ts";
import { type LongTask, notesOf, watchPages } from "./page-watch.ts";
import { openSlowPage, syncSays } from "./slow-device.ts";

const MOST_MS = 1500;
const REPETITIONS = 7;
/** ms after the start in which long tasks are still put down to it. */
const AFTERMATH_MS = 3000;

/** Moments of one start, ms since the navigation began. */
interface Start {
  readonly shown: number;
  readonly usable: number;
  readonly longTasks: readonly LongTask[];
}

/** Prints the report; each start is one of a browser that has just been started. */
export async function benchOfflineStart(
  port: number,
  write: (text: string) => void,
): Promise<{ readonly kept: boolean; readonly after: AfterStart }> {
  const folder = mkdtempSync(join(tmpdir(), "pitslate-bench-browser-"));
  const network = await openPitNetwork(port);
  try {
    await inBrowser(folder, (browser) => fillDevice(browser, network.origin));
    network.cut();
    const starts: Start[] = [];
    for (let done = 0; done < REPETITIONS; done += 1) {
      starts.push(await inBrowser(folder, (browser) => startOnce(browser, network.origin)));
    }
    const usable = quartiles(starts.map((start) => start.usable));
    const kept = usable.median <= MOST_MS;
    const before = starts.flatMap(({ longTasks, usable: end }) => longTasks.filter(({ start }) => start < end));
    write(`\nOffline cold start, ${REPETITIONS} starts of a browser\n`);
    write(line("until the team board shows its riders", describe(quartiles(starts.map(({ shown }) => shown)))));
    write(line("until it has taken a press", describe(usable), { text: `at most ${MOST_MS / 1000} s`, kept }));
    write(line("  longest task of the starts", `${Math.max(0, ...before.map(({ duration }) => duration))} ms`));
    const after = starts.flatMap(({ longTasks, usable: end }) => longTasks.filter(({ start }) => start >= end));
    return { kept, after: { what: "after an offline start", longTasks: after } };
  } finally {
    await network.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function inBrowser<Result>(folder: string, work: (browser: KeptBrowser) => Promise<Result>): Promise<Result> {
  const browser = await openKeptBrowser(folder);
  try {
    const result = await work(browser);
    // Asked to end, it writes down what it keeps; only then is it made sure of.
    const session = await browser.context.browser()?.newBrowserCDPSession();
    await session?.send("Browser.close").catch(() => {});
    return result;
  } finally {
    await browser.kill();
  }
}

/** All documents and all of the program onto the device, with the mechanic as its holder. */
async function fillDevice({ context }: KeptBrowser, origin: string): Promise<void> {
  const page = await context.newPage();
  await page.goto(origin);
  await page.getByRole("button", { name: "Kim Larch", exact: true }).click();
  await boardIsShown(page);
  await syncSays(page, "On the server");
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await boardIsShown(page);
  await syncSays(page, "On the server");
}

async function startOnce({ context }: KeptBrowser, origin: string): Promise<Start> {
  await watchPages(context);
  await context.addInitScript((riders) => {
    const start = { shown: 0, usable: 0 };
    Reflect.set(window, "boardStart", start);
    const look = (): void => {
      const cards = document.querySelectorAll(".pit-card-name");
      const isShown = cards.length === riders && document.querySelector("[hidden] .pit-card-name") === null;
      if (!isShown) requestAnimationFrame(look);
      else
        requestAnimationFrame(() => {
          start.shown = performance.now();
        });
    };
    requestAnimationFrame(look);
    // The router has answered by the time that the press has come up to the window.
    window.addEventListener("click", (event) => {
      if (event.defaultPrevented) start.usable ||= performance.now();
    });
  }, demoRiders.length);
  const { page } = await openSlowPage(context);
  await page.goto(`${origin}/pit`, { waitUntil: "commit" });
  await boardIsShown(page);
  await page.getByRole("link", { name: /Bo Linden/ }).click({ noWaitAfter: true });
  await page.waitForURL(/\/pit\/rider\/linden/);
  const moments = await page.evaluate(() => Reflect.get(window, "boardStart") as { shown: number; usable: number });
  if (moments.usable === 0 || moments.shown === 0) throw new Error("The team board has not noted its start.");
  await page.waitForFunction((end) => performance.now() > end, moments.usable + AFTERMATH_MS);
  const { longTasks } = await notesOf(page);
  return { ...moments, longTasks };
}

async function boardIsShown(page: Page): Promise<void> {
  await page
    .locator(".pit-card-name")
    .nth(demoRiders.length - 1)
    .waitFor();
}
