/** Opening the app on a long history: time and memory beside a design with one document. */
import { execFile } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { line } from "../measure.ts";
import { historySize } from "./long-history.ts";

export type OpenedHistory = {
  /** From the start of opening until everything that is shown can be read. */
  readonly ms: number;
  /** Processor time of that, of all threads: the same on a busy machine. */
  readonly cpuMs: number;
  /** Records in the ledger, and those of them that it cannot read. */
  readonly records: number;
  readonly unreadable: number;
  readonly documents: number;
  /** What opening has added to the heap, after a collection. */
  readonly heapMegabytes: number;
  /** Most memory that the process has had, all of it. */
  readonly peakMegabytes: number;
};

const run = promisify(execFile);
const PROCESS = fileURLToPath(new URL("open-history-process.ts", import.meta.url));
const PATIENCE_MS = 180_000;
/** Seasons that a device keeps open at the end of the last one: that one and the one before it. */
const OPEN_SEASONS = 2;

/** Prints the report; true when only what is open was loaded. */
export async function benchOpenHistory(folder: string, write: (text: string) => void): Promise<boolean> {
  const { riders, seasons, runsPerSeason, changesPerSeason } = historySize;
  const perSeason = runsPerSeason + changesPerSeason;
  const teamRecords = riders + 10 * seasons.length;
  write(
    `\nOpening ${seasons.length} seasons of ${riders} riders: ${riders * seasons.length * runsPerSeason} runs, ` +
      `${riders * seasons.length * changesPerSeason} changes\n`,
  );
  const history = join(folder, "history");
  mkdirSync(history);
  await start("write", history);
  const expected = {
    rider: teamRecords + OPEN_SEASONS * perSeason,
    mechanic: teamRecords + OPEN_SEASONS * perSeason * riders,
    "one document": teamRecords + seasons.length * perSeason * riders,
  } as const;
  let allKept = true;
  for (const way of ["rider", "mechanic", "one document"] as const) {
    const opened = JSON.parse(await start(way, history)) as OpenedHistory;
    const kept = opened.records === expected[way] && opened.unreadable === 0;
    allKept &&= kept;
    const name = way === "one document" ? "everything in one document" : `a ${way}'s device`;
    write(line(`${name}: until it can be used`, `${seconds(opened.ms)}, ${seconds(opened.cpuMs)} of processors`));
    write(
      line(
        "  memory kept by it, and most of the process",
        `${opened.heapMegabytes.toFixed(0)} MB, ${opened.peakMegabytes.toFixed(0)} MB`,
      ),
    );
    write(
      line("  records and documents loaded", `${opened.records} of ${expected["one document"]}, ${opened.documents}`, {
        text: `exactly ${expected[way]} readable ones`,
        kept,
      }),
    );
  }
  return allKept;
}

async function start(way: string, folder: string): Promise<string> {
  const options = ["--expose-gc", "--max-old-space-size=8192", "--import", "tsx", PROCESS, way, folder];
  const { stdout } = await run(process.execPath, options, { timeout: PATIENCE_MS, killSignal: "SIGKILL" });
  return stdout;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(2)} s`;
}
