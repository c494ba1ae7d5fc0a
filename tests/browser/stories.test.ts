/**
 * The three stories that people do most, with the taps that each takes. The taps may shrink and not grow; the seconds are
 * those of a machine, printed to be read beside each other and never judged.
 */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { countHands, type HandsCounter } from "./count-hands.ts";
import type { Person } from "./person.ts";
import { screens as devices, openPits, type Pits } from "./pits.ts";

/** The most that a story may take. A run has 12 by what riders were promised; it takes less and keeps to that. */
const most = {
  "mechanic: from conditions to a bike that is ready": { taps: 14, keys: 17 },
  "rider: a run logged": { taps: 8, keys: 0 },
  "manager: a weekend's setup made the baseline": { taps: 4, keys: 0 },
} as const;

let pits: Pits;
let mechanic: Person;
let rider: Person;
let manager: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", devices.laptop);
  rider = await pits.open("Rowan Alder", devices.phone);
  manager = await pits.open("Lou Heather", devices.tablet);
});

afterAll(() => pits?.close());

function keepsTo(story: keyof typeof most, hands: HandsCounter): void {
  const { taps, keys, seconds } = hands.count();
  process.stdout.write(`${story}: ${taps} taps, ${keys} keys, ${seconds.toFixed(1)} s by machine.\n`);
  expect(taps, "taps were counted").toBeGreaterThan(2);
  expect(taps).toBeLessThanOrEqual(most[story].taps);
  expect(keys).toBeLessThanOrEqual(most[story].keys);
}

describe.sequential("taps do not grow", () => {
  test("the mechanic has a bike ready from the conditions on", async () => {
    const { page } = mechanic;
    const hands = await countHands(page);
    const field = (name: string | RegExp) => page.getByRole("spinbutton", { name });
    await hands.choose(page.getByLabel("Weekend"), "Kestrel Ridge Downhill");
    await page.getByRole("link", { name: "Enter course and conditions" }).click();
    await hands.type(field(/^Steep/), "0.6");
    await hands.type(field(/^Jumpy/), "0.3");
    await hands.type(field(/^Wet/), "0.1");
    await hands.type(field(/^Altitude/), "1950");
    await hands.type(field("Practice 1: Air at the session (°C)"), "22");
    await hands.type(field("Practice 1: Air at the bench (°C)"), "12");
    await page.getByText("dry dust", { exact: true }).first().click();
    await page.getByRole("button", { name: "The same for all sessions" }).click();
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByRole("link", { name: /Rowan Alder/ }).click();
    await page.getByRole("button", { name: "All of it is on the bike" }).click();
    await mechanic.sees("Nothing is left to set by the sheet.");
    keepsTo("mechanic: from conditions to a bike that is ready", hands);
    await mechanic.syncSays("On the server");
  });

  test("the rider logs a run, with one hand and without typing", async () => {
    const { page } = rider;
    await page.goto(`${rider.network.origin}/trackside?weekend=kestrel-ridge-2026`);
    await page.getByRole("link", { name: "Log a run" }).waitFor();
    const hands = await countHands(page);
    const end = (name: string) =>
      page
        .locator("section")
        .filter({ has: page.getByRole("heading", { name }) })
        .last();
    await page.getByRole("link", { name: "Log a run" }).tap();
    await end("Front").getByText("never reached", { exact: true }).tap();
    await end("Front").getByText("too slow", { exact: true }).tap();
    await page.getByRole("button", { name: "Front: the rest was good" }).tap();
    await end("Rear").getByText("dives", { exact: true }).tap();
    await page.getByRole("button", { name: "Rear: the rest was good" }).tap();
    await page.getByText("fair", { exact: true }).tap();
    await page.getByRole("button", { name: "Save the run" }).tap();
    await rider.sees(/^Saved at .*run in Practice 1/);
    keepsTo("rider: a run logged", hands);
  });

  test("the manager makes the weekend's setup the baseline", async () => {
    const { page } = manager;
    await manager.sees("Baselines by rider and course type");
    const hands = await countHands(page);
    await page
      .getByRole("link", { name: /Rowan Alder, steep/ })
      .first()
      .click();
    await hands.choose(page.getByLabel("Weekend"), "Kestrel Ridge Downhill");
    await page.getByRole("button", { name: "Make it the baseline for steep" }).click();
    await manager.sees("Approved: it is version 2 of the baseline for steep.");
    keepsTo("manager: a weekend's setup made the baseline", hands);
  });
});
