import { join } from "node:path";
import Database from "libsql";
import { describe, expect, it, onTestFinished } from "vitest";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import type { SnapshotDraft, UpdateStore } from "#server/store/update-store.ts";
import { freshFolder } from "#tests/sync-server/server-fixture.ts";

const bytes = (...values: number[]) => new Uint8Array(values);
const entry = (document: string, ...values: number[]) => ({ document, update: bytes(...values) });

function openSqlite(folder = freshFolder()): UpdateStore {
  const store = openSqliteStore(folder);
  onTestFinished(() => store.close());
  return store;
}

/** Looks into the tables of a log, and changes them as no program of ours does. */
function withTables<Result>(folder: string, act: (database: Database.Database) => Result): Result {
  const database = new Database(join(folder, "log.db"));
  try {
    return act(database);
  } finally {
    database.close();
  }
}

function partsIn(folder: string): unknown[] {
  return withTables(folder, (database) => database.prepare("SELECT id FROM snapshot_part").all());
}

function readAll(draft: SnapshotDraft): Uint8Array[] {
  const all: Uint8Array[] = [];
  for (let piece = draft.read(); piece.length > 0; piece = draft.read()) all.push(...piece);
  return all;
}

function readBackAll(draft: SnapshotDraft): Uint8Array[] {
  const all: Uint8Array[] = [];
  for (let part = draft.readBack(); part !== undefined; part = draft.readBack()) all.push(part);
  return all;
}

/** A document with the updates 1, 2, 3, of which a snapshot is adopted that says 123. */
function withSnapshot(store: UpdateStore): UpdateStore {
  store.append([entry("team", 1), entry("rider/a/2031", 9), entry("team", 2), entry("team", 3)]);
  const draft = store.draftSnapshot("team");
  draft.write(bytes(12));
  draft.write(bytes(3, 3));
  draft.adopt();
  return store;
}

