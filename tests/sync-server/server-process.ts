import { type ChildProcess, spawn } from "node:child_process";
import { onTestFinished } from "vitest";

export type Finished = {
  readonly code: number | null;
  readonly signal: string | null;
  readonly output: string;
  readonly errors: string;
};

export type ServerProcess = {
  readonly child: ChildProcess;
  /** Host and port, once it listens. Rejects when the process ends before. */
  readonly listening: Promise<string>;
  readonly finished: Promise<Finished>;
};

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

/** Starts Node with these arguments; it is the caller's to end. */
export function spawnServer(args: readonly string[]): ServerProcess {
  const child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "pipe"] });
  let output = "";
  let errors = "";
  const finished = new Promise<Finished>((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code, signal) => resolve({ code, signal, output, errors }));
  });
  child.stderr.on("data", (text: Buffer) => {
    errors += text;
  });
  const listening = new Promise<string>((resolve, reject) => {
    child.stdout.on("data", (text: Buffer) => {
      output += text;
      const address = /^Pitslate is at http:\/\/(\S+)\n/.exec(output)?.[1];
      if (address !== undefined) resolve(address);
    });
    finished.then(({ errors: why }) => reject(new Error(`The server ended before it listened: ${why}`)), reject);
  });
  listening.catch(() => {});
  return { child, listening, finished };
}
