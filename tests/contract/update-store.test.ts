import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { describe, expect, it, onTestFinished } from "vitest";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import type { UpdateStore } from "#server/store/update-store.ts";
import { freshFolder } from "#tests/sync-server/server-fixture.ts";

const bytes = (...values: number[]) => new Uint8Array(values);
const entry = (document: string, ...values: number[]) => ({ document, update: bytes(...values) });

function openSqlite(folder = freshFolder()): UpdateStore {
  const store = openSqliteStore(folder);
  onTestFinished(() => store.close());
  return store;
}

describe.each([
  ["in memory", createMemoryStore],
  ["in SQLite", openSqlite],
])("an update store %s", (_name, open) => {
  it("gives back the updates of each document in the order of appending", () => {
    const store = open();
    store.append([entry("team", 1), entry("rider/a/2031", 2)]);
    store.append([entry("team", 3, 0, 255), entry("team", 1)]);
    expect(store.load("team")).toEqual([bytes(1), bytes(3, 0, 255), bytes(1)]);
    expect(store.load("rider/a/2031")).toEqual([bytes(2)]);
  });

  it("has nothing for a document that was never written", () => {
    const store = open();
    expect(store.load("team")).toEqual([]);
    expect(store.documents()).toEqual([]);
  });

  it("names its documents once each, sorted", () => {
    const store = open();
    store.append([entry("team", 1), entry("rider/b/2031", 1), entry("team", 2), entry("rider/a/2031", 1)]);
    expect(store.documents()).toEqual(["rider/a/2031", "rider/b/2031", "team"]);
  });

  it("numbers its updates over all documents, and tells the number of each document's newest", () => {
    const store = open();
    expect(store.positions()).toEqual(new Map());
    store.append([entry("team", 1), entry("rider/a/2031", 2), entry("team", 3)]);
    const before = store.positions();
    expect(before).toEqual(
      new Map([
        ["team", 3],
        ["rider/a/2031", 2],
      ]),
    );
    store.append([entry("rider/a/2031", 4)]);
    store.quarantine("rider/b/2031", bytes(1), "too large");
    store.append([]);
    expect(store.positions()).toEqual(
      new Map([
        ["team", 3],
        ["rider/a/2031", 4],
      ]),
    );
    expect(before.get("rider/a/2031")).toBe(2);
  });

  it("keeps a part of a larger buffer as that part, and an empty update as empty", () => {
    const store = open();
    const buffer = bytes(9, 8, 7, 6);
    store.append([
      { document: "team", update: buffer.subarray(1, 3) },
      { document: "team", update: bytes() },
    ]);
    buffer.fill(0);
    expect(store.load("team")).toEqual([bytes(8, 7), bytes()]);
  });

  it("keeps the last receipt of each device in each document", () => {
    const store = open();
    expect(store.receipts("team")).toEqual([]);
    const receipt = (document: string, device: string, value: number) => ({ document, device, receipt: bytes(value) });
    store.keepReceipts([
      receipt("team", "phone", 1),
      receipt("team", "laptop", 2),
      receipt("rider/a/2031", "phone", 3),
    ]);
    store.keepReceipts([receipt("team", "phone", 4)]);
    const numbers = store.receipts("team").map(([value]) => value);
    expect(numbers.sort()).toEqual([2, 4]);
    expect(store.receipts("rider/a/2031")).toEqual([bytes(3)]);
    expect(store.documents()).toEqual([]);
  });

  it("keeps refused updates with their reason, apart from the log", () => {
    const store = open();
    store.quarantine("team", bytes(6, 6, 6), "removes: entries can only be added");
    store.quarantine("team", bytes(7), "too large");
    expect(store.quarantined()).toEqual([
      { document: "team", update: bytes(6, 6, 6), reason: "removes: entries can only be added" },
      { document: "team", update: bytes(7), reason: "too large" },
    ]);
    expect(store.load("team")).toEqual([]);
    expect(store.documents()).toEqual([]);
  });

  it("grows by at least what it is given, and tells its size", () => {
    const store = open();
    const empty = store.sizeBytes();
    store.append([{ document: "team", update: new Uint8Array(100_000) }]);
    const filled = store.sizeBytes();
    expect(filled - empty).toBeGreaterThanOrEqual(100_000);
    store.quarantine("team", new Uint8Array(100_000), "too large");
    expect(store.sizeBytes() - filled).toBeGreaterThanOrEqual(100_000);
  });

  it("does nothing any more once it is closed, but may be closed twice", () => {
    const store = open();
    store.close();
    store.close();
    expect(() => store.append([entry("team", 1)])).toThrow("closed");
    expect(() => store.load("team")).toThrow("closed");
    expect(() => store.documents()).toThrow("closed");
    expect(() => store.positions()).toThrow("closed");
    expect(() => store.extent("team")).toThrow("closed");
    expect(() => store.draftSnapshot("team")).toThrow("closed");
    expect(() => store.giveBackSpace()).toThrow("closed");
    expect(() => store.quarantine("team", bytes(1), "why")).toThrow("closed");
    expect(() => store.quarantined()).toThrow("closed");
    expect(() => store.sizeBytes()).toThrow("closed");
  });
});

