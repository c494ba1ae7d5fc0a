/** The pit laptop of a test: a real server process on a data folder of its own, with the demo team in it. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "#tests/source-files.ts";
import { type LaptopLog, openLaptopLog } from "./laptop-log.ts";

export interface PitLaptop {
  readonly port: number;
  /** What it has on its disk. */
  readonly log: LaptopLog;
  /** Stops the process and removes its data. */
  close(): Promise<void>;
}

/**
 * Starts the server as `npm start` does, once the client has been built.
 * @param addTo puts more into the data folder, which holds the demo team, before the server opens it
 */
export async function startPitLaptop(addTo?: (data: string) => void): Promise<PitLaptop> {
  const data = mkdtempSync(join(tmpdir(), "pitslate-data-"));
  const loaded = spawnSync(process.execPath, ["--import", "tsx", "scenarios/load-team.ts", "--data", data], {
    cwd: root,
  });
  if (loaded.status !== 0) throw new Error(`The demo team could not be loaded: ${loaded.stderr}`);
  addTo?.(data);
  const server = spawn(process.execPath, ["--import", "tsx", "sync-server/main.ts", "--port", "0", "--data", data], {
    cwd: root,
    stdio: ["ignore", "pipe", "pipe"],
  });
  const port = await listeningPort(server);
  const log = openLaptopLog(data);
  return {
    port,
    log,
    close: async () => {
      log.close();
      const gone = new Promise((resolve) => server.once("exit", resolve));
      if (server.exitCode === null) {
        server.kill("SIGTERM");
        await gone;
      }
      rmSync(data, { recursive: true, force: true });
    },
  };
}

/** The port in the one line that the server prints when it listens. */
function listeningPort(server: ChildProcess): Promise<number> {
  return new Promise((resolve, reject) => {
    let said = "";
    server.stdout?.on("data", (chunk: Buffer) => {
      said += chunk.toString();
      const port = /http:\/\/[^\s:]+:(\d+)/.exec(said)?.[1];
      if (port) resolve(Number(port));
    });
    server.stderr?.on("data", (chunk: Buffer) => {
      said += chunk.toString();
    });
    server.once("exit", (code) => reject(new Error(`The server ended with ${code} before it listened:\n${said}`)));
  });
}
