import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { createContentDigest, reaches } from "#core/ledger/content-digest.ts";

/** Clients write numbers by turns, and see everything of each other or nothing. */
const writing = fc.array(fc.record({ client: fc.integer({ min: 1, max: 3 }), value: fc.nat({ max: 5 }) }), {
  maxLength: 25,
});

function written(turns: readonly { readonly client: number; readonly value: number }[]): Y.Doc {
  const all = new Y.Doc();
  for (const { client, value } of turns) {
    const writer = new Y.Doc();
    Y.applyUpdate(writer, Y.encodeStateAsUpdate(all));
    // Set afterwards: Yjs changes its number when it hears of entries under it.
    writer.clientID = client;
    writer.getArray("records").push([{ id: `record-${value}`, value }]);
    Y.applyUpdate(all, Y.encodeStateAsUpdate(writer));
    writer.destroy();
  }
  return all;
}

function clocksOf(ydoc: Y.Doc): ReadonlyMap<number, number> {
  return Y.decodeStateVector(Y.encodeStateVector(ydoc));
}

/**
 * The construction by the book (Bellare and Micciancio 1997, AdHash), with Node's SHA-256 and big integers: the sum of
 * the hashes of the distinct contents modulo 2^256.
 */
function byTheBook(contents: readonly unknown[]): string {
  const texts = new Set(contents.map((content) => JSON.stringify(content)));
  const hashes = [...texts].map((text) => BigInt(`0x${createHash("sha256").update(text).digest("hex")}`));
  return (hashes.reduce((sum, hash) => sum + hash, 0n) % 2n ** 256n).toString(16).padStart(64, "0");
}

const hex = (bytes: Uint8Array | undefined) => bytes && Buffer.from(bytes).toString("hex");

describe("the digest of a document's content", () => {
  it("is the sum of the hashes of its distinct entries, computed by other means", () => {
    fc.assert(
      fc.property(writing, (turns) => {
        const ydoc = written(turns);
        expect(hex(createContentDigest(ydoc).at(clocksOf(ydoc)))).toBe(
          byTheBook(turns.map(({ value }) => ({ id: `record-${value}`, value }))),
        );
      }),
    );
  });

  it("below earlier clocks is what it was at that time", () => {
    fc.assert(
      fc.property(writing, fc.nat({ max: 25 }), (turns, length) => {
        const before = written(turns.slice(0, length));
        const after = written(turns);
        expect(hex(createContentDigest(after).at(clocksOf(before)))).toBe(
          hex(createContentDigest(before).at(clocksOf(before))),
        );
      }),
    );
  });

  it("is the same whether asked on the way or only at the end", () => {
    const ydoc = written([{ client: 1, value: 1 }]);
    const followed = createContentDigest(ydoc);
    followed.at(clocksOf(ydoc));
    ydoc.getArray("records").push([{ id: "a" }, { id: "b" }]);
    ydoc.getArray("records").push([{ id: "c" }]);
    expect(hex(followed.at(clocksOf(ydoc)))).toBe(hex(createContentDigest(ydoc).at(clocksOf(ydoc))));
    expect(followed.size()).toBe(4);
  });

  it("differs where one client number was used twice, though the clocks are the same", () => {
    const [one, other] = [new Y.Doc(), new Y.Doc()];
    one.clientID = 5;
    other.clientID = 5;
    one.getArray("records").push([{ id: "one" }]);
    other.getArray("records").push([{ id: "other" }]);
    expect(clocksOf(one)).toEqual(clocksOf(other));
    expect(hex(createContentDigest(one).at(clocksOf(one)))).not.toBe(
      hex(createContentDigest(other).at(clocksOf(other))),
    );
  });

  it("does not mind the order of an entry's keys", () => {
    const [one, other] = [new Y.Doc(), new Y.Doc()];
    one.getArray("records").push([{ id: "a", value: 1 }]);
    other.getArray("records").push([{ value: 1, id: "a" }]);
    expect(hex(createContentDigest(one).at(clocksOf(one)))).toBe(hex(createContentDigest(other).at(clocksOf(other))));
  });

  it("is not known below clocks that the document does not reach", () => {
    const ydoc = written([{ client: 1, value: 1 }]);
    expect(createContentDigest(ydoc).at(new Map([[1, 2]]))).toBeUndefined();
    expect(createContentDigest(ydoc).at(new Map([[2, 1]]))).toBeUndefined();
    expect(createContentDigest(ydoc).at(new Map([[2, 0]]))).toBeDefined();
  });

  it("is the same when it was worked out ahead, some entries at a time, while more came in", () => {
    fc.assert(
      fc.property(writing, writing, fc.integer({ min: 1, max: 6 }), (turns, later, most) => {
        const ydoc = written(turns);
        const digest = createContentDigest(ydoc);
        let rounds = 0;
        for (; !digest.workAhead(most); rounds++) {
          if (rounds === 1) Y.applyUpdate(ydoc, Y.encodeStateAsUpdate(written(later)));
        }
        expect(rounds).toBeGreaterThanOrEqual(Math.ceil(turns.length / most) - 1);
        expect(digest.size()).toBe(
          Y.decodeUpdate(Y.encodeStateAsUpdate(ydoc)).structs.reduce((n, s) => n + s.length, 0),
        );
        expect(hex(digest.at(clocksOf(ydoc)))).toBe(hex(createContentDigest(ydoc).at(clocksOf(ydoc))));
      }),
    );
  });

  it("passes over what a hostile peer puts beside the records", () => {
    const ydoc = new Y.Doc();
    ydoc.getArray("records").push([{ id: "a" }]);
    ydoc.getText("other").insert(0, "text");
    ydoc.getArray("records").push([new Y.Map(), { id: "b" }]);
    ydoc.getArray("records").delete(0, 1);
    expect(hex(createContentDigest(ydoc).at(clocksOf(ydoc)))).toBe(byTheBook([{ id: "b" }]));
  });
});

describe("the places of a record", () => {
  it("are all where it stands, and clocks reach it when one of them lies below", () => {
    const digest = createContentDigest(
      written([
        { client: 1, value: 4 },
        { client: 2, value: 3 },
        { client: 2, value: 4 },
      ]),
    );
    expect(digest.positionsOf("record-4")).toEqual([
      { client: 1, clock: 0 },
      { client: 2, clock: 1 },
    ]);
    expect(digest.positionsOf("record-9")).toEqual([]);
    expect(reaches(new Map([[2, 2]]), digest.positionsOf("record-4"))).toBe(true);
    expect(reaches(new Map([[2, 1]]), digest.positionsOf("record-4"))).toBe(false);
    expect(reaches(new Map(), digest.positionsOf("record-9"))).toBe(false);
  });
});
