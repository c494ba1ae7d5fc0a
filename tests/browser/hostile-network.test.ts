/**
 * Two people write while the network between them and the pit laptop does its
 * worst, each on a proxy of his own: the status line never says more than is
 * true, and once the network is back nothing is lost.
 */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { createChance } from "#scenarios/player/chance.ts";
import { recordsOnDevice } from "./device-disk.ts";
import type { NetworkMode } from "./network-mode.ts";
import { enter, type Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";
import { type StatusWatch, watchStatus } from "./status-watch.ts";

const SEED = Number(process.env.PITSLATE_SEED ?? 20260612);
const DOCUMENTS = ["team", "rider/alder/2026"];
const ROUNDS = 10;

const chance = createChance(SEED);
const modes = {
  pass: { kind: "pass" },
  cut: { kind: "cut" },
  delay: { kind: "delay", longestMs: 400 },
  "half-open": { kind: "half-open" },
  truncate: { kind: "truncate", mostBytes: 300 },
} as const satisfies Record<NetworkMode["kind"], NetworkMode>;

let pits: Pits;
let mechanic: Person;
let rider: Person;
let manager: Person;
let watches: readonly StatusWatch[] = [];
let runs = 0;
let changes = 0;

beforeAll(async () => {
  process.stdout.write(`Seed of the hostile network: ${SEED}\n`);
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", { ...screens.laptop, chance: createChance(SEED + 1) });
  rider = await pits.open("Rowan Alder", { ...screens.phone, chance: createChance(SEED + 2) });
  manager = await pits.open("Lou Heather", screens.tablet);
  await enterCourse();
  await mechanic.page.getByRole("link", { name: /Rowan Alder/ }).click();
  await rider.page.goto(`${rider.network.origin}/trackside?weekend=kestrel-ridge-2026`);
  for (const person of [mechanic, rider, manager]) await person.syncSays("On the server");
  watches = await Promise.all([mechanic, rider].map(({ page }) => watchStatus(page, pits.laptop.log, DOCUMENTS)));
});

afterAll(async () => {
  await Promise.all(watches.map((watch) => watch.settle()));
  await pits?.close();
});

function turn(...kinds: readonly NetworkMode["kind"][]): void {
  for (const [index, person] of [mechanic, rider].entries()) person.network.turn(modes[kinds[index] ?? "pass"]);
}

/** Without a course nobody has a setup to change. */
async function enterCourse(): Promise<void> {
  const { page } = mechanic;
  await page.goto(`${mechanic.network.origin}/pit/course?weekend=kestrel-ridge-2026`);
  await enter(page, /^Steep/, 1);
  await enter(page, /^Altitude/, 1950);
  await enter(page, "Practice 1: Air at the session (°C)", 20);
  await page
    .locator("section")
    .filter({ has: page.getByRole("heading", { name: "Practice 1" }) })
    .last()
    .getByText("dry", { exact: true })
    .click();
  await page.getByRole("button", { name: "The same for all sessions" }).click();
  await page.getByRole("button", { name: "Save" }).click();
  await mechanic.sees("steep 1");
}

/**
 * The mechanic sets the rider's fork rebound by hand, one step down and up in turn. By keys, as in {@link logRun}: the
 * page moves under a finger at the moment at which the status line grows by a button.
 */
async function changeByHand(): Promise<void> {
  const { page } = mechanic;
  const row = page
    .locator("li.pit-row")
    .filter({ has: page.getByRole("heading", { name: "Rebound" }) })
    .first();
  const another = row.getByRole("button", { name: "Set another value" });
  if (!(await another.isVisible())) await row.locator("summary").press("Enter");
  await another.press("Enter");
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: changes % 2 === 0 ? /Down by one step/ : /Up by one step/ }).press("Enter");
  await dialog.getByRole("button", { name: "It is on the bike" }).press("Enter");
  await dialog.waitFor({ state: "detached" });
  changes += 1;
}

