import { forceCloseDatabase, IDBFactory, IDBObjectStore } from "fake-indexeddb";
import "fake-indexeddb/auto";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { IndexeddbPersistence } from "y-indexeddb";
import * as Y from "yjs";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createIndexedDbStorage } from "#client/device/storage/indexed-db-storage.ts";
import { keepDocument } from "#client/device/storage/keep-document.ts";
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

/** Connections that the storages under test have opened. */
let connections: IDBDatabase[] = [];

beforeEach(() => {
  connections = [];
  const factory = new IDBFactory();
  const open = factory.open.bind(factory);
  factory.open = (name, version) => {
    const request = open(name, version);
    request.addEventListener("success", () => connections.push(request.result));
    return request;
  };
  vi.stubGlobal("indexedDB", factory);
});

afterEach(() => vi.restoreAllMocks());

/** As when the site data are deleted or evicted: the browser closes every connection by force, then deletes. */
async function evict(name: string): Promise<void> {
  // The library's types ask for the class where it takes a connection.
  for (const connection of connections) forceCloseDatabase(connection as unknown as typeof IDBDatabase);
  await remove(name);
}

function remove(name: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const deletion = indexedDB.deleteDatabase(name);
    deletion.onsuccess = () => resolve();
    deletion.onerror = () => reject(deletion.error);
  });
}

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
    await remove("test/team");
    await storage.append("team", second);
    expect(await storage.load("team")).toEqual([second]);
  });

  test.each([
    ["the browser evicts", evict],
    ["another page deletes", remove],
  ])("a database that %s is told of as lost, and one of another document is not", async (_who, takeAway) => {
    const storage = createIndexedDbStorage("test");
    const [first] = entries("a").updates;
    if (!first) throw new Error("There is no update.");
    const lost: string[] = [];
    storage.onLoss?.("team", () => lost.push("team"));
    storage.onLoss?.("team", () => lost.push("no longer asked"))();
    storage.onLoss?.("rider/alder/2026", () => lost.push("rider/alder/2026"));
    await storage.append("team", first);
    await takeAway("test/team");
    await vi.waitFor(() => expect(lost).toEqual(["team"]));
    await storage.append("team", first);
    expect(await storage.load("team")).toEqual([first]);
  });

  test("what the browser evicts under an open page is written again, all of it, and counts as not saved until then", async () => {
    const storage = createIndexedDbStorage("test");
    const ydoc = new Y.Doc();
    const failing: boolean[] = [];
    const kept = keepDocument({
      name: "team",
      ydoc,
      storage,
      timers: { now: () => 0, after: () => () => {} },
      inTheBackground: (act) => act(),
      onChange: () => failing.push(kept?.isFailing() ?? false),
      onLoaded: () => {},
    });
    await vi.waitFor(() => expect(kept.isLoaded()).toBe(true));
    ydoc.getArray("records").push(["a"]);
    await vi.waitFor(() => expect(kept.unsaved()).toBe(0));
    expect(kept.isFailing()).toBe(false);
    await evict("test/team");
    await vi.waitFor(() => expect(failing).toContain(true));
    await vi.waitFor(() => expect(kept.isFailing()).toBe(false));
    ydoc.getArray("records").push(["b"]);
    await vi.waitFor(() => expect(kept.unsaved()).toBe(0));
    expect(await contentOf(createIndexedDbStorage("test"), "team")).toEqual(["a", "b"]);
  });

  // https://www.w3.org/TR/IndexedDB-3/#transaction-commit: a commit that runs out of space aborts the transaction with this error.
  test.each(["QuotaExceededError", "AbortError"])(
    "a write that succeeds and whose transaction is then aborted (%s) breaks the promise, and the next one is kept",
    async (name) => {
      const storage = createIndexedDbStorage("test");
      const [first, second] = entries("a", "b").updates;
      if (!first || !second) throw new Error("There are no updates.");
      const add = IDBObjectStore.prototype.add;
      const aborted = vi.spyOn(IDBObjectStore.prototype, "add").mockImplementationOnce(function (
        this: IDBObjectStore,
        value,
      ) {
        const request = add.call(this, value);
        request.addEventListener("success", () => this.transaction.abort());
        Object.defineProperty(this.transaction, "error", { value: new DOMException("", name) });
        return request;
      });
      await expect(storage.append("team", first)).rejects.toMatchObject({ name });
      expect(aborted).toHaveBeenCalledOnce();
      await storage.append("team", second);
      expect(await storage.load("team")).toEqual([second]);
    },
  );

  test("two tabs that write and put the log together in turn lose nothing of each other", async () => {
    const tabs = [createIndexedDbStorage("test"), createIndexedDbStorage("test")] as const;
    const [ours, theirs] = [entries("a", "b"), entries("c", "d")];
    await Promise.all([
      ...ours.updates.map((update) => tabs[0].append("team", update)),
      ...theirs.updates.map((update) => tabs[1].append("team", update)),
    ]);
    await Promise.all([
      tabs[0].compact("team", Y.encodeStateAsUpdate(ours.ydoc)),
      tabs[1].compact("team", Y.encodeStateAsUpdate(theirs.ydoc)),
    ]);
    expect([...(await contentOf(createIndexedDbStorage("test"), "team"))].sort()).toEqual(["a", "b", "c", "d"]);
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
