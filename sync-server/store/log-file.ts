import { closeSync, fsyncSync, openSync, statSync } from "node:fs";
import Database from "libsql";
import { reasonOf } from "../logging.ts";
import { numberIn, textIn } from "./row.ts";
import { StoreProblem } from "./store-problem.ts";
import { storeVersion, versionOf } from "./tables.ts";

/** Name of the log's database in a data folder. */
export const logName = "log.db";

/** What a log holds: documents, those of them with a snapshot, updates beside the snapshots, and the bytes of its file. */
export type LogContent = {
  readonly documents: number;
  readonly snapshots: number;
  readonly updates: number;
  readonly bytes: number;
};

/**
 * Reads a whole log that no server has open and checks that it is sound.
 * @param shownAs the file that the sentence of a problem names
 * @throws StoreProblem when it is no log, it is damaged, or a newer version wrote it.
 */
export function inspectLog(path: string, shownAs: string): LogContent {
  let database: Database.Database | undefined;
  try {
    database = new Database(path);
    const version = versionOf(database);
    if (version > storeVersion) throw newerVersion(shownAs, version);
    const soundness = textIn(database.prepare("PRAGMA integrity_check").get(), "integrity_check");
    if (soundness !== "ok") throw new StoreProblem(`The file ${shownAs} is damaged.`, { cause: soundness });
    database.prepare("SELECT document, bytes, reason FROM quarantine").get();
    return { ...contentOf(database, version), bytes: statSync(path).size };
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    throw new StoreProblem(`The file ${shownAs} is no log or is damaged: ${reasonOf(error)}.`, { cause: error });
  } finally {
    database?.close();
  }
}

function contentOf(database: Database.Database, version: number): Omit<LogContent, "bytes"> {
  const names =
    version < 2 ? "SELECT document FROM accepted" : "SELECT document FROM accepted UNION SELECT document FROM snapshot";
  if (version >= 2) assertComplete(database);
  return {
    documents: count(database, `SELECT count(DISTINCT document) AS number FROM (${names})`),
    snapshots: version < 2 ? 0 : count(database, "SELECT count(*) AS number FROM snapshot"),
    updates: count(database, "SELECT count(*) AS number FROM accepted"),
  };
}

/** Reads what the check of soundness cannot know: that every snapshot has its parts. */
function assertComplete(database: Database.Database): void {
  const missing =
    "SELECT count(*) AS number FROM snapshot WHERE id NOT IN (SELECT snapshot FROM snapshot_part WHERE bytes IS NOT NULL)";
  if (count(database, missing) > 0) throw new Error("a snapshot has no parts");
}

function count(database: Database.Database, question: string): number {
  return numberIn(database.prepare(question).get(), "number");
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
