/** Two people who read the same bike in units of their own. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { enterCourse } from "./enter-course.ts";
import { enter, type Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;
let mechanic: Person;
let rider: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.laptop);
  rider = await pits.open("Rowan Alder", screens.phone);
});

afterAll(() => pits?.close());

test("a mechanic who reads bar types bar, and the rider reads what was typed", async () => {
  const { page } = mechanic;
  await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await enterCourse(mechanic);
  await page.getByRole("link", { name: /Kim Larch/ }).click();
  await page.getByRole("group", { name: "Pressure" }).getByText("bar", { exact: true }).click();
  await page.getByRole("button", { name: "Kim Larch", exact: true }).click();
  await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await page.getByRole("link", { name: /Rowan Alder/ }).click();
  const row = page
    .locator("li.pit-row")
    .filter({ has: page.getByRole("heading", { name: "Main pressure" }) })
    .first();
  expect(await row.textContent()).toMatch(/\d\.\d+ bar/);
  expect(await row.textContent()).not.toContain("psi");
  await row.locator("summary").click();
  await row.getByRole("button", { name: "Set another value" }).click();
  await enter(page, "Value (bar)", "4,2");
  await page.getByRole("dialog").getByRole("button", { name: "It is on the bike" }).click();
  await mechanic.sees("Set by hand: Fork main pressure 4.2 bar");

  await rider.page.reload();
  await rider.has("4.2 bar");
});