describe("the update store in SQLite", () => {
  it("still has everything after closing and opening", () => {
    const folder = freshFolder();
    const first = openSqlite(folder);
    first.append([entry("team", 1, 2)]);
    first.quarantine("team", bytes(3), "why");
    first.close();
    const second = openSqlite(folder);
    expect(second.load("team")).toEqual([bytes(1, 2)]);
    expect(second.positions()).toEqual(new Map([["team", 1]]));
    expect(second.quarantined()).toHaveLength(1);
  });

  it("takes all entries of a batch or none", () => {
    const store = openSqlite();
    store.append([entry("team", 1)]);
    const unwritable = { document: null as unknown as string, update: bytes(3) };
    expect(() => store.append([entry("team", 2), unwritable])).toThrow("NOT NULL");
    expect(store.load("team")).toEqual([bytes(1)]);
    expect(store.positions()).toEqual(new Map([["team", 1]]));
    store.append([entry("team", 4)]);
    expect(store.load("team")).toEqual([bytes(1), bytes(4)]);
    expect(store.positions()).toEqual(new Map([["team", 2]]));
  });

  it("makes the folder when it is missing", () => {
    const folder = join(freshFolder(), "deep", "data");
    openSqlite(folder).append([entry("team", 1)]);
  });

  it("is one server's alone, until that closes it", () => {
    const folder = freshFolder();
    const first = openSqlite(folder);
    expect(() => openSqliteStore(folder)).toThrow(`The data folder ${folder} is in use by another server.`);
    first.close();
    openSqlite(folder);
  });

  it("refuses a log of a newer version and leaves it as it is", () => {
    const folder = freshFolder();
    const newer = new Database(join(folder, "log.db"));
    newer.exec("PRAGMA user_version = 99");
    newer.close();
    const before = readFileSync(join(folder, "log.db"));
    expect(() => openSqliteStore(folder)).toThrow("was written by a newer version of this program (99; this one knows");
    expect(() => openSqliteStore(folder)).not.toThrow("in use");
    expect(readFileSync(join(folder, "log.db")).length).toBe(before.length);
  });

  it("says in one sentence that a folder or log cannot be used", () => {
    const folder = freshFolder();
    writeFileSync(join(folder, "log.db"), "This is no database. ".repeat(200));
    expect(() => openSqliteStore(folder)).toThrow(/^The log in .* cannot be opened: .*not a database.*\.$/);
    writeFileSync(join(folder, "file"), "");
    expect(() => openSqliteStore(join(folder, "file"))).toThrow(/^The data folder .* cannot be used: .*\.$/);
  });
});