async function logRun(): Promise<void> {
  const { page } = rider;
  await page.getByRole("link", { name: "Log a run" }).press("Enter");
  await page.getByRole("radio", { name: "fair" }).press(" ");
  await page.getByRole("button", { name: "Save the run" }).press("Enter");
  await rider.sees(/^Saved at .*run in Practice 1/);
  runs += 1;
}

/** Both have written; returns how many sentences each had said before. */
async function bothWrite(): Promise<readonly number[]> {
  const before = watches.map((watch) => watch.said().length);
  await changeByHand();
  await logRun();
  return before;
}

async function repaired(): Promise<void> {
  turn("pass", "pass");
  await mechanic.syncSays("On the server");
  await rider.syncSays("On the server");
  await mechanic.has(`Feedback (${runs})`);
  await expectTheTruth();
}

async function expectTheTruth(): Promise<void> {
  for (const watch of watches) {
    await watch.settle();
    expect(watch.lies()).toEqual([]);
  }
}

describe.sequential("a hostile network", () => {
  test("that delays: what the status line calls on the server is in the log on its disk", async () => {
    turn("delay", "delay");
    await bothWrite();
    for (const person of [mechanic, rider]) await person.syncSays("On the server");
    await repaired();
  }, 60_000);

  test("that is cut: both are offline, and say what is on the device alone", async () => {
    turn("cut", "cut");
    for (const person of [mechanic, rider]) await person.syncSays("Offline since");
    await bothWrite();
    for (const { page } of [mechanic, rider]) await page.getByText(/\d entr(y|ies) on this device only/).waitFor();
    await repaired();
  }, 60_000);

  test("that is half open: nothing is called on the server, and it is noticed long before 30 s", async () => {
    turn("half-open", "half-open");
    const started = Date.now();
    const before = await bothWrite();
    const seconds = await Promise.all(
      [mechanic, rider].map(async ({ page }) => {
        await page.getByText(/^Offline since .* entr(y|ies) on this device only/).waitFor({ timeout: 15_000 });
        return (Date.now() - started) / 1000;
      }),
    );
    process.stdout.write(`Half-open noticed after ${seconds.map((value) => value.toFixed(1)).join(" and ")} s.\n`);
    for (const [index, watch] of watches.entries()) {
      const meanwhile = watch.said().slice(before[index]);
      expect(meanwhile.filter((sentence) => sentence.startsWith("On the server"))).toEqual([]);
    }
    await repaired();
  }, 60_000);

  test("that truncates: what is broken off is sent again, and arrives once the network is whole", async () => {
    turn("truncate", "truncate");
    const before = await bothWrite();
    await bothWrite();
    for (const [index, watch] of watches.entries()) {
      const broken = () =>
        watch
          .said()
          .slice(before[index])
          .some((sentence) => sentence.startsWith("Offline since"));
      await expect.poll(broken, { timeout: 20_000 }).toBe(true);
    }
    await repaired();
  }, 60_000);

  test("that changes for each of them on its own while both go on writing", async () => {
    const kinds = Object.keys(modes) as readonly NetworkMode["kind"][];
    const draw = (): NetworkMode["kind"] => kinds[chance.below(kinds.length)] ?? "pass";
    for (let round = 0; round < ROUNDS; round += 1) {
      turn(draw(), draw());
      await bothWrite();
      await expectTheTruth();
    }
    await repaired();
  }, 60_000);

  test("leaves everybody with the same, on every disk, and nothing lost", async () => {
    expect(watches.every((watch) => watch.compared() > 5)).toBe(true);
    for (const document of DOCUMENTS) {
      const laptop = pits.laptop.log.records(document);
      for (const person of [mechanic, rider, manager]) {
        await person.syncSays("On the server");
        await expect.poll(() => recordsOnDevice(person.page, document), { timeout: 15_000 }).toEqual(laptop);
      }
    }
    const written = pits.laptop.log
      .records("rider/alder/2026")
      .map((record) => JSON.parse(record) as { subject: string; by: string });
    expect(written.filter(({ subject }) => subject.startsWith("run:"))).toHaveLength(runs);
    expect(written.filter(({ subject, by }) => subject.startsWith("setting:") && by === "larch")).toHaveLength(changes);
  }, 60_000);
});
