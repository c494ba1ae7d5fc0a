/** A weekend's presses on a slow device, and how soon each of them is painted. */
import type { Locator, Page } from "playwright-core";
import { line, percentile } from "../measure.ts";
import { notesOf, painted } from "./page-watch.ts";
import type { SlowDevice } from "./slow-device.ts";

const MOST_MS = 100;
const JUDGED_PART = 0.95;
/** How many of the slowest presses are named. */
const NAMED = 6;

/** Riders whose bikes the mechanic prepares, by name. */
const prepared = ["Rowan Alder", "Bo Linden", "Mika Hazel", "Juno Sorrel"] as const;
const RUNS = 3;

/** Prints the report; true when the bound is kept. The mechanic ends on the first rider's bench. */
export async function benchWeekend(
  mechanic: SlowDevice,
  rider: SlowDevice,
  write: (text: string) => void,
): Promise<boolean> {
  await enterCourse(mechanic.page);
  for (const name of prepared) await prepareBike(mechanic.page, name);
  await press(mechanic.page, mechanic.page.getByRole("link", { name: /Rowan Alder/ }));
  await rider.page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  for (let run = 1; run <= RUNS; run += 1) {
    await logRun(rider.page);
    await mechanic.page.getByText(`Feedback (${run})`).first().waitFor({ state: "attached" });
    await answerRun(mechanic.page);
  }
  const pages = [await notesOf(mechanic.page), await notesOf(rider.page)];
  const noted = pages.flatMap(({ interactions }) => interactions);
  const count = pages.reduce((sum, { interactionCount }) => sum + interactionCount, 0);
  const unnoted = Array.from({ length: Math.max(0, count - noted.length) }, () => 0);
  const all = [...noted.map(({ duration }) => duration), ...unnoted];
  const judged = percentile(all, JUDGED_PART);
  const kept = judged < MOST_MS;
  write(`\nA scripted weekend: ${count} presses and keys of a mechanic and a rider\n`);
  write(line("interaction to next paint, median", `${percentile(all, 0.5)} ms`));
  write(line("  at the 95th percentile", `${judged} ms`, { text: `below ${MOST_MS} ms`, kept }));
  const slowest = [...noted].sort((a, b) => b.duration - a.duration).slice(0, NAMED);
  for (const { duration, waited, handled, target } of slowest) {
    write(line(`  ${target}`, `${duration} ms: waited ${Math.round(waited)}, handled ${Math.round(handled)}`));
  }
  return kept;
}

/** As a person does: the next press comes after this one is painted. */
async function press(page: Page, control: Locator): Promise<void> {
  await control.first().click();
  await painted(page);
}

/** Typed key by key. */
async function type(page: Page, label: string | RegExp, value: number): Promise<void> {
  const field = page.getByRole("spinbutton", { name: label });
  await field.click();
  await field.press("ControlOrMeta+a");
  await field.pressSequentially(String(value));
  await field.press("Tab");
  await painted(page);
}

async function enterCourse(page: Page): Promise<void> {
  await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await press(page, page.getByRole("link", { name: "Enter course and conditions" }));
  await type(page, /^Steep/, 0.6);
  await type(page, /^Jumpy/, 0.3);
  await type(page, /^Wet/, 0.1);
  await type(page, /^Altitude/, 1950);
  for (const session of ["Practice 1", "Practice 2", "Qualifying", "Race"]) {
    await type(page, `${session}: Air at the session (°C)`, 22);
    await type(page, `${session}: Air at the bench (°C)`, 12);
    const group = page.locator("section, fieldset").filter({ has: page.getByText(session, { exact: true }) });
    await press(page, group.getByText("dry dust", { exact: true }).last());
  }
  await press(page, page.getByRole("button", { name: "Save" }));
  await page.getByText("steep 0.6, jumpy 0.3, wet 0.1").first().waitFor();
}

/** From the board and back to it: the reasons of a value, one step ticked off, then all of it. */
async function prepareBike(page: Page, name: string): Promise<void> {
  await press(page, page.getByRole("link", { name: new RegExp(name) }));
  await press(page, page.getByText(/^Why: \d+ reasons/));
  await press(page, page.getByRole("button", { name: /: on the bike$/ }));
  await press(page, page.getByRole("button", { name: "All of it is on the bike" }));
  await page.getByText("Nothing is left to set by the sheet.").first().waitFor();
  await press(page, page.getByRole("link", { name: "Back to the team" }));
}

async function logRun(page: Page): Promise<void> {
  const end = (heading: string) =>
    page.locator("section").filter({ has: page.getByRole("heading", { name: heading }) });
  await press(page, page.getByRole("link", { name: "Log a run" }));
  await press(page, end("Front").last().getByText("never reached", { exact: true }));
  await press(page, end("Front").last().getByText("too slow", { exact: true }));
  await press(page, page.getByRole("button", { name: "Front: the rest was good" }));
  await press(page, end("Rear").last().getByText("dives", { exact: true }));
  await press(page, page.getByRole("button", { name: "Rear: the rest was good" }));
  await press(page, page.getByText("fair", { exact: true }));
  await press(page, page.getByRole("button", { name: "Save the run" }));
  await page
    .getByText(/^Saved at .*run in Practice 1/)
    .first()
    .waitFor();
}

/** Takes the first adjustment, takes it back, and sets one adjuster by hand. */
async function answerRun(page: Page): Promise<void> {
  await press(page, page.getByRole("button", { name: "Put it on the bike" }));
  await press(page, page.getByRole("button", { name: /^Undo: / }));
  const row = page
    .locator("li.pit-row")
    .filter({ has: page.getByRole("heading", { name: "Rebound" }) })
    .first();
  const setAnother = row.getByRole("button", { name: "Set another value" });
  if (!(await setAnother.isVisible())) await press(page, row.locator("summary"));
  await press(page, setAnother);
  const dialog = page.getByRole("dialog");
  await press(page, dialog.getByRole("button", { name: /Down by one step/ }));
  await press(page, dialog.getByRole("button", { name: "It is on the bike" }));
  await page
    .getByText(/^Set by hand: Fork rebound/)
    .first()
    .waitFor();
}
