/** `npm run simulate -- --seeds 100000`: goes on as long as you like, and prints the smallest failing script. */
import { parseArgs } from "node:util";
import { describeFailure, HAPPENINGS, smallest } from "./smallest.ts";
import { simulate } from "./world.ts";

const { values } = parseArgs({
  options: { seeds: { type: "string", default: "10000" }, from: { type: "string", default: "1" } },
});
const seeds = Number(values.seeds);
const from = Number(values.from);
if (!Number.isInteger(seeds) || !Number.isInteger(from) || seeds < 1 || from < 0) {
  process.stderr.write("--seeds and --from are whole numbers; --seeds is 1 or more.\n");
  process.exit(2);
}
for (let seed = from; seed < from + seeds; seed += 1) {
  const result = await simulate({ seed, happenings: HAPPENINGS });
  if (result.fault) {
    process.stdout.write(`\n${describeFailure(await smallest(result))}\n`);
    process.exit(1);
  }
  const done = seed - from + 1;
  if (done % 20 === 0 || done === seeds) {
    const bar = "#".repeat(Math.round((done / seeds) * 40)).padEnd(40, ".");
    process.stdout.write(`\r[${bar}] ${done} of ${seeds} seeds, no fault`);
  }
}
process.stdout.write("\n");
