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
  const child = spawn(process.execPath, ["--import", "tsx", "sync-server/main.ts", ...options], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  onTestFinished(() => {
    child.kill("SIGKILL");
  });
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
