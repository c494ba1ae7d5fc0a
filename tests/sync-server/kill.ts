/** `npm run kill -- --rounds 10000`: kills a real server under load again and again, and looks for what it promised. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { bundleServer } from "./bundled-server.ts";
import { type KillReport, killAgainAndAgain } from "./kill-rounds.ts";

const { values } = parseArgs({
  options: {
    rounds: { type: "string", default: "1000" },
    seed: { type: "string", default: "1" },
    lanes: { type: "string", default: "2" },
  },
});
const [rounds, seed, lanes] = [Number(values.rounds), Number(values.seed), Number(values.lanes)];
if (![rounds, seed, lanes].every(Number.isSafeInteger) || rounds < 1 || seed < 0 || lanes < 1 || lanes > 16) {
  process.stderr.write("--rounds (1 or more), --seed (0 or more) and --lanes (1 to 16) are whole numbers.\n");
  process.exit(2);
}
const { script, remove } = await bundleServer();
const folder = mkdtempSync(join(tmpdir(), "pitslate-kill-"));
const begun = performance.now();
const interruption = new AbortController();
for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => interruption.abort());
let isSound = false;
try {
  const program = [script];
  const { signal } = interruption;
  const report = await killAgainAndAgain({ program, folder, rounds, seed, lanes, progress, signal });
  isSound = report.broken.length === 0;
  process.stdout.write(`\n${summaryOf(report)}`);
  if (!isSound) process.exitCode = 1;
} finally {
  remove();
  if (isSound) rmSync(folder, { recursive: true, force: true });
  else process.stdout.write(`The logs are kept in ${folder}.\n`);
}

function progress(done: number): void {
  if (done % 10 !== 0 && done !== rounds) return;
  const bar = "#".repeat(Math.floor((done / rounds) * 40)).padEnd(40, ".");
  const seconds = (performance.now() - begun) / 1000;
  const left = Math.round((seconds / done) * (rounds - done));
  process.stdout.write(`\r[${bar}] ${done} of ${rounds} kills, about ${left} s left  `);
}

function summaryOf({ rounds: done, promised, snapshots, amidSnapshot, broken }: KillReport): string {
  const seconds = (performance.now() - begun) / 1000;
  const lines = [
    `Seed ${seed}: ${done} kills${done < rounds ? ` of ${rounds}, then interrupted` : ""}, ${amidSnapshot} of them in the middle of a snapshot.`,
    `${promised} records promised, ${broken.length} faults; ${snapshots} documents with a snapshot.`,
    `${Math.round(seconds)} s, ${Math.round((seconds * 1000) / Math.max(1, done))} ms a kill.`,
    ...broken.slice(0, 20),
  ];
  return `${lines.join("\n")}\n`;
}
