import type Database from "libsql";
import { numberIn } from "./row.ts";

/**
 * Version of the tables; a database that says a higher one was written by a newer program. Version 1 had neither
 * receipts nor snapshots; what version 2 adds leaves its tables as they are.
 */
export const storeVersion = 2;

/**
 * `accepted` holds the updates and numbers them over all documents. `snapshot` names the parts that stand in the place of
 * a document's updates up to `position`; parts that it does not name are a draft, or what was left of one.
 */
const tables = `
  CREATE TABLE IF NOT EXISTS accepted (id INTEGER PRIMARY KEY, document TEXT NOT NULL, bytes BLOB NOT NULL);
  CREATE INDEX IF NOT EXISTS accepted_by_document ON accepted (document, id);
  CREATE TABLE IF NOT EXISTS quarantine (
    id INTEGER PRIMARY KEY, document TEXT NOT NULL, bytes BLOB NOT NULL, reason TEXT NOT NULL,
    refused_at TEXT NOT NULL DEFAULT CURRENT_TIMESTAMP
  );
  CREATE TABLE IF NOT EXISTS receipt (
    document TEXT NOT NULL, device TEXT NOT NULL, bytes BLOB NOT NULL, PRIMARY KEY (document, device)
  ) WITHOUT ROWID;
  CREATE TABLE IF NOT EXISTS snapshot (id INTEGER PRIMARY KEY, document TEXT NOT NULL UNIQUE, position INTEGER NOT NULL);
  CREATE TABLE IF NOT EXISTS snapshot_part (id INTEGER PRIMARY KEY, snapshot INTEGER NOT NULL, bytes BLOB NOT NULL);
  CREATE INDEX IF NOT EXISTS snapshot_part_by_snapshot ON snapshot_part (snapshot, id);
  PRAGMA user_version = ${storeVersion};
`;

export function versionOf(database: Database.Database): number {
  return numberIn(database.prepare("PRAGMA user_version").get(), "user_version");
}

/** Makes the tables that are missing; those of version 1 stay as they are. An interruption is made good by the next call. */
export function makeTables(database: Database.Database): void {
  database.exec(tables);
  removeDrafts(database);
}

/** Removes the parts that no snapshot names. */
export function removeDrafts(database: Database.Database): void {
  database.exec("DELETE FROM snapshot_part WHERE snapshot NOT IN (SELECT id FROM snapshot)");
}

/** The library's own `transaction` loses the first error when the rollback fails too, so this one keeps it. */
export function inTransaction(database: Database.Database, write: () => void): void {
  database.exec("BEGIN IMMEDIATE");
  try {
    write();
    database.exec("COMMIT");
  } catch (error) {
    if (database.inTransaction) database.exec("ROLLBACK");
    throw error;
  }
}
