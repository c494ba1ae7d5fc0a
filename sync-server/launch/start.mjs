/**
 * `npm start`: installs what is missing, builds, loads the demo team when the
 * data folder is empty, and starts the server. Options go on to the server.
 * A server with an upstream gets its team from there, and no demo to pass on.
 */
import { spawn, spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { buildClient } from "./build-client.mjs";
import { installMissing } from "./install-missing.mjs";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "..", "..");
const options = process.argv.slice(2);
const asksForHelp = options.includes("--help");
const hasUpstream = options.some((option) => option === "--upstream" || option.startsWith("--upstream="));

installMissing(root);
if (!asksForHelp) {
  buildClient(root);
  if (!hasUpstream) loadDemoInto(dataFolder());
}

const server = spawn(process.execPath, ["--import", "tsx", join(root, "sync-server", "main.ts"), ...options], {
  cwd: root,
  stdio: "inherit",
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
server.on("exit", (code, signal) => process.exit(signal ? 1 : (code ?? 1)));

function loadDemoInto(folder) {
  if (existsSync(folder) && readdirSync(folder).length > 0) return;
  const done = spawnSync(
    process.execPath,
    ["--import", "tsx", join(root, "scenarios", "load-team.ts"), "--data", folder, "--first-day", tomorrow()],
    { cwd: root, stdio: ["ignore", "inherit", "inherit"] },
  );
  if (done.status !== 0) process.exit(done.status ?? 1);
}

/** The demo's first weekend begins then, whenever somebody tries it: a countdown to sessions of long ago says nothing. */
function tomorrow() {
  const day = new Date();
  day.setDate(day.getDate() + 1);
  const two = (number) => String(number).padStart(2, "0");
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}

/** The server's own default is the same: `data` beside package.json. */
function dataFolder() {
  const at = options.findIndex((option) => option === "--data" || option.startsWith("--data="));
  if (at < 0) return join(root, "data");
  const option = options[at] ?? "";
  const value = option.includes("=") ? option.slice(option.indexOf("=") + 1) : options[at + 1];
  return resolve(root, value ?? "data");
}
