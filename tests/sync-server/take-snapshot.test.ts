import { describe, expect, it, onTestFinished } from "vitest";
import * as Y from "yjs";
import { documentDifference } from "#server/snapshot/document-difference.ts";
import { type SnapshotOutcome, takeSnapshot } from "#server/snapshot/take-snapshot.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import type { SnapshotDraft, UpdateStore } from "#server/store/update-store.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { deviceDocument, freshFolder, numbered, numbersInLog, push, season } from "./server-fixture.ts";

function openSqlite(): UpdateStore {
  const store = openSqliteStore(freshFolder());
  onTestFinished(() => store.close());
  return store;
}

/** Updates of three devices that hear of each other now and then, so that their entries stand between each other's. */
function updatesOfThree(count: number, seed = 1): Uint8Array[] {
  const chance = createChance(seed);
  const devices = [deviceDocument(5), deviceDocument(6), deviceDocument(7)];
  const updates: Uint8Array[] = [];
  for (let n = 1; n <= count; n++) {
    const device = chance.one(devices);
    if (chance.happens(0.1)) for (const other of devices) Y.applyUpdate(device, Y.encodeStateAsUpdate(other));
    updates.push(push(device, numbered(n)));
  }
  return updates;
}

const filled = (store: UpdateStore, updates: readonly Uint8Array[]): UpdateStore => {
  store.append(updates.map((update) => ({ document: season, update })));
  return store;
};

const upTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

function finish(turns: Generator<void, SnapshotOutcome>): SnapshotOutcome {
  for (;;) {
    const turn = turns.next();
    if (turn.done === true) return turn.value;
  }
}

describe.each([
  ["in memory", createMemoryStore],
  ["in SQLite", openSqlite],
])("a snapshot %s", (_name, open) => {
  it("holds the same document as the updates that it takes the place of, and the next one too", () => {
    const updates = updatesOfThree(1200);
    const store = filled(open(), updates.slice(0, 800));
    expect(finish(takeSnapshot(store.draftSnapshot(season)))).toMatchObject({ ok: true });
    expect(store.extent(season).rows).toBe(0);
    filled(store, updates.slice(800));
    expect(finish(takeSnapshot(store.draftSnapshot(season)))).toMatchObject({ ok: true });
    expect(store.load(season).length).toBeLessThan(10);
    expect(differenceOf(documentOf(store.load(season)), documentOf(updates))).toBeUndefined();
    expect(numbersInLog(store)).toEqual(upTo(1200));
  });

  it("keeps the updates that arrive while it is being taken, at whichever turn", () => {
    const updates = updatesOfThree(700);
    const store = filled(open(), updates.slice(0, 600));
    const turns = takeSnapshot(store.draftSnapshot(season));
    let next = 600;
    for (let turn = turns.next(); turn.done !== true; turn = turns.next()) {
      if (next < 700) filled(store, updates.slice(next, next + 1));
      next += 1;
    }
    expect(next).toBeGreaterThan(605);
    expect(store.extent(season).rows).toBe(Math.min(next, 700) - 600);
    expect(numbersInLog(store)).toEqual(upTo(Math.min(next, 700)));
  });

  it.each(["read", "write", "readBack", "adopt"] as const)(
    "leaves the updates as they are when the medium fails at %s, and can be taken when it works again",
    (which) => {
      const store = filled(open(), updatesOfThree(600));
      const before = store.load(season);
      const draft = store.draftSnapshot(season);
      const failing: SnapshotDraft = {
        ...draft,
        [which]: () => {
          throw new Error("disk I/O error");
        },
      };
      expect(() => finish(takeSnapshot(failing))).toThrow("disk I/O error");
      expect(draft.adopt).toThrow("draft has ended");
      expect(store.load(season)).toEqual(before);
      expect(finish(takeSnapshot(store.draftSnapshot(season)))).toMatchObject({ ok: true });
      expect(numbersInLog(store)).toEqual(upTo(600));
    },
  );

  it("is thrown away, and the updates stay, when its bytes are spoiled on the way to the medium", () => {
    const store = filled(open(), updatesOfThree(40));
    const before = store.load(season);
    const chance = createChance(20_310_504);
    let thrownAway = 0;
    for (let time = 0; time < 150; time++) {
      const draft = store.draftSnapshot(season);
      const spoiled = { ...draft, write: (part: Uint8Array) => draft.write(spoil(part, chance.whole(0, part.length))) };
      const outcome = finish(takeSnapshot(spoiled));
      // A byte whose change changes nothing of the content does no harm.
      if (outcome.ok) {
        expect(differenceOf(documentOf(store.load(season)), documentOf(before))).toBeUndefined();
        continue;
      }
      thrownAway += 1;
      expect(numbersInLog(store)).toEqual(upTo(40));
    }
    expect(thrownAway).toBeGreaterThan(125);
  });

  it("is thrown away when a part is lost on the way", () => {
    const store = filled(open(), updatesOfThree(40));
    const draft = store.draftSnapshot(season);
    expect(finish(takeSnapshot({ ...draft, write: () => {} }))).toMatchObject({ ok: false });
    expect(store.extent(season).rows).toBe(40);
  });

  it("is not taken of updates with a gap, which stay", () => {
    const store = filled(open(), updatesOfThree(20).slice(1));
    expect(finish(takeSnapshot(store.draftSnapshot(season)))).toEqual({
      ok: false,
      reason: "something before its updates is missing",
    });
    expect(store.extent(season).rows).toBe(19);
  });
});

