/** Builds the client when it was never built or when one of its sources has changed since. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const SOURCES = ["client", "core", "package.json", "package-lock.json", "vite.config.ts"];

/** @param {string} root the folder of package.json */
export function buildClient(root) {
  const built = join(root, "client", "dist", ".built-from");
  const sources = fingerprint(root);
  if (existsSync(built) && readFileSync(built, "utf8") === sources) return;
  process.stdout.write("Building the client…\n");
  const vite = join(root, "node_modules", "vite", "bin", "vite.js");
  const done = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
  });
  if (done.status !== 0) {
    process.stderr.write("The client could not be built; see the lines above.\n");
    process.exit(1);
  }
  writeFileSync(built, sources);
}

/** Names, sizes and contents: a check-out changes times, and only contents matter. */
function fingerprint(root) {
  const hash = createHash("sha256");
  const visit = (path) => {
    const full = join(root, path);
    if (!statSync(full).isDirectory()) {
      hash.update(`${path}\0`).update(readFileSync(full)).update("\0");
      return;
    }
    for (const name of readdirSync(full).sort()) if (name !== "dist") visit(`${path}/${name}`);
  };
  for (const source of SOURCES) visit(source);
  return hash.digest("hex");
}
