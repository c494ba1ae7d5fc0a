/** A setup that goes to the spare bike, a fork that is moved to it, and both undone. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { enterCourse } from "./enter-course.ts";
import type { Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

const FORK = "200 mm air fork with main and secondary chamber";
let pits: Pits;
let mechanic: Person;
let rider: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.tablet);
  rider = await pits.open("Rowan Alder", screens.phone);
});

afterAll(() => pits?.close());

/** A second touch of one button within 0.7 s is a glove that trembles; a person is slower. */
async function rest(page: Page): Promise<void> {
  const since = await page.evaluate(() => performance.now());
  await page.waitForFunction((then) => performance.now() - then > 750, since);
}

test("the mechanic copies a setup to the spare bike, puts the rider on it, moves the fork there, and takes it back", async () => {
  const { page } = mechanic;
  const press = (name: string | RegExp) => page.getByRole("button", { name }).first().click();
  await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await enterCourse(mechanic);
  await page.getByRole("link", { name: /Rowan Alder/ }).click();
  await press("All of it is on the bike");
  await mechanic.sees("Nothing is left to set by the sheet.");

  await page.getByRole("link", { name: "On Race bike of Rowan Alder, 1 of 2 bikes" }).click();
  await mechanic.sees("Leverage ratio of the shock: 2.92, not 2.8.");
  const row = (name: string) => page.getByRole("row", { name: new RegExp(`^${name} `) });
  expect(await row("Fork secondary pressure").textContent()).toMatch(
    /Refused\. .*outside the part's range of 80 psi to 140 psi/s,
  );
  expect(await row("Fork rebound").textContent()).toContain("Can be set.");
  await press(/settings on Spare bike of Rowan Alder: it is done$/);
  await mechanic.sees(/^Copied from Race bike of Rowan Alder: \d+ settings on Spare bike of Rowan Alder$/);
  expect(await row("Fork rebound").textContent()).toContain("Is set like that already.");
  await rest(page);
  await press(/^Undo: copied, \d+ settings$/);
  await mechanic.sees(/^Undone: copied/);
  expect(await row("Fork rebound").textContent()).toContain("Can be set.");
  await press(/settings on Spare bike of Rowan Alder: it is done$/);

  await press("From now on: Spare bike of Rowan Alder");
  await mechanic.sees("Rowan Alder rides Spare bike of Rowan Alder now");
  await rider.sees("Spare bike of Rowan Alder");

  await page.getByLabel("Part").selectOption({ label: `fork: ${FORK} of Rowan Alder, on Race bike of Rowan Alder` });
  await page.getByLabel("Move it to").selectOption({ label: "Spare bike of Rowan Alder (Rowan Alder)" });
  await mechanic.sees("Release all air before a part is opened.");
  await press("It is moved");
  await mechanic.sees("Say whether the air stayed in the part.");
  await page.getByText("stayed in", { exact: true }).click();
  await press("It is moved");
  await mechanic.sees(`Moved: ${FORK} of Rowan Alder to Spare bike of Rowan Alder`);
  await page.getByText(`History of ${FORK} of Rowan Alder`).click();
  await mechanic.sees(/^Race bike of Rowan Alder, until /);
  await rest(page);
  await press(`Undo: moved ${FORK} of Rowan Alder`);
  await mechanic.sees(`Undone: moved ${FORK} of Rowan Alder`);
  await mechanic.sees(/^Race bike of Rowan Alder, ever since it is known$/);
});

test("two mechanics who move the fork apart to different bikes both see it, and one who looked settles it", async () => {
  const other = await pits.open("Dee Rush", screens.laptop);
  const people = [mechanic, other];
  for (const { page } of people) {
    await page.goto(`${new URL(page.url()).origin}/pit/rider/alder/bikes`);
    await page.getByLabel("Part").selectOption({ label: `fork: ${FORK} of Rowan Alder, on Race bike of Rowan Alder` });
  }
  mechanic.network.cut();
  await mechanic.syncSays("Offline");
  const move = async ({ page }: Person, to: string) => {
    await page.getByLabel("Move it to").selectOption({ label: to });
    await page.getByText("stayed in", { exact: true }).click();
    await page.getByRole("button", { name: "It is moved" }).click();
    await page.getByText(/^Moved: /).waitFor();
  };
  await move(mechanic, "Spare bike of Rowan Alder (Rowan Alder)");
  await move(other, "Race bike of Bo Linden (Bo Linden)");
  mechanic.network.restore();
  for (const person of people) await person.sees("Which fork is on Spare bike of Rowan Alder?");
  await other.page
    .locator("article.card.alarm", { hasText: "Which fork is on Spare bike of Rowan Alder?" })
    .getByRole("button", { name: `${FORK} of Rowan Alder is on it` })
    .click();
  for (const { page } of people) {
    await page.getByText("Which fork is on Spare bike of Rowan Alder?").first().waitFor({ state: "detached" });
  }
});
