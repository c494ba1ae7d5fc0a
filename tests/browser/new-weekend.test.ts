/**
 * A weekend that comes from no file: the mechanic enters it out of reach of the
 * pit laptop, and a rider on another device finds it, logs a run in it and sees
 * it change.
 */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { enter, type Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

const YEAR = new Date().getFullYear() + 1;
const ID = `heron-bay-cup-${YEAR}`;

let pits: Pits;
let mechanic: Person;
let rider: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.laptop);
  rider = await pits.open("Rowan Alder", screens.phone);
});

afterAll(() => pits?.close());

const field = (person: Person, label: string) => person.page.getByLabel(label, { exact: true });
const weekendOf = ({ page }: Person) => page.getByRole("combobox", { name: "Weekend" });
const save = () => mechanic.page.getByRole("button", { name: "Save", exact: true }).click();

/** The sessions that a rider can choose from. */
async function sessionsOf({ page }: Person): Promise<readonly string[]> {
  const labels = await page.getByRole("group", { name: "Heron Bay Cup" }).locator("label").allTextContents();
  return labels.map((label) => label.trim());
}

describe.sequential("a new weekend", () => {
  test("is entered out of reach of the laptop; what is wrong is refused in a sentence and nothing typed is lost", async () => {
    await mechanic.syncSays("On the server");
    mechanic.network.cut();
    await mechanic.syncSays("Offline since");
    await mechanic.page.getByRole("link", { name: "New weekend" }).click();
    await field(mechanic, "First day").fill(`${YEAR}-03-12`);
    await field(mechanic, "Venue").selectOption({ label: "A new venue" });
    await field(mechanic, "Name of the venue").fill("Heron Bay");
    await enter(mechanic.page, /^Altitude of the venue/, 40);
    await save();
    await mechanic.sees("Weekend, name: a name has 1 to 80 characters in one line.");
    await field(mechanic, "Name").fill("Heron Bay Cup");
    await field(mechanic, "Practice 1: Start").fill("");
    await save();
    await mechanic.sees("Practice 1, start: a time is written like 10:30.");
    await field(mechanic, "Practice 1: Start").fill("09:45");
    expect(await field(mechanic, "Race: Day").inputValue()).toBe(`${YEAR}-03-14`);
    expect(await field(mechanic, "Name of the venue").inputValue()).toBe("Heron Bay");
    await save();
    await mechanic.sees("Saved: Heron Bay Cup is a new weekend. Next: course and conditions.");
    expect(new URL(mechanic.page.url()).searchParams.get("weekend")).toBe(ID);
    await mechanic.page.getByRole("option", { name: /^Practice 1, .*09:45$/ }).waitFor({ state: "attached" });
    await mechanic.syncSays("Offline since");
  });

  test("reaches the rider's phone once the laptop is reached, and a run in it reaches the mechanic", async () => {
    const { page } = rider;
    mechanic.network.restore();
    await mechanic.syncSays("On the server");
    await page.getByRole("option", { name: "Heron Bay Cup" }).waitFor({ state: "attached" });
    await weekendOf(rider).selectOption({ label: "Heron Bay Cup" });
    await rider.tap(page.getByRole("link", { name: "Log a run" }));
    await page.getByRole("heading", { name: "Front" }).waitFor();
    expect(await sessionsOf(rider)).toEqual(["Practice 1", "Practice 2", "Qualifying", "Race"]);
    expect(await weekendOf(rider).inputValue()).toBe(ID);
    await rider.tap(page.getByText("fair", { exact: true }));
    await rider.tap(page.getByRole("button", { name: "Save the run" }));
    await rider.sees(/^Saved at .*run in Practice 1/);
    await mechanic.sees("Feedback to decide on");
  });

  test("changes on both devices: a session that is not held goes away, with the reason, and its runs stay", async () => {
    await mechanic.page.getByRole("link", { name: "Change this weekend" }).click();
    await field(mechanic, "Practice 2: Name").waitFor();
    await mechanic.page.getByRole("button", { name: "Remove Practice 1" }).click();
    await mechanic.sees("1 run is logged in it. It stays on record.");
    await mechanic.page.getByRole("button", { name: "Keep Practice 1" }).click();
    await mechanic.page.getByRole("button", { name: "Remove Practice 2" }).click();
    await field(mechanic, "Practice 2: Why it is removed").fill("Storm");
    await field(mechanic, "Race: Start").fill("14:15");
    await save();
    await mechanic.sees("Saved: Heron Bay Cup.");
    await rider.page
      .getByRole("group", { name: "Heron Bay Cup" })
      .getByText("Practice 2")
      .waitFor({ state: "detached" });
    expect(await sessionsOf(rider)).toEqual(["Practice 1", "Qualifying", "Race"]);
    await mechanic.syncSays("On the server");
  });

  test("is there again after a reload, with its run", async () => {
    await mechanic.page.reload();
    await mechanic.sees("Feedback to decide on");
    expect(await weekendOf(mechanic).inputValue()).toBe(ID);
    await mechanic.page.getByRole("option", { name: /^Race, .*14:15$/ }).waitFor({ state: "attached" });
  });
});

test("the rider's mass is changed in the pit, and the setup of a heavier rider is corrected for it", async () => {
  const { page } = mechanic;
  await page.goto(`${mechanic.network.origin}/pit/course?weekend=${ID}`);
  await enter(page, /^Steep/, 1);
  for (const session of ["Practice 1", "Qualifying", "Race"]) {
    await enter(page, `${session}: Air at the session (°C)`, 20);
    await page
      .locator("section")
      .filter({ has: page.getByRole("heading", { name: session }) })
      .last()
      .getByText("dry", { exact: true })
      .click();
  }
  await save();
  await page.getByRole("link", { name: /Rowan Alder/ }).click();
  await page.getByText(/^Rider: 72 kg, front share 0.41/).click();
  await enter(page, /^Mass with kit/, 84);
  await page.getByRole("button", { name: "Save the rider" }).click();
  await mechanic.sees("Saved: Rowan Alder, 84 kg, front share 0.41");
  await mechanic.sees("Rider: 84 kg, front share 0.41");
  await page
    .getByText(/Rider at 84 kg, baseline at .*: keeps the sag\./)
    .first()
    .waitFor({ state: "attached" });
});