describe.each([
  ["in memory", createMemoryStore],
  ["in SQLite", openSqlite],
])("a snapshot's draft %s", (_name, open) => {
  it("reads the updates of its document in their order, a piece at a time, without those that come later", () => {
    const store = open();
    const updates = Array.from({ length: 1000 }, (_, n) => bytes(n % 256, n >> 8));
    store.append(updates.flatMap((update) => [{ document: "team", update }, entry("rider/a/2031", 7)]));
    const draft = store.draftSnapshot("team");
    expect(draft.position).toBe(1999);
    const first = draft.read();
    expect(first.length).toBeLessThan(1000);
    store.append([entry("team", 5)]);
    expect([...first, ...readAll(draft)]).toEqual(updates);
    expect(draft.read()).toEqual([]);
  });

  it("puts its parts into the place of the updates when it is adopted, and leaves later ones and other documents", () => {
    const store = open();
    store.append([entry("team", 1), entry("rider/a/2031", 9), entry("team", 2)]);
    const draft = store.draftSnapshot("team");
    draft.write(bytes(12));
    draft.write(bytes());
    store.append([entry("team", 3)]);
    expect(readBackAll(draft)).toEqual([bytes(12), bytes()]);
    expect(store.load("team")).toEqual([bytes(1), bytes(2), bytes(3)]);
    draft.adopt();
    expect(store.load("team")).toEqual([bytes(12), bytes(), bytes(3)]);
    expect(store.load("rider/a/2031")).toEqual([bytes(9)]);
    expect(store.extent("team")).toEqual({ rows: 1, rowBytes: 1, snapshotBytes: 1 });
  });

  it("keeps the numbers of updates going, also when all of them have gone into it", () => {
    const store = withSnapshot(open());
    expect(store.documents()).toEqual(["rider/a/2031", "team"]);
    expect(store.positions().get("team")).toBe(4);
    store.append([entry("team", 4)]);
    expect(store.positions().get("team")).toBe(5);
  });

  it("reads the snapshot before it, then the updates since, and takes its place", () => {
    const store = withSnapshot(open());
    store.append([entry("team", 4)]);
    expect(store.extent("team")).toEqual({ rows: 1, rowBytes: 1, snapshotBytes: 3 });
    const draft = store.draftSnapshot("team");
    expect(readAll(draft)).toEqual([bytes(12), bytes(3, 3), bytes(4)]);
    draft.write(bytes(1, 2, 3, 4));
    draft.adopt();
    expect(store.load("team")).toEqual([bytes(1, 2, 3, 4)]);
    expect(store.extent("team")).toEqual({ rows: 0, rowBytes: 0, snapshotBytes: 4 });
  });

  it("is no part of the log until it is adopted, and leaves nothing when it is discarded", () => {
    const store = withSnapshot(open());
    const draft = store.draftSnapshot("team");
    draft.write(bytes(66));
    expect(store.load("team")).toEqual([bytes(12), bytes(3, 3)]);
    draft.discard();
    draft.discard();
    expect(store.load("team")).toEqual([bytes(12), bytes(3, 3)]);
    for (const use of [draft.read, () => draft.write(bytes(1)), draft.readBack, draft.adopt]) {
      expect(use).toThrow("draft has ended");
    }
  });

  it("ends when another is begun, of whichever document", () => {
    const store = withSnapshot(open());
    const first = store.draftSnapshot("team");
    first.write(bytes(66));
    const second = store.draftSnapshot("rider/a/2031");
    expect(first.adopt).toThrow("draft has ended");
    second.write(bytes(99));
    expect(readBackAll(second)).toEqual([bytes(99)]);
    second.adopt();
    second.discard();
    expect(store.load("team")).toEqual([bytes(12), bytes(3, 3)]);
    expect(store.load("rider/a/2031")).toEqual([bytes(99)]);
  });

  it("does nothing any more once the log is closed", () => {
    const store = withSnapshot(open());
    const draft = store.draftSnapshot("team");
    store.close();
    for (const use of [draft.read, () => draft.write(bytes(1)), draft.readBack, draft.adopt]) expect(use).toThrow();
    draft.discard();
  });

  it("tells an extent of nothing for a document that was never written", () => {
    expect(open().extent("team")).toEqual({ rows: 0, rowBytes: 0, snapshotBytes: 0 });
  });
});

describe("a snapshot in SQLite", () => {
  it("is still there after closing and opening, with its numbers and extent", () => {
    const folder = freshFolder();
    const first = withSnapshot(openSqlite(folder));
    first.append([entry("team", 4)]);
    first.close();
    const second = openSqlite(folder);
    expect(second.load("team")).toEqual([bytes(12), bytes(3, 3), bytes(4)]);
    expect(second.extent("team")).toEqual({ rows: 1, rowBytes: 1, snapshotBytes: 3 });
    expect([...second.positions()].sort()).toEqual([
      ["rider/a/2031", 2],
      ["team", 5],
    ]);
  });

  it("leaves nothing of a draft that the server died over", () => {
    const folder = freshFolder();
    withSnapshot(openSqlite(folder)).close();
    withTables(folder, (database) => {
      database.exec("INSERT INTO snapshot_part (snapshot, bytes) VALUES (2, x'4242')");
    });
    const store = openSqlite(folder);
    expect(partsIn(folder)).toHaveLength(2);
    expect(store.load("team")).toEqual([bytes(12), bytes(3, 3)]);
  });

  it.each([
    ["updates are removed", "DELETE ON accepted WHEN old.id = 3"],
    ["the snapshot before it is removed", "DELETE ON snapshot_part"],
    ["it is named", "INSERT ON snapshot"],
  ])("is all or nothing on a disk that fails in the middle, when %s", (_when, event) => {
    const folder = freshFolder();
    const store = withSnapshot(openSqlite(folder));
    store.append([entry("team", 4), entry("team", 5)]);
    withTables(folder, (database) => {
      database.exec(`DELETE FROM accepted WHERE id = 2`);
      database.exec(`INSERT INTO accepted (id, document, bytes) VALUES (3, 'team', x'00')`);
      database.exec(`CREATE TRIGGER fails BEFORE ${event} BEGIN SELECT RAISE(FAIL, 'disk I/O error'); END`);
    });
    const before = store.load("team");
    const draft = store.draftSnapshot("team");
    draft.write(bytes(1, 2, 3, 4, 5));
    expect(() => draft.adopt()).toThrow("disk I/O error");
    draft.discard();
    expect(store.load("team")).toEqual(before);
    withTables(folder, (database) => database.exec("DROP TRIGGER fails"));
    store.append([entry("team", 6)]);
    const again = store.draftSnapshot("team");
    again.write(bytes(123));
    again.adopt();
    expect(store.load("team")).toEqual([bytes(123)]);
    expect(partsIn(folder)).toHaveLength(1);
  });

  it("gives back the space of the updates that it took in, a piece at a time", () => {
    const folder = freshFolder();
    const store = openSqlite(folder);
    store.append(Array.from({ length: 1000 }, () => ({ document: "team", update: new Uint8Array(8000) })));
    const draft = store.draftSnapshot("team");
    draft.write(bytes(1));
    draft.adopt();
    let pieces = 0;
    while (store.giveBackSpace()) pieces += 1;
    expect(pieces).toBeGreaterThan(3);
    store.close();
    expect(openSqlite(folder).sizeBytes()).toBeLessThan(200_000);
  });
});

