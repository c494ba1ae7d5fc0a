/** The screen tells whether the browser keeps what is on this device, and it is asked once somebody has written. */
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

  test("that cannot be had, as at an address that begins with http://, is said too", async () => {
    const rider = await pits.open("Rowan Alder", screens.phone);
    await rider.page.addInitScript(() => Object.defineProperty(navigator, "storage", { value: undefined }));
    await rider.page.reload();
    await logRun(rider);
    await toDeviceFacts(rider);
    await rider.sees(/^This browser gives no promise to keep what is on this device/);
    await rider.sees(/^Put Pitslate on the home screen/);
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
