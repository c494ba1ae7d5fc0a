import { onTestFinished } from "vitest";
import { type Finished, type ServerProcess, spawnServer } from "./spawn-server.ts";

/** Starts the composition root as a process of its own; it ends with the test at the latest. */
export function startProcess(...options: readonly string[]): ServerProcess {
  const server = spawnServer(["--import", "tsx", "sync-server/main.ts", ...options]);
  onTestFinished(() => {
    server.child.kill("SIGKILL");
  });
  return server;
}

/** Runs a script of the server to its end. */
export function runScript(script: string, ...options: readonly string[]): Promise<Finished> {
  const run = spawnServer(["--import", "tsx", script, ...options]);
  onTestFinished(() => {
    run.child.kill("SIGKILL");
  });
  return run.finished;
}
