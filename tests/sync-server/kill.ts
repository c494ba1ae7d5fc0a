/** `npm run kill -- --rounds 10000`: kills a real server under load again and again, and looks for what it promised. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { bundleServer } from "./bundled-server.ts";
import { killAgainAndAgain } from "./kill-rounds.ts";

const { values } = parseArgs({
  options: { rounds: { type: "string", default: "1000" }, seed: { type: "string", default: "1" } },
});
const rounds = Number(values.rounds);
const seed = Number(values.seed);
if (!Number.isInteger(rounds) || !Number.isInteger(seed) || rounds < 1 || seed < 0) {
  process.stderr.write("--rounds and --seed are whole numbers; --rounds is 1 or more.\n");
  process.exit(2);
}
const { script, remove } = await bundleServer();
const folder = mkdtempSync(join(tmpdir(), "pitslate-kill-"));
const begun = performance.now();
try {
  const { promised, broken } = await killAgainAndAgain({ program: [script], folder, rounds, seed, progress });
  const roundMs = Math.round((performance.now() - begun) / rounds);
  process.stdout.write(
    `\nSeed ${seed}: ${promised} records promised, ${broken.length} faults, ${roundMs} ms a round.\n`,
  );
  for (const sentence of broken.slice(0, 20)) process.stdout.write(`${sentence}\n`);
  if (broken.length > 0) process.exitCode = 1;
} finally {
  remove();
  rmSync(folder, { recursive: true, force: true });
}

function progress(done: number): void {
  if (done % 10 !== 0 && done !== rounds) return;
  const bar = "#".repeat(Math.round((done / rounds) * 40)).padEnd(40, ".");
  process.stdout.write(`\r[${bar}] ${done} of ${rounds} kills`);
}
