/** `npm run bench -- <name>`: measures and prints; ends with 1 when a bound is missed. */
import { benchAdvice } from "./advice.ts";
import { benchClient } from "./client.ts";
import { benchSync } from "./sync.ts";

const benchmarks: Readonly<Record<string, () => boolean | Promise<boolean>>> = {
  advice: benchAdvice,
  client: benchClient,
  sync: benchSync,
};

const [name = ""] = process.argv.slice(2);
const benchmark = benchmarks[name];
if (!benchmark) {
  process.stderr.write(`There is no benchmark "${name}"; there are: ${Object.keys(benchmarks).join(", ")}.\n`);
  process.exitCode = 2;
} else if (!(await benchmark())) {
  process.exitCode = 1;
}
