/** Screens come when they are first opened, or when the browser has nothing else to do; without a server they say so. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchChromium } from "#scenarios/printing/chromium.ts";
import { type PitLaptop, startPitLaptop } from "./pit-laptop.ts";

let laptop: PitLaptop;
let browser: Awaited<ReturnType<typeof launchChromium>>;

beforeAll(async () => {
  laptop = await startPitLaptop();
  browser = await launchChromium();
});

afterAll(async () => {
  await browser?.close();
  await laptop?.close();
});

/** A device without the program's own copy, as on http in a local network; `block` says which files do not come. */
async function openDevice(block: (file: string) => boolean) {
  const context = await browser.newContext({ serviceWorkers: "block" });
  const page = await context.newPage();
  const loaded: string[] = [];
  await page.route(/\/assets\/.*\.js$/, (route) => {
    const file = new URL(route.request().url()).pathname.replace("/assets/", "");
    if (block(file)) return route.abort();
    loaded.push(file);
    return route.continue();
  });
  await page.goto(`http://127.0.0.1:${laptop.port}`);
  await page.getByRole("heading", { name: "Who are you?" }).waitFor();
  return { page, loaded, close: () => context.close() };
}

const isWorkplace = (file: string) => /^(pit|trackside|review)-screens/.test(file);

describe("a workplace's screens", () => {
  test("are loaded while nothing else is to do, and then open without the server", async () => {
    const { page, loaded, close } = await openDevice(() => false);
    await expect.poll(() => loaded.filter(isWorkplace).length, { timeout: 20_000 }).toBe(3);
    await page.route(/.*/, (route) => route.abort());
    await page.getByRole("button", { name: "Lou Heather" }).click();
    await page.getByRole("heading", { name: "Baselines by rider and course type" }).waitFor();
    await close();
  });

  test("that cannot be loaded say so, and come when the server is back", async () => {
    let isOut = true;
    const { page, close } = await openDevice((file) => isOut && isWorkplace(file));
    await page.getByRole("button", { name: "Lou Heather" }).click();
    await page.getByText("This screen could not be loaded from the server.").waitFor();
    isOut = false;
    await page.getByRole("button", { name: "Try again" }).click();
    await page.getByRole("heading", { name: "Baselines by rider and course type" }).waitFor();
    await close();
  });
});
