/**
 * Installs the packages of the lock file when they are missing or when the lock
 * file has changed since. Plain JavaScript without imports from packages: it
 * runs on a machine that has nothing but Node.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const OLDEST_NODE = [20, 19];

/** @param {string} root the folder of package.json */
export function installMissing(root) {
  requireNode();
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  const stamp = join(root, "node_modules", ".pitslate-installed");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  process.stdout.write("Installing the packages of the lock file…\n");
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  const done = spawnSync(npm, ["ci", "--no-audit", "--no-fund"], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
    shell: process.platform === "win32",
  });
  if (done.status !== 0) {
    process.stderr.write("The packages could not be installed. Is the package registry in reach?\n");
    process.exit(1);
  }
  writeFileSync(stamp, lock);
}

function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = OLDEST_NODE;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return;
  process.stderr.write(`Node ${OLDEST_NODE.join(".")} or newer is needed; this is ${process.versions.node}.\n`);
  process.exit(1);
}
