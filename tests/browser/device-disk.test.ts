/**
 * What the screen calls saved on this device is there again, whatever happens to
 * the browser: killed, a tab closed in between, its database taken away.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { recordsOnDevice } from "./device-disk.ts";
import { type KeptBrowser, openKeptBrowser } from "./kept-browser.ts";
import { type PitLaptop, startPitLaptop } from "./pit-laptop.ts";
import { openPitNetwork, type PitNetwork } from "./pit-network.ts";
import { watchStatus } from "./status-watch.ts";

const DOCUMENT = "rider/alder/2026";

let laptop: PitLaptop;
let network: PitNetwork;
let folder: string;
let browser: KeptBrowser;
let faults: string[];

beforeAll(async () => {
  laptop = await startPitLaptop();
});

afterAll(() => laptop?.close());

beforeEach(async () => {
  faults = [];
  folder = mkdtempSync(join(tmpdir(), "pitslate-browser-"));
  network = await openPitNetwork(laptop.port);
  browser = await openKeptBrowser(folder);
});

afterEach(async () => {
  await browser.kill();
  await network.close();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  expect(faults).toEqual([]);
});

const runsOf = (records: readonly string[]) => records.filter((record) => record.includes('"subject":"run:'));
const runsOnLaptop = () => runsOf(laptop.log.records(DOCUMENT)).length;
const saysAlone = (page: Page, entries: number) =>
  page.getByText(new RegExp(`^Offline since .* ${entries} entr(y|ies) on this device only`)).waitFor();
const says = (page: Page, words: string) =>
  page
    .locator("[data-sync]")
    .filter({ hasText: new RegExp(`^${words}`) })
    .waitFor();

/** The rider's own screen in a tab. */
async function openTab(): Promise<Page> {
  const page = await browser.context.newPage();
  page.on("pageerror", (error) => faults.push(error.message));
  await page.goto(network.origin);
  // Said again after each start, since a kill may take it.
  await page.getByRole("button", { name: "Rowan Alder", exact: true }).click();
  await page.goto(`${network.origin}/trackside?weekend=kestrel-ridge-2026`);
  await page.getByRole("link", { name: "Log a run" }).waitFor();
  await says(page, "On the server");
  return page;
}

/** Returns when the screen says that the run is saved, and how many entries are on this device only. */
async function logRun(page: Page, entries: number): Promise<void> {
  await page.getByRole("link", { name: "Log a run" }).press("Enter");
  await page.getByRole("radio", { name: "fair" }).press(" ");
  await page.getByRole("button", { name: "Save the run" }).press("Enter");
  await page.getByText(/^Saved at .*run in Practice 1/).waitFor();
  await saysAlone(page, entries);
}

describe.sequential("what is saved on this device", () => {
  test("is there after the browser was killed in the moment in which the screen said so", async () => {
    const page = await openTab();
    const before = runsOnLaptop();
    network.cut();
    await says(page, "Offline since");
    await logRun(page, 1);
    await browser.kill();
    expect(runsOnLaptop()).toBe(before);
    browser = await openKeptBrowser(folder);
    network.restore();
    // Who holds the device is kept apart from the records, and a kill may take it: what is unsent goes nevertheless.
    const again = await browser.context.newPage();
    await again.goto(network.origin);
    await says(again, "On the server");
    expect(runsOnLaptop()).toBe(before + 1);
  }, 60_000);

  test("by two tabs is all there when one of them was closed in between", async () => {
    const first = await openTab();
    const second = await openTab();
    const before = runsOnLaptop();
    network.cut();
    for (const page of [first, second]) await says(page, "Offline since");
    await logRun(first, 1);
    await saysAlone(second, 1);
    await logRun(second, 2);
    await first.close();
    await logRun(second, 3);
    expect(runsOf(await recordsOnDevice(second, DOCUMENT))).toHaveLength(before + 3);
    await second.close();
    network.restore();
    await openTab();
    expect(runsOnLaptop()).toBe(before + 3);
  }, 60_000);

  test("and then taken away by the browser is said not to be saved, and is written again while the page is open", async () => {
    const page = await openTab();
    const before = runsOnLaptop();
    network.cut();
    await says(page, "Offline since");
    await logRun(page, 1);
    const { said } = await watchStatus(page, laptop.log, []);
    const tools = await browser.context.newCDPSession(page);
    await tools.send("Storage.clearDataForOrigin", { origin: network.origin, storageTypes: "indexeddb" });
    await expect.poll(said).toContainEqual(expect.stringMatching(/^Not saved on this device: keep this page open/));
    await saysAlone(page, 1);
    expect(runsOf(await recordsOnDevice(page, DOCUMENT))).toHaveLength(before + 1);
    await logRun(page, 2);
    await browser.kill();
    browser = await openKeptBrowser(folder);
    network.restore();
    await openTab();
    expect(runsOnLaptop()).toBe(before + 2);
  }, 60_000);
});
