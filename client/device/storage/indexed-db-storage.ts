/**
 * The browser's IndexedDB as a device's storage: one database a document, in the
 * form of y-indexeddb (stores "updates" and "custom"), so that what earlier
 * versions kept is read as it is.
 *
 * A write counts only when its transaction has completed with strict durability.
 * A database that the browser has closed is opened again at the next use.
 */
import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import * as Y from "yjs";
import type { DeviceStorage } from "./device-storage.ts";
import { splitUpdate } from "./split-update.ts";

/** An update of at least so many bytes is kept in parts, which are read in turns. */
const LARGE_BYTES = 65_536;

interface Layout extends DBSchema {
  updates: { key: number; value: Uint8Array };
  custom: { key: string; value: unknown };
}

/** @param prefix begins the names of the databases */
export function createIndexedDbStorage(prefix: string): DeviceStorage {
  const databases = new Map<string, Promise<IDBPDatabase<Layout>>>();
  const listeners = new Map<string, Set<() => void>>();

  /** The connection is gone, and perhaps what was kept with it. */
  const lost = (document: string): void => {
    databases.delete(document);
    for (const listener of listeners.get(document) ?? []) listener();
  };
  const open = (document: string): Promise<IDBPDatabase<Layout>> => {
    const known = databases.get(document);
    if (known) return known;
    const opening = openDB<Layout>(`${prefix}/${document}`, undefined, {
      upgrade: (database) => {
        database.createObjectStore("updates", { autoIncrement: true });
        database.createObjectStore("custom");
      },
      // Another tab may want to change or delete it: give way, and open again when it is needed.
      blocking: (_now, _wanted, event) => {
        (event.target as IDBDatabase).close();
        lost(document);
      },
      terminated: () => lost(document),
    });
    databases.set(document, opening);
    opening.catch(() => databases.delete(document));
    return opening;
  };

  /** Runs `work` on the database; a failure forgets the connection, since a closed one throws at every later use. */
  const within = async <Result>(
    document: string,
    work: (database: IDBPDatabase<Layout>) => Promise<Result>,
  ): Promise<Result> => {
    const database = await open(document);
    try {
      return await work(database);
    } catch (error) {
      databases.delete(document);
      database.close();
      throw error;
    }
  };

  return {
    documents: async () => {
      // Older browsers cannot list them; then only what is open is known.
      const known = (await indexedDB.databases?.()) ?? [];
      return known.flatMap(({ name }) => (name?.startsWith(`${prefix}/`) ? [name.slice(prefix.length + 1)] : []));
    },
    load: (document) => within(document, (database) => database.getAll("updates")),
    append: (document, update) =>
      within(document, async (database) => {
        const transaction = database.transaction("updates", "readwrite", { durability: "strict" });
        const parts = update.length < LARGE_BYTES ? [update] : splitUpdate(update);
        await Promise.all([...parts.map((part) => transaction.store.add(part)), transaction.done]);
      }),
    compact: (document, state) =>
      within(document, async (database) => {
        const transaction = database.transaction("updates", "readwrite", { durability: "strict" });
        const kept = await transaction.store.getAll();
        const parts = splitUpdate(Y.mergeUpdates([...kept, state]));
        await Promise.all([
          transaction.store.clear(),
          ...parts.map((part) => transaction.store.add(part)),
          transaction.done,
        ]);
      }),
    loadNote: (document, note) =>
      within(document, async (database) => {
        const kept = await database.get("custom", note);
        return kept instanceof Uint8Array ? kept : undefined;
      }),
    keepNote: (document, note, bytes) =>
      within(document, async (database) => {
        // What is lost is only known less for a while.
        const transaction = database.transaction("custom", "readwrite", { durability: "relaxed" });
        await Promise.all([transaction.store.put(bytes, note), transaction.done]);
      }),
    changeNote: (document, note, change) =>
      within(document, async (database) => {
        const transaction = database.transaction("custom", "readwrite", { durability: "strict" });
        const kept = await transaction.store.get(note);
        const changed = change(kept instanceof Uint8Array ? kept : undefined);
        await Promise.all([transaction.store.put(changed, note), transaction.done]);
      }),
    onLoss: (document, listener) => {
      const ofDocument = listeners.get(document) ?? new Set();
      listeners.set(document, ofDocument.add(listener));
      return () => void ofDocument.delete(listener);
    },
  };
}
