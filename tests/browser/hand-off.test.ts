/**
 * Two devices that reach the same laptop once, and never again: what one of them
 * writes afterwards gets to the other as a file.
 */
import { rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { enter, type Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

const FILE = join(tmpdir(), `pitslate-test-${process.pid}.pitslate`);

let pits: Pits;
let mechanic: Person;
let rider: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.laptop);
  rider = await pits.open("Rowan Alder", screens.phone);
});

afterAll(async () => {
  await pits?.close();
  rmSync(FILE, { force: true });
});

const linkOf = (person: Person) => person.page.getByRole("link", { name: "Hand over without a network" });
const takeIn = (person: Person) => person.page.getByLabel("Take in a file").setInputFiles(FILE);

describe.sequential("a hand-off by file", () => {
  test("a rider who is cut off changes a setting and saves everything to a file", async () => {
    const { page } = rider;
    await rider.syncSays("On the server");
    await mechanic.syncSays("On the server");
    for (const person of [rider, mechanic]) {
      await person.page.getByRole("combobox", { name: "Weekend" }).selectOption({ label: "Kestrel Ridge Downhill" });
    }
    rider.network.cut();
    mechanic.network.cut();
    await rider.syncSays("Offline since");
    await mechanic.syncSays("Offline since");
    await rider.tap(page.getByRole("link", { name: "I changed something myself" }));
    await rider.tap(page.getByRole("button", { name: /^Rebound/ }).first());
    await enter(page, /^Fork, rebound/, 9);
    await rider.tap(page.getByRole("button", { name: "Save the change" }));
    await rider.sees(/Saved: Fork, rebound 9 clicks, reported by you/);
    await rider.tap(linkOf(rider));
    const [saved] = await Promise.all([
      page.waitForEvent("download"),
      rider.tap(page.getByRole("button", { name: "Save everything to a file" })),
    ]);
    expect(saved.suggestedFilename()).toMatch(/^pitslate-\d{4}-\d\d-\d\d-\d{4}\.pitslate$/);
    await saved.saveAs(FILE);
    await rider.sees(/is made, with \d+ entries\./);
    await rider.sees(/^Rowan Alder, \d{4}: 1 entry$/);
  });

  test("the mechanic sees what is new in it and whose before it is merged, and then the setting on the bench", async () => {
    const { page } = mechanic;
    await linkOf(mechanic).click();
    await takeIn(mechanic);
    await mechanic.sees(/^Made by Rowan Alder, /);
    await mechanic.sees("1 entry new here");
    await mechanic.sees("Rowan Alder: 1 entry");
    await page.getByRole("button", { name: "Merge it" }).click();
    await mechanic.sees("Merged: 1 new entry is on this device.");
    await page.goBack();
    await mechanic.sees("Reported change to confirm");
    await page.getByRole("link", { name: /Rowan Alder/ }).click();
    await page.getByRole("heading", { name: /Fork rebound 9 clicks/ }).waitFor();
    await mechanic.syncSays("Offline since");
  });

  test("the same file once more has nothing new, and another file is refused in a sentence", async () => {
    const { page } = mechanic;
    await linkOf(mechanic).click();
    await takeIn(mechanic);
    await mechanic.sees("Nothing is new: this device has all that is in it.");
    expect(await page.getByRole("button", { name: "Merge it" }).count()).toBe(0);
    const other = { name: "photo.pitslate", mimeType: "image/png", buffer: Buffer.from("no bundle") };
    await page.getByLabel("Take in a file").setInputFiles(other);
    await mechanic.sees("This is not a hand-off file of Pitslate, or its beginning is damaged.");
  });
});
