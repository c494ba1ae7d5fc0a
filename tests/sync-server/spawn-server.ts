import { type ChildProcess, spawn } from "node:child_process";

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
