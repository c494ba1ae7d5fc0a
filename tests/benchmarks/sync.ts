/** How the sync does beside others and beside its bounds: throughput, coming back, and opening a long history. */
import { rmSync } from "node:fs";
import { bundleServer } from "#tests/sync-server/bundled-server.ts";
import { describeMachine, makeDataFolder } from "./sync/machine.ts";
import { benchOpenHistory } from "./sync/open-history.ts";
import { benchReconnect } from "./sync/reconnect.ts";
import { benchThroughput } from "./sync/throughput.ts";

/** Prints the report; true when every bound is kept. */
export async function benchSync(): Promise<boolean> {
  const write = (text: string): void => void process.stdout.write(text);
  const folder = makeDataFolder();
  write(`${describeMachine()}\nData in ${folder.path}, file system ${folder.fileSystem}\n`);
  if (!folder.isOnDisk) {
    rmSync(folder.path, { recursive: true, force: true });
    write("That is memory, where a flush costs nothing. Name a folder on a disk in PITSLATE_BENCH_FOLDER.\n");
    return false;
  }
  const server = await bundleServer();
  const cleanUp = (): void => {
    server.remove();
    rmSync(folder.path, { recursive: true, force: true });
  };
  // Also when somebody ends it: the servers end with this process, and their data goes.
  process.on("exit", cleanUp);
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => process.exit(1));
  try {
    const kept = [
      await benchThroughput(server.script, folder.path, write),
      await benchReconnect(server.script, folder.path, write),
      await benchOpenHistory(folder.path, write),
    ];
    return kept.every(Boolean);
  } finally {
    process.off("exit", cleanUp);
    cleanUp();
  }
}
