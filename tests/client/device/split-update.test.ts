import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { splitUpdate } from "#client/device/storage/split-update.ts";
import { createChance } from "#tests/simulation/chance.ts";

/** Devices write in batches and meet now and then; entries go anywhere, as hostile ones may. */
function history(seed: number, batches: number, mostInOne: number): Uint8Array {
  const chance = createChance(seed);
  const writers = [11, 7, 900_001].map((clientID) => Object.assign(new Y.Doc(), { clientID }));
  for (let batch = 0; batch < batches; batch++) {
    const writer = chance.one(writers);
    const records = writer.getArray("records");
    const at = chance.happens(0.8) ? records.length : chance.whole(0, records.length);
    records.insert(
      at,
      Array.from({ length: chance.whole(1, mostInOne) }, (_, index) => ({ id: `${batch}-${index}` })),
    );
    if (chance.happens(0.3)) {
      const other = chance.one(writers);
      if (other !== writer) Y.applyUpdate(writer, Y.encodeStateAsUpdate(other));
    }
  }
  return Y.mergeUpdates(writers.map((writer) => Y.encodeStateAsUpdate(writer)));
}

function read(updates: readonly Uint8Array[]): Y.Doc {
  const ydoc = new Y.Doc();
  for (const update of updates) {
    Y.applyUpdate(ydoc, update);
    expect(ydoc.store.pendingStructs).toBeNull();
  }
  return ydoc;
}

describe("an update in parts", () => {
  it("is read as the same document, each part without waiting for a later one", () => {
    let mostParts = 0;
    fc.assert(
      fc.property(
        fc.integer(),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 500 }),
        (seed, batches, most) => {
          const whole = history(seed, batches, most);
          const parts = splitUpdate(whole);
          mostParts = Math.max(mostParts, parts.length);
          const [one, other] = [read([whole]), read(parts)];
          expect(Y.encodeStateVector(other)).toEqual(Y.encodeStateVector(one));
          expect(other.getArray("records").toJSON()).toEqual(one.getArray("records").toJSON());
          // What two devices have of each other must be the same to the byte, or they would go on without end.
          expect(Y.encodeStateAsUpdate(other)).toEqual(Y.encodeStateAsUpdate(one));
        },
      ),
      { numRuns: 20 },
    );
    expect(mostParts).toBeGreaterThan(5);
  });

  it("has no part of more than 400 entries, and no more than 60 parts of a long one", () => {
    const ydoc = new Y.Doc();
    ydoc.getArray("records").push(Array.from({ length: 2600 }, (_, index) => index));
    const sizes = splitUpdate(Y.encodeStateAsUpdate(ydoc)).map((part) => Y.decodeUpdate(part).structs[0]?.length);
    expect(sizes).toEqual([400, 400, 400, 400, 400, 400, 200]);
    ydoc.getArray("records").push(Array.from({ length: 60_000 }, (_, index) => index));
    expect(splitUpdate(Y.encodeStateAsUpdate(ydoc))).toHaveLength(60);
  });

  it.each([
    ["has something deleted", (ydoc: Y.Doc) => ydoc.getArray("records").delete(3)],
    ["holds a map", (ydoc: Y.Doc) => void ydoc.getMap("other").set("key", 1)],
    ["holds a nested type", (ydoc: Y.Doc) => ydoc.getArray("records").push([new Y.Map()])],
  ])("stays whole where it %s", (_what, change) => {
    const ydoc = new Y.Doc();
    ydoc.getArray("records").push(Array.from({ length: 1000 }, (_, index) => index));
    change(ydoc);
    const update = Y.encodeStateAsUpdate(ydoc);
    expect(splitUpdate(update)).toEqual([update]);
  });

  it("stays whole where it lacks what it stands behind", () => {
    const ydoc = new Y.Doc();
    ydoc.getArray("records").push([1]);
    const before = Y.encodeStateVector(ydoc);
    ydoc.getArray("records").push(Array.from({ length: 1000 }, (_, index) => index));
    const update = Y.encodeStateAsUpdate(ydoc, before);
    expect(splitUpdate(update)).toEqual([update]);
  });
});
