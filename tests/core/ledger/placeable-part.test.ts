import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { inspectUpdate, placeablePart } from "#core/ledger/update-guard.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { rawRecord } from "./ledger-fixture.ts";

const cases = 2000;

/** What Yjs itself places of an update, tried in a copy of the document. */
function placedByYjs(update: Uint8Array, ydoc: Y.Doc): Y.Doc {
  const copy = new Y.Doc();
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(ydoc));
  Y.applyUpdate(copy, update);
  return copy;
}

describe("the part of an update that has all its predecessors", () => {
  it("is what Yjs would place of it, and passes the guard", () => {
    const chance = createChance(20_310_504);
    let parts = 0;
    for (let round = 0; round < cases; round++) {
      const writers = [1, 2, 3].map((clientID) => Object.assign(new Y.Doc(), { clientID }));
      const updates: Uint8Array[] = [];
      for (let n = 1; n <= 8; n++) {
        const writer = chance.one(writers);
        writer.once("update", (update: Uint8Array) => updates.push(update));
        const records = writer.getArray("records");
        records.insert(chance.whole(0, records.length), [rawRecord(n), rawRecord(n + 100)].slice(chance.whole(0, 1)));
        const reader = chance.one(writers);
        if (reader !== writer) Y.applyUpdate(reader, Y.encodeStateAsUpdate(writer));
      }
      const ydoc = new Y.Doc();
      for (const update of updates) {
        if (chance.happens(0.4) && inspectUpdate(update, ydoc).ok) Y.applyUpdate(ydoc, update);
      }
      const update = Y.mergeUpdates(updates.filter(() => chance.happens(0.6)).concat([new Uint8Array([0, 0])]));
      const inspection = inspectUpdate(update, ydoc);
      if (inspection.ok || inspection.problem.type !== "gap") continue;
      const expected = placedByYjs(update, ydoc);
      const part = placeablePart(update, ydoc);
      if (part !== undefined) {
        parts += 1;
        expect(inspectUpdate(part, ydoc).ok).toBe(true);
        Y.applyUpdate(ydoc, part);
      }
      expect(ydoc.store.pendingStructs).toBeNull();
      expect(Y.encodeStateVector(ydoc)).toEqual(Y.encodeStateVector(expected));
      expect(ydoc.getArray("records").toArray()).toEqual(expected.getArray("records").toArray());
    }
    expect(parts).toBeGreaterThan(50);
  });

  it("is nothing of what cannot be read", () => {
    expect(placeablePart(new Uint8Array([9, 9, 9]), new Y.Doc())).toBeUndefined();
  });
});

describe("an update with something behind its end", () => {
  it("is refused, because what is new is kept and passed on as it came", () => {
    const ydoc = new Y.Doc();
    ydoc.getArray("records").push([rawRecord(1)]);
    const update = Y.encodeStateAsUpdate(ydoc);
    expect(inspectUpdate(update, new Y.Doc())).toMatchObject({ ok: true, isNew: true });
    const padded = new Uint8Array(update.length + 1000);
    padded.set(update);
    expect(inspectUpdate(padded, new Y.Doc())).toMatchObject({ ok: false, problem: { type: "undecodable" } });
  });
});
