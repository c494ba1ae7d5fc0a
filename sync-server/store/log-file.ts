import { closeSync, fsyncSync, openSync, statSync } from "node:fs";
import Database from "libsql";
import { reasonOf } from "../logging.ts";
import { numberIn, textIn } from "./row.ts";
import { StoreProblem } from "./store-problem.ts";

/** Version of the tables; a database that says a higher one was written by a newer program. */
export const storeVersion = 1;

/** Name of the log's database in a data folder. */
export const logName = "log.db";

/** What a log holds: accepted updates, the documents that they are of, and the bytes of its file. */
export type LogContent = { readonly updates: number; readonly documents: number; readonly bytes: number };

/**
 * Reads a whole log that no server has open and checks that it is sound.
 * @param shownAs the file that the sentence of a problem names
 * @throws StoreProblem when it is no log, it is damaged, or a newer version wrote it.
 */
export function inspectLog(path: string, shownAs: string): LogContent {
  let database: Database.Database | undefined;
  try {
    database = new Database(path);
    const version = numberIn(database.prepare("PRAGMA user_version").get(), "user_version");
    if (version > storeVersion) throw newerVersion(shownAs, version);
    const soundness = textIn(database.prepare("PRAGMA integrity_check").get(), "integrity_check");
    if (soundness !== "ok") throw new StoreProblem(`The file ${shownAs} is damaged.`, { cause: soundness });
    database.prepare("SELECT document, bytes, reason FROM quarantine").get();
    const counts = database.prepare("SELECT count(*) AS updates, count(DISTINCT document) AS documents FROM accepted");
    const row = counts.get();
    return {
      updates: numberIn(row, "updates"),
      documents: numberIn(row, "documents"),
      bytes: statSync(path).size,
    };
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    throw new StoreProblem(`The file ${shownAs} is no log or is damaged: ${reasonOf(error)}.`, { cause: error });
  } finally {
    database?.close();
  }
}

export function newerVersion(path: string, version: number): StoreProblem {
  return new StoreProblem(
    `The log ${path} was written by a newer version of this program (${version}; this one knows ${storeVersion}).`,
  );
}

/** Returns when the file's bytes survive loss of power. Not for a file that is open as a database in this process. */
export function flushFile(path: string): void {
  flush(path, "r+");
}

/** Returns when the names in a folder survive loss of power; Windows cannot be asked for that. */
export function flushFolder(path: string): void {
  if (process.platform !== "win32") flush(path, "r");
}

function flush(path: string, flags: "r" | "r+"): void {
  const handle = openSync(path, flags);
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
