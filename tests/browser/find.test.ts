/** Looking for something, with the keyboard. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { enterCourse } from "./enter-course.ts";
import type { Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;
let mechanic: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.laptop);
});

afterAll(() => pits?.close());

test("from any screen with the keyboard: a change is found by its words, and leads to the rider's changelog", async () => {
  const { page } = mechanic;
  await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await enterCourse(mechanic);
  await page.getByRole("link", { name: /Rowan Alder/ }).click();
  await page.getByRole("button", { name: "All of it is on the bike" }).click();
  await mechanic.sees("Nothing is left to set by the sheet.");
  await page.keyboard.press("Control+/");
  await page.waitForURL("**/find");
  await page.keyboard.type("rowan rebound fork");
  const found = page.getByRole("link", { name: /^Change Rowan Alder: Fork rebound, no value → / });
  await found.waitFor();
  await page.keyboard.press("Tab");
  expect(await found.evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.press("Enter");
  await page.waitForURL("**/pit/rider/alder?*view=changelog*");
  await page.goBack();
  await page.waitForURL("**/find");
});
