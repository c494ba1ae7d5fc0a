import type Database from "libsql";
import { numberIn } from "./row.ts";

/** 1 MiB at the usual page size: a few milliseconds. */
const pagesAtOnce = 256;

/**
 * Gives some of a database's free pages back to the disk. @returns whether any was given back; never in a database that
 * began without incremental vacuum, which uses its free pages again instead.
 * Source: https://sqlite.org/pragma.html#pragma_incremental_vacuum.
 */
export function giveBackPages(database: Database.Database): boolean {
  const before = freePages(database);
  if (before === 0) return false;
  database.exec(`PRAGMA incremental_vacuum(${pagesAtOnce})`);
  return freePages(database) < before;
}

function freePages(database: Database.Database): number {
  return numberIn(database.prepare("PRAGMA freelist_count").get(), "freelist_count");
}