/** The part with one byte changed, or without its end. */
function spoil(part: Uint8Array, at: number): Uint8Array {
  const copy = part.slice();
  const byte = copy[at];
  if (byte === undefined) return copy.subarray(0, at - 1);
  copy[at] = byte ^ 0x11;
  return copy;
}

function documentOf(updates: readonly Uint8Array[]): Y.Doc {
  const document = new Y.Doc({ gc: false });
  for (const update of updates) Y.applyUpdate(document, update);
  return document;
}

function differenceOf(one: Y.Doc, other: Y.Doc): string | undefined {
  const turns = documentDifference(one, other);
  for (;;) {
    const turn = turns.next();
    if (turn.done === true) return turn.value;
  }
}

describe("the difference between two documents", () => {
  const one = () => documentOf(updatesOfThree(30));

  it("is none when only the packing or the order of arrival differs", () => {
    const inOnePiece = documentOf([Y.encodeStateAsUpdate(one())]);
    expect(differenceOf(one(), inOnePiece)).toBeUndefined();
    expect(differenceOf(documentOf(updatesOfThree(30).reverse()), inOnePiece)).toBeUndefined();
  });

  it("is named when one has more, another value, another order, a removal or something beside the records", () => {
    const records = (...values: unknown[]) => {
      const document = deviceDocument(9);
      document.getArray("records").push(values);
      return document;
    };
    const [two, removed, beside] = [records(1, 2), records(1, 2), records(1, 2)];
    expect(differenceOf(two, records(1, 2, 3))).toBe("the state vectors differ");
    expect(differenceOf(two, records(1, { a: 2 }))).toBe("the entries at place 1 differ");
    expect(differenceOf(two, records(2, 1))).toBe("the entries at place 0 differ");
    const apart = deviceDocument(9);
    apart.getArray("records").insert(0, [2]);
    apart.getArray("records").insert(0, [1]);
    expect(differenceOf(two, apart)).toBe("the entries at place 0 differ");
    removed.getArray("records").delete(0, 1);
    expect(differenceOf(two, removed)).toBe("the entries at place 0 differ");
    beside.getMap("other").set("a", 1);
    expect(differenceOf(beside, documentOf([Y.encodeStateAsUpdate(beside)]))).toBe(
      "there is something beside the records",
    );
    expect(differenceOf(documentOf(updatesOfThree(5).slice(1)), one())).toBe("something before its updates is missing");
  });
});
