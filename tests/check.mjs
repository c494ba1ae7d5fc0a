/** `npm run check`: format, lint, types, layers and dead code, without the tests. One word says yes or no. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { installMissing } from "#server/launch/install-missing.mjs";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "..");
installMissing(root);
const { checks } = JSON.parse(readFileSync(join(root, "tests", "checks.json"), "utf8"));
const layers = ["vitest/vitest.mjs", "run", "tests/layers.test.ts", "tests/file-size.test.ts"];
let failed = 0;
for (const [name, [program = "", ...options]] of [...Object.entries(checks), ["layers and sizes", layers]]) {
  const { status } = spawnSync(process.execPath, [join(root, "node_modules", program), ...options], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
  });
  if (status === 0) continue;
  failed += 1;
  process.stdout.write(`The check "${name}" failed.\n`);
}
process.stdout.write(failed === 0 ? "All checks passed.\n" : `${failed} checks failed.\n`);
process.exit(failed === 0 ? 0 : 1);
