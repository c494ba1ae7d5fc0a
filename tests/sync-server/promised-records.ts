import { join } from "node:path";
import Database from "libsql";
import * as Y from "yjs";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import type { Promises } from "./promise-keeper.ts";

/** One record is one step of its writer's clock, so a promise of a clock is a promise of so many records. */
export function recordOf(clientId: number, n: number) {
  const id = `${clientId.toString().padStart(13, "0")}${n.toString().padStart(13, "0")}`;
  const written = { by: "anna", device: "phone", at: "2031-05-04T09:00:00Z" };
  return { version: 1, id, subject: "paper:one", value: { clientId, n }, supersedes: [], ...written };
}

export function countOf(promises: Promises): number {
  return [...promises.values()].reduce((sum, count) => sum + count, 0);
}

/** One sentence for each record that was promised and that the log in the folder does not hold. */
export function lostIn(folder: string, promisesByDocument: ReadonlyMap<string, Promises>): string[] {
  const store = openSqliteStore(folder);
  try {
    return [...promisesByDocument].flatMap(([document, promises]) => lostOf(document, store.load(document), promises));
  } finally {
    store.close();
  }
}

function lostOf(document: string, updates: readonly Uint8Array[], promises: Promises): string[] {
  const held = new Y.Doc();
  for (const update of updates) Y.applyUpdate(held, update);
  if (held.store.pendingStructs !== null) return [`The log of ${document} has a gap.`];
  const list = held.getArray("records").toArray();
  const records = new Set(list.map((record) => JSON.stringify(record)));
  const lost = list.length === records.size ? [] : [`The log of ${document} holds a record twice.`];
  for (const [clientId, count] of promises) {
    for (let n = 1; n <= count; n++) {
      if (records.has(JSON.stringify(recordOf(clientId, n)))) continue;
      lost.push(`Record ${n} of writer ${clientId} in ${document} was promised and is gone.`);
    }
  }
  return lost;
}

/** What the log of a server that was just killed shows: documents with a snapshot, and whether a draft of one was under way. */
export function snapshotsIn(folder: string): { readonly snapshots: number; readonly isDraftLeft: boolean } {
  const database = new Database(join(folder, "log.db"));
  try {
    const count = (rows: string) => {
      const row = database.prepare(`SELECT count(*) AS number FROM ${rows}`).get() as { readonly number: number };
      return row.number;
    };
    return {
      snapshots: count("snapshot"),
      isDraftLeft: count("snapshot_part WHERE snapshot NOT IN (SELECT id FROM snapshot)") > 0,
    };
  } finally {
    database.close();
  }
}
