/**
 * Hostile and broken updates against the guard, in numbers: what it refuses
 * changes nothing, what it takes applies whole, and nothing makes it throw.
 */
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import { type Chance, createChance } from "#tests/simulation/chance.ts";
import { rawRecord } from "./ledger-fixture.ts";

const UPDATES = 100_000;
/** Documents grow with what is taken; a new one every so often keeps the test about the guard. */
const UPDATES_A_DOCUMENT = 500;

/** Valid updates to spoil: single records, batches, a whole document, and edits that the guard must never take. */
function corpus(): readonly Uint8Array[] {
  const updates: Uint8Array[] = [];
  const ydoc = new Y.Doc();
  ydoc.clientID = 7;
  ydoc.on("update", (update: Uint8Array) => updates.push(update));
  const records = ydoc.getArray("records");
  for (let n = 1; n <= 6; n += 1) records.push([rawRecord(n)]);
  records.push([rawRecord(7), rawRecord(8), rawRecord(9)]);
  updates.push(Y.encodeStateAsUpdate(ydoc));
  records.delete(0, 1);
  ydoc.getMap("other").set("key", "value");
  ydoc.getText("records-text").insert(0, "text");
  records.push([new Y.Map()]);
  ydoc.destroy();
  return updates;
}

/** A valid update with some bytes changed, cut off, doubled or put in, or bytes that never were one. */
function spoiled(chance: Chance, valid: readonly Uint8Array[]): Uint8Array {
  if (chance.happens(0.1)) return Uint8Array.from({ length: chance.whole(0, 40) }, () => chance.whole(0, 255));
  const bytes = [...chance.one(valid)];
  for (let change = chance.whole(0, 4); change > 0; change -= 1) {
    const at = chance.whole(0, Math.max(0, bytes.length - 1));
    const kind = chance.next();
    if (kind < 0.5) bytes[at] = chance.whole(0, 255);
    else if (kind < 0.65) bytes.splice(at);
    else if (kind < 0.8) bytes.splice(at, chance.whole(1, 8));
    else if (kind < 0.9)
      bytes.splice(at, 0, ...Array.from({ length: chance.whole(1, 10) }, () => chance.whole(128, 255)));
    else bytes.splice(at, 0, ...bytes.slice(at, at + chance.whole(1, 30)));
  }
  return Uint8Array.from(bytes);
}

describe("the guard", () => {
  it(`takes whole or refuses without a trace each of ${UPDATES} spoiled updates`, () => {
    const seed = 20_261_125;
    const chance = createChance(seed);
    const valid = corpus();
    const counts = { taken: 0, refused: 0 };
    let ydoc = new Y.Doc();
    let longest = 0;
    for (let count = 0; count < UPDATES; count += 1) {
      if (count % UPDATES_A_DOCUMENT === 0) {
        ydoc.destroy();
        ydoc = new Y.Doc();
      }
      const update = spoiled(chance, valid);
      const before = ydoc.store.clients.size === 0 ? undefined : Y.encodeStateVector(ydoc);
      const start = performance.now();
      const verdict = inspectUpdate(update, ydoc);
      longest = Math.max(longest, performance.now() - start);
      if (!verdict.ok) {
        counts.refused += 1;
        const after = ydoc.store.clients.size === 0 ? undefined : Y.encodeStateVector(ydoc);
        if (String(before) !== String(after))
          expect.fail(`Seed ${seed}, update ${count}: a refused update left a trace.`);
        continue;
      }
      counts.taken += 1;
      Y.applyUpdate(ydoc, update);
      if (ydoc.store.pendingStructs !== null || ydoc.store.pendingDs !== null) {
        expect.fail(`Seed ${seed}, update ${count}: an update that was taken did not apply whole.`);
      }
    }
    process.stdout.write(
      `${UPDATES} spoiled updates: ${counts.taken} taken, ${counts.refused} refused, longest ${longest.toFixed(1)} ms\n`,
    );
    expect(counts.taken).toBeGreaterThan(UPDATES / 100);
    expect(counts.refused).toBeGreaterThan(UPDATES / 3);
  });
});
