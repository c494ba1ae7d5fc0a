/** A setup that the manager sends back, and the mechanic who goes back to it after a change. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { enterCourse } from "./enter-course.ts";
import type { Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;
let mechanic: Person;
let manager: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.laptop);
  manager = await pits.open("Lou Heather", screens.tablet);
});

afterAll(() => pits?.close());

test("the mechanic sees the manager's note while that setup is on the bike, and goes back to a moment of the changelog", async () => {
  const { page } = mechanic;
  await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await enterCourse(mechanic);
  await page.getByRole("link", { name: /Rowan Alder/ }).click();
  await page.getByRole("button", { name: "All of it is on the bike" }).click();
  await mechanic.sees("Nothing is left to set by the sheet.");

  await manager.sees("Baselines by rider and course type");
  await manager.page
    .getByRole("link", { name: /Rowan Alder, steep/ })
    .first()
    .click();
  await manager.page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await manager.page.getByText("Send it back with a note").click();
  await manager.page.getByLabel(/What is to be done/).fill("Measure the sag of the shock first.");
  await manager.page.getByRole("button", { name: "Send it back", exact: true }).click();
  await manager.sees(/^Sent back: it is not the baseline for steep/);

  await mechanic.sees("Measure the sag of the shock first.");
  await mechanic.sees(/^Lou Heather, /);
  const row = page
    .locator("li.pit-row")
    .filter({ has: page.getByRole("heading", { name: "Rebound" }) })
    .first();
  await row.locator("summary").click();
  await row.getByRole("button", { name: "Set another value" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: /Down by one step/ }).click();
  await dialog.getByRole("button", { name: "It is on the bike" }).click();
  await mechanic.sees(/^Set by hand: Fork rebound/);
  expect(await page.getByText("Measure the sag of the shock first.").count()).toBe(0);

  await page.getByText("Compare two moments").click();
  await page.getByLabel("Then").selectOption({ index: 2 });
  await mechanic.sees("1 adjuster differs.");
  await page.getByRole("button", { name: "All of it is on the bike as it was then" }).click();
  await mechanic.sees(/^Back to that moment: /);
  await mechanic.sees("Nothing differs between the two.");
  await mechanic.sees("Measure the sag of the shock first.");
});
