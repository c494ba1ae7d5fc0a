import { IDBFactory } from "fake-indexeddb";
import "fake-indexeddb/auto";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { IndexeddbPersistence } from "y-indexeddb";
import * as Y from "yjs";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createIndexedDbStorage } from "#client/device/storage/indexed-db-storage.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";

/** A document with some entries, and the update of each. */
function entries(...names: readonly string[]): { readonly ydoc: Y.Doc; readonly updates: readonly Uint8Array[] } {
  const ydoc = new Y.Doc();
  const updates: Uint8Array[] = [];
  ydoc.on("update", (update: Uint8Array) => updates.push(update));
  for (const name of names) ydoc.getArray("records").push([name]);
  return { ydoc, updates };
}

async function contentOf(storage: DeviceStorage, document: string): Promise<readonly unknown[]> {
  const ydoc = new Y.Doc();
  for (const update of await storage.load(document)) Y.applyUpdate(ydoc, update);
  return ydoc.getArray("records").toArray();
}

/** Every storage passes the same suite; `again` opens the same storage as after a restart. */
const storages: readonly (readonly [string, () => { storage: DeviceStorage; again: () => DeviceStorage }])[] = [
  [
    "in memory",
    () => {
      const storage = createMemoryStorage();
      return { storage, again: () => storage };
    },
  ],
  ["in IndexedDB", () => ({ storage: createIndexedDbStorage("test"), again: () => createIndexedDbStorage("test") })],
];

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));

describe.each(storages)("a device's storage %s", (_name, open) => {
  test("holds nothing of a document that was never kept", async () => {
    expect(await open().storage.load("team")).toEqual([]);
  });

  test("gives back what was appended, after a restart, document by document", async () => {
    const { storage, again } = open();
    for (const update of entries("a", "b").updates) await storage.append("team", update);
    for (const update of entries("c").updates) await storage.append("rider/alder/2026", update);
    expect(await contentOf(again(), "team")).toEqual(["a", "b"]);
    expect(await contentOf(again(), "rider/alder/2026")).toEqual(["c"]);
  });

  test("names the documents that it has kept, after a restart too", async () => {
    const { storage, again } = open();
    expect(await storage.documents()).toEqual([]);
    for (const name of ["team", "rider/alder/2026"]) {
      for (const update of entries("a").updates) await storage.append(name, update);
    }
    expect([...(await again().documents())].sort()).toEqual(["rider/alder/2026", "team"]);
  });

  test("keeps notes beside the document, the last one of each in place of the others", async () => {
    const { storage, again } = open();
    expect(await storage.loadNote("team", "receipts")).toBeUndefined();
    await storage.keepNote("team", "receipts", new Uint8Array([1]));
    await storage.keepNote("team", "receipts", new Uint8Array([2, 3]));
    expect(await again().loadNote("team", "receipts")).toEqual(new Uint8Array([2, 3]));
    expect(await again().loadNote("team", "held")).toBeUndefined();
    expect(await again().loadNote("rider/alder/2026", "receipts")).toBeUndefined();
    expect(await contentOf(again(), "team")).toEqual([]);
  });

  test("puts a log together into one update without losing what only the log has", async () => {
    const { storage } = open();
    const ours = entries("ours");
    const theirs = entries("of another tab");
    for (const update of [...ours.updates, ...theirs.updates]) await storage.append("team", update);
    await storage.compact("team", Y.encodeStateAsUpdate(ours.ydoc));
    expect(await storage.load("team")).toHaveLength(1);
    expect([...(await contentOf(storage, "team"))].sort()).toEqual(["of another tab", "ours"]);
  });
});

describe("IndexedDB", () => {
  test("what y-indexeddb kept is read as it is", async () => {
    const ydoc = new Y.Doc();
    const persistence = new IndexeddbPersistence("test/team", ydoc);
    await persistence.whenSynced;
    ydoc.getArray("records").push(["from before"]);
    await persistence.destroy();
    expect(await contentOf(createIndexedDbStorage("test"), "team")).toEqual(["from before"]);
  });

  test("a database that the browser has closed is opened again at the next write", async () => {
    const storage = createIndexedDbStorage("test");
    const [first, second] = entries("a", "b").updates;
    if (!first || !second) throw new Error("There are no updates.");
    await storage.append("team", first);
    // The browser closes a database when another page wants it gone.
    await new Promise<void>((resolve, reject) => {
      const deletion = indexedDB.deleteDatabase("test/team");
      deletion.onsuccess = () => resolve();
      deletion.onerror = () => reject(deletion.error);
    });
    await storage.append("team", second);
    expect(await storage.load("team")).toEqual([second]);
  });

  test("a browser that gives no storage breaks the promise, and nothing is said to be kept", async () => {
    vi.stubGlobal("indexedDB", {
      open: () => {
        throw new DOMException("The operation is insecure.", "SecurityError");
      },
    });
    await expect(createIndexedDbStorage("test").append("team", new Uint8Array([0, 0]))).rejects.toThrow();
  });
});
