import { mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { reasonOf } from "../logging.ts";
import { lockFolder } from "./folder-lock.ts";
import { giveBackPages } from "./free-space.ts";
import { logName, newerVersion } from "./log-file.ts";
import { bytesIn, numberIn, textIn } from "./row.ts";
import { draftInSqlite } from "./sqlite-draft.ts";
import { readExtents } from "./sqlite-extents.ts";
import { StoreProblem } from "./store-problem.ts";
import { inTransaction, makeTables, storeVersion, versionOf } from "./tables.ts";
import type { QuarantinedUpdate, SnapshotDraft, UpdateStore } from "./update-store.ts";

/** The journal keeps this size between two times that it is emptied; a snapshot makes it larger for a while. */
const mostJournalBytes = 4 * 1024 * 1024;

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
  // Takes effect in a new database alone. An older one is left as it is: to change it, all of it would have to be
  // written anew, and the pages that its snapshots free are used again for later updates.
  database.exec("PRAGMA auto_vacuum = INCREMENTAL");
  database.exec("PRAGMA journal_mode = WAL");
  database.exec("PRAGMA synchronous = FULL");
  database.exec(`PRAGMA journal_size_limit = ${mostJournalBytes}`);
  const version = versionOf(database);
  if (version > storeVersion) throw newerVersion(path, version);
  makeTables(database);
  database.exec("PRAGMA busy_timeout = 0");
  return database;
}

function storeOn(database: Database.Database, path: string, unlock: () => void): UpdateStore {
  const insertAccepted = database.prepare("INSERT INTO accepted (id, document, bytes) VALUES (?, ?, ?)");
  const insertQuarantine = database.prepare("INSERT INTO quarantine (document, bytes, reason) VALUES (?, ?, ?)");
  const upsertReceipt = database.prepare("INSERT OR REPLACE INTO receipt (document, device, bytes) VALUES (?, ?, ?)");
  const deleteReceipt = database.prepare("DELETE FROM receipt WHERE document = ? AND device = ?");
  const selectReceipts = database.prepare("SELECT bytes FROM receipt WHERE document = ?");
  // The rows of a snapshot are gone, and their numbers must not be given again.
  const selectNewest = database.prepare(
    "SELECT max(coalesce((SELECT max(id) FROM accepted), 0), coalesce((SELECT max(position) FROM snapshot), 0)) AS id",
  );
  const selectDocument = database.prepare(
    `SELECT bytes FROM (
       SELECT 0 AS later, part.id, part.bytes
         FROM snapshot JOIN snapshot_part AS part ON part.snapshot = snapshot.id WHERE snapshot.document = ?1
       UNION ALL SELECT 1, id, bytes FROM accepted WHERE document = ?1
     ) ORDER BY later, id`,
  );
  const selectQuarantine = database.prepare("SELECT document, bytes, reason FROM quarantine ORDER BY id");
  const extents = readExtents(database);
  let newestDraft: SnapshotDraft | undefined;
  let open = true;
  // The library goes on writing through prepared statements of a closed database.
  const assertOpen = (): void => {
    if (!open) throw new Error("The log is closed.");
  };
  return {
    append(entries) {
      assertOpen();
      let newest = 0;
      inTransaction(database, () => {
        newest = numberIn(selectNewest.get(), "id");
        for (const { document, update } of entries) {
          newest += 1;
          insertAccepted.run(newest, document, update);
        }
      });
      extents.added(entries, newest);
    },
    load(document) {
      assertOpen();
      return selectDocument.all(document).map((row) => bytesIn(row));
    },
    documents() {
      assertOpen();
      return [...extents.positions().keys()].sort();
    },
    positions() {
      assertOpen();
      return extents.positions();
    },
    extent(document) {
      assertOpen();
      return extents.of(document);
    },
    draftSnapshot(document) {
      assertOpen();
      newestDraft?.discard();
      newestDraft = draftInSqlite({
        database,
        path,
        document,
        position: extents.positions().get(document) ?? 0,
        assertOpen,
        onAdopted: () => extents.changed(document),
      });
      return newestDraft;
    },
    giveBackSpace() {
      assertOpen();
      return giveBackPages(database);
    },
    keepReceipts(receipts) {
      assertOpen();
      inTransaction(database, () => {
        for (const { document, device, receipt } of receipts) {
          if (receipt === undefined) deleteReceipt.run(document, device);
          else upsertReceipt.run(document, device, receipt);
        }
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
      newestDraft?.discard();
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
