/**
 * `npm test`: installs what is missing, builds, and runs every check and every
 * test. Ends with the line `N passed, N failed` with the totals of all of them.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { buildClient } from "#server/launch/build-client.mjs";
import { installMissing } from "#server/launch/install-missing.mjs";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "..");
const reports = mkdtempSync(join(tmpdir(), "pitslate-tests-"));
const totals = { passed: 0, failed: 0 };

installMissing(root);
const { checks } = JSON.parse(readFileSync(join(root, "tests", "checks.json"), "utf8"));
for (const [name, command] of Object.entries(checks)) count(name, run(command));
buildClient(root);
runTests("unit", "vitest.config.ts");
runTests("browser", "tests/browser/vitest.config.ts");
rmSync(reports, { recursive: true, force: true });

process.stdout.write(`\n${totals.passed} passed, ${totals.failed} failed\n`);
process.exit(totals.failed === 0 ? 0 : 1);

function run(command) {
  process.stdout.write(`\n> ${command.join(" ")}\n`);
  const [program = "", ...options] = command;
  return spawnSync(process.execPath, [join(root, "node_modules", program), ...options], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
  }).status;
}

function count(name, status) {
  if (status === 0) totals.passed += 1;
  else {
    totals.failed += 1;
    process.stdout.write(`The check "${name}" failed.\n`);
  }
}

/** A run that dies without a report counts as one failure, and so does one that ran no test. */
function runTests(name, config) {
  const report = join(reports, `${name}.json`);
  const status = run([
    "vitest/vitest.mjs",
    "run",
    "--config",
    config,
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
  ]);
  const result = existsSync(report) ? JSON.parse(readFileSync(report, "utf8")) : undefined;
  const passed = result?.numPassedTests ?? 0;
  const failed = result?.numFailedTests ?? 0;
  totals.passed += passed;
  totals.failed += failed;
  // A suite that fails outside its tests (an import, a hook, an unhandled error) fails no test of its own.
  if (failed === 0 && (status !== 0 || passed === 0)) totals.failed += 1;
}
