/** The screen tells whether the browser keeps what is on this device, and it is asked once somebody has written. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;

beforeAll(async () => {
  pits = await openPits();
});

afterAll(() => pits?.close());

async function toDeviceFacts({ page }: Person): Promise<void> {
  await page.getByRole("link", { name: /has this device\. Change/ }).click();
  await page.getByRole("heading", { name: "This device" }).waitFor();
}

/** Without reading the page anew: a fresh one looks by itself whether the promise was given. */
async function logRun(rider: Person): Promise<void> {
  const { page } = rider;
  await page.getByRole("combobox", { name: "Weekend" }).selectOption({ label: "Kestrel Ridge Downhill" });
  await rider.tap(page.getByRole("link", { name: "Log a run" }));
  await rider.tap(page.getByText("fair", { exact: true }));
  await rider.tap(page.getByRole("button", { name: "Save the run" }));
  await rider.sees(/^Saved at /);
}

/** As on a page that is no secure context (https://www.w3.org/TR/secure-contexts/): what is kept for one is not there. */
async function leaveOutWhatNeedsHttps(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const absent = ["storage", "serviceWorker", "locks", "share", "canShare", "clipboard", "mediaDevices", "wakeLock"];
    for (const name of absent) Reflect.deleteProperty(Navigator.prototype, name);
    for (const name of ["subtle", "randomUUID"]) Reflect.deleteProperty(Crypto.prototype, name);
  });
}

/** Whether this browser grants it is the browser's decision; a test says which. */
async function decide(person: Person, setting: "granted" | "denied"): Promise<void> {
  const tools = await person.page.context().newCDPSession(person.page);
  const { targetInfo } = await tools.send("Target.getTargetInfo");
  await tools.send("Browser.setPermission", {
    ...(targetInfo.browserContextId !== undefined && { browserContextId: targetInfo.browserContextId }),
    permission: { name: "persistent-storage" },
    setting,
    origin: person.network.origin,
  });
}

describe("the browser's promise to keep what is on this device", () => {
  test("is asked for after the first entry, and shown when it is given", async () => {
    const rider = await pits.open("Rowan Alder", screens.phone);
    await toDeviceFacts(rider);
    await rider.sees("It is asked with your first entry.");
    await rider.page.goBack();
    await decide(rider, "granted");
    await logRun(rider);
    await toDeviceFacts(rider);
    await rider.sees("The browser has promised to keep what is on this device, also when space is short.");
    expect(await rider.page.evaluate(() => navigator.storage.persisted())).toBe(true);
    expect(await rider.page.getByText(/Put Pitslate on the home screen/).count()).toBe(0);
  }, 60_000);

  test("that is refused is said, with what it means and what to do", async () => {
    const rider = await pits.open("Rowan Alder", screens.phone);
    await decide(rider, "denied");
    await logRun(rider);
    await toDeviceFacts(rider);
    await rider.sees(/^The browser has not promised to keep .* after 7 days without opening Pitslate/);
    await rider.sees(/^Put Pitslate on the home screen/);
    await rider.sees(/save everything to a file/);
  }, 60_000);

  test("that cannot be had, as at an address that begins with http://, is said too, and all else works there", async () => {
    const rider = await pits.open("Rowan Alder", screens.phone);
    await leaveOutWhatNeedsHttps(rider.page);
    await rider.page.reload();
    await logRun(rider);
    await rider.syncSays("On the server");
    await toDeviceFacts(rider);
    await rider.sees(/^This browser gives no promise to keep what is on this device/);
    await rider.sees(/^Put Pitslate on the home screen/);
    await rider.tap(rider.page.getByRole("link", { name: "Hand over without a network" }));
    const [saved] = await Promise.all([
      rider.page.waitForEvent("download"),
      rider.tap(rider.page.getByRole("button", { name: "Save everything to a file" })),
    ]);
    await rider.page.getByLabel("Take in a file").setInputFiles(await saved.path());
    await rider.sees("Nothing is new: this device has all that is in it.");
  }, 60_000);
});

test("space is spoken of when it is short, and not before", async () => {
  const mechanic = await pits.open("Kim Larch", screens.laptop);
  await toDeviceFacts(mechanic);
  await mechanic.sees("It is asked with your first entry.");
  expect(await mechanic.page.getByText(/^Space on this device is short/).count()).toBe(0);
  const tools = await mechanic.page.context().newCDPSession(mechanic.page);
  await tools.send("Storage.overrideQuotaForOrigin", { origin: mechanic.network.origin, quotaSize: 41_000_000 });
  await mechanic.page.reload();
  await mechanic.sees(/^Space on this device is short: about (39|40) MB left, and Pitslate uses \d MB\./);
}, 60_000);
