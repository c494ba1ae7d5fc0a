import { existsSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import Database from "libsql";
import { reasonOf } from "../logging.ts";
import { flushFile, flushFolder, inspectLog, type LogContent, logName } from "./log-file.ts";
import { numberIn } from "./row.ts";
import { StoreProblem } from "./store-problem.ts";

/** How long the copy waits for another process that is just opening or closing the log, in milliseconds. */
const patienceMs = 5000;

/**
 * Copies the log of a data folder into one file, also while a server writes it: the copy is one read transaction, so it
 * holds everything that was acknowledged before it began and a prefix of what the log holds later. The file has its name
 * only when the copy is whole, checked and flushed. Source: https://sqlite.org/lang_vacuum.html#vacuuminto.
 * @throws StoreProblem when there is no log, the file exists already, or one of them cannot be used.
 */
export function backUpLog(folder: string, file: string): LogContent {
  const log = join(folder, logName);
  if (!existsSync(log)) throw new StoreProblem(`There is no log in the data folder ${folder}.`);
  if (existsSync(file)) throw new StoreProblem(`The file ${file} exists already; a backup overwrites nothing.`);
  const part = `${file}.${process.pid}.part`;
  try {
    copyInto(log, part);
    letGiveBackSpace(part);
    const content = inspectLog(part, file);
    flushFile(part);
    renameSync(part, file);
    flushFolder(dirname(file));
    return content;
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    throw new StoreProblem(`The log in ${folder} cannot be copied to ${file}: ${reasonOf(error)}.`, { cause: error });
  } finally {
    rmSync(part, { force: true });
  }
}

function copyInto(log: string, part: string): void {
  const database = new Database(log);
  try {
    database.exec(`PRAGMA busy_timeout = ${patienceMs}`);
    database.prepare("VACUUM INTO ?").run(part);
  } finally {
    database.close();
  }
}

/**
 * The copy of a log that began without incremental vacuum is written anew with it. Not while copying: the setting would
 * lock the log, and the server that writes it would have to tell its devices that it cannot store.
 */
function letGiveBackSpace(part: string): void {
  const database = new Database(part);
  try {
    if (numberIn(database.prepare("PRAGMA auto_vacuum").get(), "auto_vacuum") !== 0) return;
    database.exec("PRAGMA auto_vacuum = INCREMENTAL; VACUUM");
  } finally {
    database.close();
  }
}