describe("a log of version 1", () => {
  /** The tables as version 1 made them. */
  function versionOne(): string {
    const folder = freshFolder();
    withTables(folder, (database) => {
      database.exec(`
        PRAGMA journal_mode = WAL;
        CREATE TABLE accepted (id INTEGER PRIMARY KEY, document TEXT NOT NULL, bytes BLOB NOT NULL);
        CREATE INDEX accepted_by_document ON accepted (document, id);
        CREATE TABLE quarantine (
          id INTEGER PRIMARY KEY, document TEXT NOT NULL, bytes BLOB NOT NULL, reason TEXT NOT NULL,
          refused_at TEXT NOT NULL DEFAULT CURRENT_TIMESTAMP
        );
        PRAGMA user_version = 1;
        INSERT INTO accepted (document, bytes) VALUES ('team', x'01'), ('rider/a/2031', x'09'), ('team', x'02');
        INSERT INTO quarantine (document, bytes, reason) VALUES ('team', x'07', 'too large');
      `);
    });
    return folder;
  }

  it("opens with all that it holds, takes snapshots, and is of version 2 then", () => {
    const folder = versionOne();
    const store = openSqlite(folder);
    expect(store.load("team")).toEqual([bytes(1), bytes(2)]);
    expect(store.positions().get("team")).toBe(3);
    expect(store.quarantined()).toEqual([{ document: "team", update: bytes(7), reason: "too large" }]);
    const draft = store.draftSnapshot("team");
    draft.write(bytes(12));
    draft.adopt();
    store.append([entry("team", 3)]);
    expect(store.load("team")).toEqual([bytes(12), bytes(3)]);
    expect(store.giveBackSpace()).toBe(false);
    store.close();
    expect(withTables(folder, (database) => database.prepare("PRAGMA user_version").get())).toMatchObject({
      user_version: 2,
    });
  });

  it("opens also when the program died while it made the tables of version 2", () => {
    const folder = versionOne();
    withTables(folder, (database) => {
      database.exec(
        "CREATE TABLE snapshot (id INTEGER PRIMARY KEY, document TEXT NOT NULL UNIQUE, position INTEGER NOT NULL)",
      );
    });
    expect(withSnapshot(openSqlite(folder)).load("rider/a/2031")).toEqual([bytes(9), bytes(9)]);
  });
});
