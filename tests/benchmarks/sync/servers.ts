/** The servers that are compared, each as a process of its own on loopback. */
import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { fileURLToPath } from "node:url";
import { spawnServer } from "#tests/sync-server/spawn-server.ts";

export type MeasuredServer = {
  /** Where a document's socket is opened: this and the document's name. */
  readonly url: string;
  /** Seconds of processor time that the process has used; undefined where the system does not tell. */
  cpuSeconds(): number | undefined;
  /** Ends the process and waits until it is gone. */
  stop(): Promise<void>;
};

const PATIENCE_MS = 20_000;

/** Ours, with its log in `folder`. @param script the server's program as one file of plain JavaScript */
export async function startOurs(script: string, folder: string): Promise<MeasuredServer> {
  const options = ["--port", "0", "--data", folder, "--client", folder, "--log-level", "error"];
  const { child, listening } = spawnServer([...profiling(), script, ...options]);
  return measured(child, `ws://${await listening}/sync/`);
}

/** The server of y-websocket 1.5, which keeps documents in memory; with a `folder` also in LevelDB there. */
export async function startYWebsocket(folder?: string): Promise<MeasuredServer> {
  const port = await freePort();
  const environment = { ...process.env, HOST: "127.0.0.1", PORT: String(port) };
  const child = spawn(process.execPath, [yWebsocketServer()], {
    stdio: ["ignore", "pipe", "inherit"],
    env: folder === undefined ? environment : { ...environment, YPERSISTENCE: folder },
  });
  await new Promise<void>((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", () => reject(new Error("The server of y-websocket ended before it listened.")));
    child.stdout.on("data", (text: Buffer) => {
      if (text.includes("running at")) resolve();
    });
  });
  return measured(child, `ws://127.0.0.1:${port}/`);
}

/** The package does not export its server; it lies beside its package.json. */
function yWebsocketServer(): string {
  return fileURLToPath(new URL("bin/server.js", import.meta.resolve("y-websocket-1/package.json")));
}

/** Whether this machine has LevelDB: it is an optional package, with a ready-made binary for most machines. */
export function hasLevelDb(): boolean {
  try {
    createRequire(createRequire(import.meta.url).resolve("y-leveldb"))("classic-level");
    return true;
  } catch {
    return false;
  }
}

function measured(child: ChildProcess, url: string): MeasuredServer {
  const end = (): void => void child.kill("SIGKILL");
  process.on("exit", end);
  const ended = new Promise<void>((resolve) => {
    child.on("exit", () => {
      process.off("exit", end);
      resolve();
    });
  });
  return {
    url,
    cpuSeconds: () => cpuSecondsOf(child.pid),
    stop: async () => {
      if (child.exitCode !== null || child.signalCode !== null) return;
      child.kill("SIGTERM");
      const impatience = setTimeout(() => child.kill("SIGKILL"), PATIENCE_MS);
      await ended;
      clearTimeout(impatience);
    },
  };
}

/** `PITSLATE_BENCH_PROFILE=<folder>` puts a profile of each of our servers there. */
function profiling(): readonly string[] {
  const folder = process.env.PITSLATE_BENCH_PROFILE;
  return folder === undefined ? [] : ["--cpu-prof", `--cpu-prof-dir=${folder}`];
}

/** Source: proc(5), /proc/<pid>/stat, fields 14 and 15 in ticks, of which Linux has 100 a second for programs. */
function cpuSecondsOf(pid: number | undefined): number | undefined {
  if (process.platform !== "linux" || pid === undefined) return undefined;
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8")
    .replace(/^.*\) /, "")
    .split(" ");
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() => {
        if (address === null || typeof address === "string") reject(new Error("There is no free port."));
        else resolve(address.port);
      });
    });
  });
}
