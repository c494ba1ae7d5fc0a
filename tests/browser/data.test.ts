/** Data out and in with real files: all of the team as JSON, a table for a spreadsheet, and run times. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;
let manager: Person;
const folder = mkdtempSync(join(tmpdir(), "pitslate-test-"));
const file = (name: string): string => join(folder, name);

beforeAll(async () => {
  pits = await openPits();
  manager = await pits.open("Lou Heather", screens.laptop);
});

afterAll(async () => {
  await pits?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function saved(button: string, name: string): Promise<string> {
  const [download] = await Promise.all([
    manager.page.waitForEvent("download"),
    manager.page.getByRole("button", { name: button }).click(),
  ]);
  await download.saveAs(file(name));
  return readFileSync(file(name), "utf8");
}

describe.sequential("data in and out", () => {
  test("the team's own JSON file changes nothing, and a changed one shows what would change before it is taken", async () => {
    const { page } = manager;
    await page.getByRole("link", { name: "Data in and out" }).click();
    const team = JSON.parse(await saved("Save all as JSON", "team.json"));
    expect(Object.keys(team.values.rider)).toHaveLength(8);
    await page.getByLabel("Take in a JSON file").setInputFiles(file("team.json"));
    await manager.sees("Nothing would change: all that can be taken in is so already.");
    team.values.rider.alder.mass.value = 73;
    team.values.rider.linden.mass.value = 500;
    writeFileSync(file("changed.json"), JSON.stringify(team));
    await page.getByLabel("Take in a JSON file").setInputFiles(file("changed.json"));
    await manager.sees(/^0 new, 1 change, \d+ the same, 1 refused$/);
    await manager.sees(/^rider "linden": .*500 kg is outside 30 kg to 160 kg/);
    await manager.sees('rider "alder": mass: 72 kg → 73 kg');
    await page.getByRole("button", { name: "Take the good one" }).click();
    await manager.sees("Taken in: 1 entry.");
    await page.getByRole("button", { name: "Undo the whole file" }).click();
    await manager.sees("Undone: 1 entry.");
  });

  test("a table with semicolons and decimal commas comes back as it went", async () => {
    const { page } = manager;
    await page.getByRole("combobox", { name: "Table" }).selectOption("baselines");
    await page.getByText("62,5; semicolons between cells").click();
    const text = await saved("Save as CSV", "baselines.csv");
    expect(text.startsWith("\uFEFFrider;course type;adjuster;value;unit\r\n")).toBe(true);
    await page.getByLabel("Take in a CSV file").setInputFiles(file("baselines.csv"));
    await manager.sees(/^0 new, 0 changes, \d+ the same, 0 refused$/);
  });

  test("run times make runs, and the same file once more has nothing new", async () => {
    const { page } = manager;
    writeFileSync(file("times.csv"), "Pos,Plate,Name,Time\r\n1,11,Rowan Alder,3:45.213\r\n2,99,Bo Other,3:46.0\r\n");
    const look = async (): Promise<void> => {
      await page.getByLabel("Choose a file with times").setInputFiles(file("times.csv"));
      await page.getByRole("button", { name: "Show what would change" }).click();
    };
    await look();
    await manager.sees("1 new, 0 changes, 0 the same, 1 refused");
    await manager.sees("Line 3: Nobody of the team fits: plate 99, Bo Other.");
    await page.getByRole("button", { name: "Take the good one" }).click();
    await manager.sees("Taken in: 1 entry.");
    await look();
    await manager.sees("0 new, 0 changes, 1 the same, 1 refused");
  });
});
