import { mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { reasonOf } from "../logging.ts";
import { lockFolder } from "./folder-lock.ts";
import { logName, newerVersion, storeVersion } from "./log-file.ts";
import { bytesIn, numberIn, textIn } from "./row.ts";
import { StoreProblem } from "./store-problem.ts";
import type { QuarantinedUpdate, UpdateStore } from "./update-store.ts";

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
  PRAGMA user_version = ${storeVersion};
`;

/**
 * The log as a SQLite database `log.db` in a folder, which is made when it is missing.
 * Write-ahead journal with `synchronous=FULL`: each commit ends with an fsync (https://sqlite.org/pragma.html#pragma_synchronous).
 * @throws StoreProblem when the folder cannot be used, is in use, or was written by a newer version.
 */
export function openSqliteStore(folder: string): UpdateStore {
  const unlock = claimFolder(folder);
  try {
    const path = join(folder, logName);
    return storeOn(openDatabase(path), path, unlock);
  } catch (error) {
    unlock();
    if (error instanceof StoreProblem) throw error;
    throw new StoreProblem(`The log in ${folder} cannot be opened: ${reasonOf(error)}.`, { cause: error });
  }
}

function claimFolder(folder: string): () => void {
  try {
    mkdirSync(folder, { recursive: true });
    return lockFolder(folder);
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    throw new StoreProblem(`The data folder ${folder} cannot be used: ${reasonOf(error)}.`, { cause: error });
  }
}

function openDatabase(path: string): Database.Database {
  const database = new Database(path);
  // A backup that just ends may hold the log for an instant; while serving nobody else writes it, and nothing waits.
  database.exec("PRAGMA busy_timeout = 5000");
  database.exec("PRAGMA journal_mode = WAL");
  database.exec("PRAGMA synchronous = FULL");
  const version = numberIn(database.prepare("PRAGMA user_version").get(), "user_version");
  if (version > storeVersion) throw newerVersion(path, version);
  database.exec(tables);
  database.exec("PRAGMA busy_timeout = 0");
  return database;
}

function storeOn(database: Database.Database, path: string, unlock: () => void): UpdateStore {
  const insertAccepted = database.prepare("INSERT INTO accepted (document, bytes) VALUES (?, ?)");
  const insertQuarantine = database.prepare("INSERT INTO quarantine (document, bytes, reason) VALUES (?, ?, ?)");
  const upsertReceipt = database.prepare("INSERT OR REPLACE INTO receipt (document, device, bytes) VALUES (?, ?, ?)");
  const selectReceipts = database.prepare("SELECT bytes FROM receipt WHERE document = ?");
  const selectDocument = database.prepare("SELECT bytes FROM accepted WHERE document = ? ORDER BY id");
  const positions = readPositions(database);
  const selectQuarantine = database.prepare("SELECT document, bytes, reason FROM quarantine ORDER BY id");
  let open = true;
  // The library goes on writing through prepared statements of a closed database.
  const assertOpen = (): void => {
    if (!open) throw new Error("The log is closed.");
  };
  return {
    append(entries) {
      assertOpen();
      const written = new Map<string, number>();
      inTransaction(database, () => {
        for (const { document, update } of entries) {
          written.set(document, Number(insertAccepted.run(document, update).lastInsertRowid));
        }
      });
      for (const [document, position] of written) positions.set(document, position);
    },
    load(document) {
      assertOpen();
      return selectDocument.all(document).map((row) => bytesIn(row));
    },
    documents() {
      assertOpen();
      return [...positions.keys()].sort();
    },
    positions() {
      assertOpen();
      return new Map(positions);
    },
    keepReceipts(receipts) {
      assertOpen();
      inTransaction(database, () => {
        for (const { document, device, receipt } of receipts) upsertReceipt.run(document, device, receipt);
      });
    },
    receipts(document) {
      assertOpen();
      return selectReceipts.all(document).map((row) => bytesIn(row));
    },
    quarantine(document, update, reason) {
      assertOpen();
      insertQuarantine.run(document, update, reason);
    },
    quarantined() {
      assertOpen();
      return selectQuarantine.all().map(
        (row): QuarantinedUpdate => ({
          document: textIn(row, "document"),
          update: bytesIn(row),
          reason: textIn(row, "reason"),
        }),
      );
    },
    sizeBytes() {
      assertOpen();
      // What is committed lies in the write-ahead journal until SQLite moves it into the database.
      return [path, `${path}-wal`].reduce(
        (bytes, file) => bytes + (statSync(file, { throwIfNoEntry: false })?.size ?? 0),
        0,
      );
    },
    close() {
      if (!open) return;
      open = false;
      try {
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
      } finally {
        database.close();
        unlock();
      }
    },
  };
}

/** Read once: the index is walked from end to end, which would be too much for every question. */
function readPositions(database: Database.Database): Map<string, number> {
  const rows = database.prepare("SELECT document, max(id) AS position FROM accepted GROUP BY document").all();
  return new Map(rows.map((row) => [textIn(row, "document"), numberIn(row, "position")]));
}

/** The library's own `transaction` loses the first error when the rollback fails too, so this one keeps it. */
function inTransaction(database: Database.Database, write: () => void): void {
  database.exec("BEGIN IMMEDIATE");
  try {
    write();
    database.exec("COMMIT");
  } catch (error) {
    if (database.inTransaction) database.exec("ROLLBACK");
    throw error;
  }
}
