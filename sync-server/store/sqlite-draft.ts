import Database from "libsql";
import { bytesIn, numberIn } from "./row.ts";
import { inTransaction, removeDrafts } from "./tables.ts";
import type { SnapshotDraft } from "./update-store.ts";

/** A draft reads at most so many updates at a time, and stops when they have so many bytes. */
const atOnce = { rows: 200, bytes: 128 * 1024 } as const;

type DraftNeeds = {
  readonly database: Database.Database;
  readonly path: string;
  readonly document: string;
  readonly position: number;
  /** Throws when the log is closed. */
  readonly assertOpen: () => void;
  readonly onAdopted: () => void;
};

/** Parts are written under a number that the table `snapshot` does not name until `adopt` puts it there. */
export function draftInSqlite(needs: DraftNeeds): SnapshotDraft {
  const { database, path, document, position, assertOpen, onAdopted } = needs;
  removeDrafts(database);
  const current = idOfSnapshot(database, document);
  const next = database.prepare("SELECT coalesce(max(id), 0) + 1 AS id FROM snapshot").get();
  const draft = numberIn(next, "id");
  const readPart = partReader(database, current);
  const readRows = rowReader(database, document, position);
  const insertPart = database.prepare("INSERT INTO snapshot_part (snapshot, bytes) VALUES (?, ?)");
  let reread: { readonly database: Database.Database; readonly next: () => Uint8Array | undefined } | undefined;
  let isEnded = false;

  const assertGoesOn = (): void => {
    assertOpen();
    if (isEnded) throw new Error("The snapshot's draft has ended.");
  };
  const end = (): void => {
    isEnded = true;
    reread?.database.close();
    reread = undefined;
  };

  return {
    position,
    read() {
      assertGoesOn();
      const part = readPart();
      return part === undefined ? readRows() : [part];
    },
    write(part) {
      assertGoesOn();
      insertPart.run(draft, part);
    },
    readBack() {
      assertGoesOn();
      if (reread === undefined) {
        // A connection of its own: this one's would answer from the pages that it has just written in memory.
        const own = new Database(path);
        reread = { database: own, next: partReader(own, draft) };
      }
      return reread.next();
    },
    adopt() {
      assertGoesOn();
      inTransaction(database, () => {
        database.prepare("DELETE FROM snapshot WHERE document = ?").run(document);
        database
          .prepare("INSERT INTO snapshot (id, document, position) VALUES (?, ?, ?)")
          .run(draft, document, position);
        database.prepare("DELETE FROM snapshot_part WHERE snapshot = ?").run(current);
        database.prepare("DELETE FROM accepted WHERE document = ? AND id <= ?").run(document, position);
      });
      end();
      onAdopted();
    },
    discard() {
      if (isEnded) return;
      try {
        end();
        assertOpen();
        removeDrafts(database);
      } catch {
        // A disk that is full or gone, or a log that was closed: the next draft or opening removes it.
      }
    },
  };
}

/** 0 when there is none: numbers begin at 1. */
function idOfSnapshot(database: Database.Database, document: string): number {
  const row = database.prepare("SELECT coalesce(max(id), 0) AS id FROM snapshot WHERE document = ?").get(document);
  return numberIn(row, "id");
}

function partReader(database: Database.Database, snapshot: number): () => Uint8Array | undefined {
  const select = database.prepare(
    "SELECT id, bytes FROM snapshot_part WHERE snapshot = ? AND id > ? ORDER BY id LIMIT 1",
  );
  let last = 0;
  return () => {
    const row = select.get(snapshot, last);
    if (row === undefined) return undefined;
    last = numberIn(row, "id");
    return bytesIn(row);
  };
}

/** Two questions instead of one that is broken off: that would hold the journal open until it is asked again. */
function rowReader(database: Database.Database, document: string, position: number): () => readonly Uint8Array[] {
  const range = "FROM accepted WHERE document = ? AND id > ? AND id <= ? ORDER BY id";
  const selectSizes = database.prepare(`SELECT id, length(bytes) AS size ${range} LIMIT ${atOnce.rows}`);
  const selectBytes = database.prepare(`SELECT bytes ${range}`);
  let last = 0;
  return () => {
    let [end, bytes] = [last, 0];
    for (const row of selectSizes.all(document, last, position)) {
      if (bytes >= atOnce.bytes) break;
      end = numberIn(row, "id");
      bytes += numberIn(row, "size");
    }
    const updates = end === last ? [] : selectBytes.all(document, last, end).map((row) => bytesIn(row));
    last = end;
    return updates;
  };
}
