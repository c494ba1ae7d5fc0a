/** Where the numbers of a benchmark were measured: without it they mean little. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, statfsSync } from "node:fs";
import { cpus, tmpdir, totalmem } from "node:os";
import { join } from "node:path";

/** Linux's number of a file system that lives in memory. Source: statfs(2), TMPFS_MAGIC and RAMFS_MAGIC. */
const inMemory: ReadonlySet<number> = new Set([0x01021994, 0x858458f6]);

/** A fresh folder for the data of servers, and whether a flush there reaches a disk. */
export type DataFolder = { readonly path: string; readonly fileSystem: string; readonly isOnDisk: boolean };

/** Makes a folder in `PITSLATE_BENCH_FOLDER`, or else in the system's folder for temporary files. */
export function makeDataFolder(): DataFolder {
  const path = mkdtempSync(join(process.env.PITSLATE_BENCH_FOLDER ?? tmpdir(), "pitslate-bench-"));
  return { path, fileSystem: fileSystemOf(path), isOnDisk: !inMemory.has(statfsSync(path).type) };
}

function fileSystemOf(path: string): string {
  try {
    const [, row = ""] = execFileSync("df", ["-PT", path], { encoding: "utf8" }).trim().split("\n");
    return row.split(/\s+/)[1] ?? "unknown";
  } catch {
    return `type 0x${statfsSync(path).type.toString(16)}`;
  }
}

/** The machine in one line. */
export function describeMachine(): string {
  const [processor] = cpus();
  const memory = Math.round(totalmem() / 1e9);
  return `${process.platform} ${process.arch}, ${cpus().length} × ${processor?.model ?? "unknown"}, ${memory} GB, Node ${process.version}`;
}
