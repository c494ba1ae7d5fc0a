import { copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { reasonOf } from "../logging.ts";
import { lockFolder } from "./folder-lock.ts";
import { flushFile, flushFolder, inspectLog, type LogContent, logName } from "./log-file.ts";
import { StoreProblem } from "./store-problem.ts";

/**
 * Makes a backup the log of an empty data folder, which is made when it is missing. The backup stays as it is. The folder
 * has a log only when that is whole, checked and flushed.
 * @throws StoreProblem when the folder is not empty or cannot be used, or when the file is no sound log.
 */
export function restoreLog(file: string, folder: string): LogContent {
  if (!existsSync(file)) throw new StoreProblem(`There is no file ${file}.`);
  assertEmpty(folder);
  try {
    mkdirSync(folder, { recursive: true });
    const unlock = lockFolder(folder);
    try {
      // Between the first look and the lock a server may have come and gone.
      assertEmpty(folder);
      return copyInto(folder, file);
    } finally {
      unlock();
    }
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    throw new StoreProblem(`${file} cannot be restored into ${folder}: ${reasonOf(error)}.`, { cause: error });
  }
}

/** The lock alone is nothing: a restore that was refused leaves it behind. */
function assertEmpty(folder: string): void {
  if (!existsSync(folder)) return;
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch (error) {
    throw new StoreProblem(`The data folder ${folder} cannot be used: ${reasonOf(error)}.`, { cause: error });
  }
  if (names.some((name) => !/^lock\.db(-journal)?$/.test(name))) {
    throw new StoreProblem(`The data folder ${folder} is not empty; a backup is restored into an empty one only.`);
  }
}

function copyInto(folder: string, file: string): LogContent {
  const part = join(folder, `${logName}.part`);
  try {
    copyFileSync(file, part);
    const content = inspectLog(part, file);
    flushFile(part);
    renameSync(part, join(folder, logName));
    flushFolder(folder);
    return content;
  } finally {
    rmSync(part, { force: true });
  }
}
