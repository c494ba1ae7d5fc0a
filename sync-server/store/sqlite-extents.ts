import type Database from "libsql";
import { numberIn, textIn } from "./row.ts";
import type { LogEntry, LogExtent } from "./update-store.ts";

/** What the log holds of each document, kept in memory, so that asking costs nothing that grows with the log. */
export type Extents = {
  positions(): Map<string, number>;
  of(document: string): LogExtent;
  /** Entries are in the log, the last of them under the number `newest`. */
  added(entries: readonly LogEntry[], newest: number): void;
  /** A snapshot of the document was adopted: it is read again. */
  changed(document: string): void;
};

type Extent = LogExtent & { readonly position: number };

const nothing: LogExtent = { rows: 0, rowBytes: 0, snapshotBytes: 0 };

/** Reads the whole log's extents once. */
export function readExtents(database: Database.Database): Extents {
  const selectNames = database.prepare("SELECT document FROM accepted UNION SELECT document FROM snapshot");
  const selectRows = database.prepare(
    "SELECT count(*) AS number, coalesce(sum(length(bytes)), 0) AS size, coalesce(max(id), 0) AS position FROM accepted WHERE document = ?",
  );
  const selectSnapshot = database.prepare(
    `SELECT coalesce(sum(length(bytes)), 0) AS size, coalesce(max(position), 0) AS position
     FROM snapshot JOIN snapshot_part ON snapshot_part.snapshot = snapshot.id WHERE document = ?`,
  );

  function read(document: string): Extent {
    const [rows, snapshot] = [selectRows.get(document), selectSnapshot.get(document)];
    return {
      rows: numberIn(rows, "number"),
      rowBytes: numberIn(rows, "size"),
      snapshotBytes: numberIn(snapshot, "size"),
      position: Math.max(numberIn(rows, "position"), numberIn(snapshot, "position")),
    };
  }

  const names = selectNames.all().map((row) => textIn(row, "document"));
  const extents = new Map(names.map((document) => [document, read(document)]));
  return {
    positions: () => new Map([...extents].map(([document, { position }]) => [document, position])),
    of(document) {
      const { rows, rowBytes, snapshotBytes } = extents.get(document) ?? nothing;
      return { rows, rowBytes, snapshotBytes };
    },
    added(entries, newest) {
      for (const [index, { document, update }] of entries.entries()) {
        const { rows, rowBytes, snapshotBytes } = extents.get(document) ?? nothing;
        const position = newest - entries.length + 1 + index;
        extents.set(document, { rows: rows + 1, rowBytes: rowBytes + update.length, snapshotBytes, position });
      }
    },
    changed(document) {
      extents.set(document, read(document));
    },
  };
}
