/** What the pit laptop has on its disk: its log, read from outside while the server writes it. */
import { join } from "node:path";
import Database from "libsql";
import * as Y from "yjs";
import { recordsName } from "#core/ledger/document.ts";
import { logName } from "#server/store/log-file.ts";
import { bytesIn } from "#server/store/row.ts";

export interface LaptopLog {
  /** The records of a document, as one text each, in the order of these texts. */
  records(document: string): readonly string[];
  close(): void;
}

/** Reads the log of a data folder. */
export function openLaptopLog(folder: string): LaptopLog {
  const database = new Database(join(folder, logName));
  const select = database.prepare("SELECT bytes FROM accepted WHERE document = ? ORDER BY id");
  return {
    records: (document) => recordsOf(select.all(document).map(bytesIn)),
    close: () => database.close(),
  };
}

/** The records in the updates of one document, as one text each, in the order of these texts. */
export function recordsOf(updates: readonly Uint8Array[]): readonly string[] {
  const ydoc = new Y.Doc();
  for (const update of updates) Y.applyUpdate(ydoc, update);
  return ydoc
    .getArray(recordsName)
    .toArray()
    .map((record) => JSON.stringify(record))
    .sort();
}
