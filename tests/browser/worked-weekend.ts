/** A weekend with something on every screen: a setup at the bench, a run with advice, what a rider reported, a dispute. */
import { enterCourse } from "./enter-course.ts";
import type { Person } from "./person.ts";
import { screens as devices, openPits, type Pits } from "./pits.ts";

export interface WorkedWeekend {
  /** Of the pit laptop. */
  readonly port: number;
  readonly mechanic: Person;
  readonly rider: Person;
  readonly manager: Person;
  close(): Promise<void>;
}

/** Opens the devices of three people and works the weekend's first session; the caller closes it. */
export async function openWorkedWeekend(): Promise<WorkedWeekend> {
  const pits = await openPits();
  try {
    return await work(pits);
  } catch (error) {
    await pits.close();
    throw error;
  }
}

async function work(pits: Pits): Promise<WorkedWeekend> {
  const mechanic = await pits.open("Kim Larch", devices.laptop);
  const rider = await pits.open("Rowan Alder", devices.phone);
  const manager = await pits.open("Lou Heather", devices.tablet);
  await mechanic.page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await enterCourse(mechanic);
  await mechanic.page.getByRole("link", { name: /Rowan Alder/ }).click();
  await mechanic.page
    .getByRole("button", { name: /: on the bike$/ })
    .first()
    .click();
  await mechanic.sees(/^On the bike: Fork/);
  await mechanic.syncSays("On the server");
  await logRun(rider);
  await report(rider, "Fork", /^Rebound/);
  mechanic.network.cut();
  await mechanic.syncSays("Offline since");
  await report(rider, "Fork", /^Low-speed compression/);
  await setByHand(mechanic, "Low-speed compression");
  mechanic.network.restore();
  await mechanic.sees(/In dispute: Fork low-speed compression/);
  await manager.sees("Baselines by rider and course type");
  await manager.syncSays("On the server");
  return { port: pits.laptop.port, mechanic, rider, manager, close: () => pits.close() };
}

async function logRun(rider: Person): Promise<void> {
  const { page } = rider;
  await page.goto(`${rider.network.origin}/trackside?weekend=kestrel-ridge-2026`);
  await page.getByRole("link", { name: "Log a run" }).click();
  await page.getByText("never reached", { exact: true }).first().click();
  await page.getByRole("button", { name: "Rear: the rest was good" }).click();
  await page.getByText("fair", { exact: true }).click();
  await page.getByRole("button", { name: "Save the run" }).click();
  await rider.sees(/^Saved at .*run in Practice 1/);
}

async function report(rider: Person, part: string, adjuster: RegExp): Promise<void> {
  const { page } = rider;
  await page.getByRole("link", { name: "I changed something myself" }).click();
  await page
    .locator("section")
    .filter({ has: page.getByRole("heading", { name: part }) })
    .last()
    .getByRole("button", { name: adjuster })
    .click();
  await page.getByRole("button", { name: /Up by one step/ }).click();
  await page.getByRole("button", { name: "Save the change" }).click();
  await rider.sees(/Saved: .*reported by you/);
}

async function setByHand({ page }: Person, adjuster: string): Promise<void> {
  const row = page
    .locator("li.pit-row")
    .filter({ has: page.getByRole("heading", { name: adjuster, exact: true }) })
    .first();
  await row.locator("summary").click();
  await row.getByRole("button", { name: "Set another value" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: /Down by one step/ }).click();
  await dialog.getByRole("button", { name: "It is on the bike" }).click();
}
