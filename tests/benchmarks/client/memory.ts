/** What a page keeps over a race day on which the riders' runs come in from another device. */
import { runKind } from "#core/weekend/record-kinds.ts";
import type { Run } from "#core/weekend/run.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { line } from "../measure.ts";
import { openBenchDevice } from "../sync/bench-device.ts";
import { demoRiders } from "./history-laptop.ts";
import { painted } from "./page-watch.ts";
import type { SlowDevice } from "./slow-device.ts";

/** Entries between two looks at the heap. */
const ENTRIES = 100;
/** After so many entries the mechanic opens the bench of a rider and goes back. */
const ENTRIES_PER_VISIT = 10;
/** kB that an entry may add: its record as objects in Yjs, ledger and digest. A screen that is kept by mistake takes far more. */
const MOST_PER_ENTRY_KB = 10;
const PATIENCE_MS = 60_000;

/** Prints the report; true when what is kept grows by the entries alone. */
export async function benchMemory(mechanic: SlowDevice, port: number, write: (text: string) => void): Promise<boolean> {
  const { page } = mechanic;
  const { team } = openBenchDevice({ id: "race-day", port, clock: Date.now(), chance: createChance(3) });
  try {
    team.showRiders("all");
    await until(() => team.isLoaded() && team.status().state === "on the server", team.onStatus);
    const writer = team.writerFor("larch");
    let written = 0;
    const logRun = (): void => {
      const rider = demoRiders[written % demoRiders.length] ?? "alder";
      written += 1;
      const result = writer.set(runKind, `${rider}/race-day-${written}`, runOf(rider));
      if (!result.ok) throw new Error(`A run of the race day was refused: ${result.problem.type}.`);
    };
    const raceHours = async (): Promise<void> => {
      for (let entry = 1; entry <= ENTRIES; entry += 1) {
        logRun();
        if (entry % ENTRIES_PER_VISIT !== 0) continue;
        await until(() => team.status().state === "on the server", team.onStatus);
        await page.getByRole("link", { name: /Bo Linden/ }).click();
        const runs = Math.floor((written - 2) / demoRiders.length) + 1;
        await page.getByText(`Feedback (${runs})`).first().waitFor({ state: "attached" });
        await page.getByRole("link", { name: "Back to the team" }).click();
        await painted(page);
      }
    };
    await page.getByRole("link", { name: "Back to the team" }).click();
    const heaps = [await heapAside(mechanic)];
    for (const _ of [1, 2]) {
      await raceHours();
      heaps.push(await heapAside(mechanic));
    }
    const [atStart = 0, after = 0, atEnd = 0] = heaps;
    const perEntry = (atEnd - after) / ENTRIES / 1000;
    const kept = perEntry <= MOST_PER_ENTRY_KB;
    write(`\nA race day with ${2 * ENTRIES} runs from another device\n`);
    const megabytes = heaps.map((heap) => (heap / 1e6).toFixed(2)).join(", ");
    write(line(`heap at the start, after ${ENTRIES}, after ${2 * ENTRIES}`, `${megabytes} MB`));
    write(line("  of the first half, an entry", `${((after - atStart) / ENTRIES / 1000).toFixed(1)} kB`));
    const text = `at most ${MOST_PER_ENTRY_KB} kB, the entries alone`;
    write(line("  of the second half, an entry", `${perEntry.toFixed(1)} kB`, { text, kept }));
    return kept;
  } finally {
    team.close();
  }
}

/** Bytes of JavaScript in use after two collections: the first may only set free what the second takes. */
async function heapOf({ page, devTools }: SlowDevice): Promise<number> {
  await painted(page);
  await devTools.send("HeapProfiler.collectGarbage");
  await devTools.send("HeapProfiler.collectGarbage");
  const { usedSize } = await devTools.send("Runtime.getHeapUsage");
  return usedSize;
}

function runOf(rider: string): Run {
  return {
    bike: `${rider}-bike`,
    weekend: "kestrel-ridge-2026",
    session: "practice-1",
    timeSeconds: 201.5,
    front: { start: "good", middle: "good", end: "good", grip: "good", returnSpeed: "good" },
    rear: { start: "good", middle: "good", end: "good", grip: "good", returnSpeed: "good" },
    confidence: "high",
  };
}

function until(condition: () => boolean, onChange: (listener: () => void) => () => void): Promise<void> {
  return new Promise((resolve, reject) => {
    if (condition()) return resolve();
    const impatience = setTimeout(() => {
      stop();
      reject(new Error("The device of the race day has waited in vain for the server."));
    }, PATIENCE_MS);
    const stop = onChange(() => {
      if (!condition()) return;
      clearTimeout(impatience);
      stop();
      resolve();
    });
  });
}

/** On a screen that shows none of it: on the board each run that nobody has answered stands as a job, as it should. */
async function heapAside(mechanic: SlowDevice): Promise<number> {
  const { page } = mechanic;
  await page.getByRole("link", { name: "The rules of advice" }).click();
  await page.getByRole("heading", { level: 1, name: "The rules of advice" }).waitFor();
  const heap = await heapOf(mechanic);
  await page.goBack();
  await page
    .getByRole("link", { name: /Bo Linden/ })
    .first()
    .waitFor();
  return heap;
}
