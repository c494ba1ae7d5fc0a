/** A course out of a GPX file, its steep part and sections, and a run that a rider ties to one of them. */
import { afterAll, beforeAll, expect, test } from "vitest";
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

test("from the file to the steep part, two named sections, and what the rider says of one of them", async () => {
  const { page } = mechanic;
  await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await page.getByRole("link", { name: "Enter course and conditions" }).click();
  await page.getByText("Profile from a GPX file, and named sections").click();
  await page.getByLabel("Choose a GPX file").setInputFiles("scenarios/team.json");
  await mechanic.sees(/cannot be read as XML\. Nothing was changed/);
  await page.getByLabel("Choose a GPX file").setInputFiles("scenarios/kestrel-ridge.gpx");
  await page.getByRole("img", { name: /2120 m on\. Steep at / }).waitFor();
  await mechanic.sees("From kestrel-ridge.gpx, not saved yet.");
  await page.getByRole("button", { name: "Take steep 0.55" }).click();
  expect(await page.getByRole("spinbutton", { name: /^Steep/ }).inputValue()).toBe("0.55");

  await page.getByRole("button", { name: "Add a section" }).click();
  await page.getByRole("textbox", { name: "Section 1: Name" }).fill("Rock garden");
  await enter(page, "Section 1: From (m)", 300);
  await enter(page, "Section 1: To (m)", 420);
  await page.getByRole("button", { name: "Add a section" }).click();
  await page.getByRole("textbox", { name: "Section 2: Name" }).fill("Last berms");

  // The mechanic knows better than the file.
  await enter(page, /^Steep/, 0.6);
  await enter(page, /^Jumpy/, 0.3);
  await enter(page, /^Wet/, 0.1);
  await enter(page, /^Altitude/, 1950);
  await page.getByRole("button", { name: "Save" }).click();
  await mechanic.sees("Last berms: enter both its ends, or neither.");
  await enter(page, "Section 2: To (m)", 700);
  await page.getByRole("button", { name: "Save" }).click();
  await mechanic.sees("Saved: course, profile, sections.");
  await mechanic.syncSays("On the server");

  await rider.page.goto(`${rider.network.origin}/trackside?weekend=kestrel-ridge-2026`);
  await rider.tap(rider.page.getByRole("link", { name: "Log a run" }));
  const where = rider.page.getByRole("group", { name: "Where was it?" });
  expect(await where.getByRole("radio", { name: "the whole run" }).isChecked()).toBe(true);
  await rider.tap(rider.page.getByText("hits hard", { exact: true }).first());
  await rider.tap(where.getByText("Rock garden", { exact: true }));
  await rider.tap(rider.page.getByRole("button", { name: "Save the run" }));
  await rider.sees("Where: Rock garden, 300 to 420 m");

  await page.getByRole("link", { name: /Rowan Alder/ }).click();
  await mechanic.has("Feedback (1)");
  await mechanic.has("Where: Rock garden, 300 to 420 m");
});

test("a run log without named sections asks nothing of the kind", async () => {
  await rider.page.goto(`${rider.network.origin}/trackside/run?weekend=otter-hollow-2026`);
  await rider.sees("How was the run?");
  expect(await rider.page.getByText("Where was it?").count()).toBe(0);
});
