import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import { findUnplaceable, type Run } from "#core/ledger/update-order.ts";
import { numbersOf, rawRecord } from "./ledger-fixture.ts";

function documentWith(clientId: number, ...numbers: number[]): Y.Doc {
  const ydoc = new Y.Doc();
  ydoc.clientID = clientId;
  for (const n of numbers) ydoc.getArray("records").push([rawRecord(n)]);
  return ydoc;
}

function updateOf(act: (ydoc: Y.Doc) => void, ydoc = documentWith(7)): Uint8Array {
  const before = Y.encodeStateVector(ydoc);
  act(ydoc);
  return Y.encodeStateAsUpdate(ydoc, before);
}

function copyOf(ydoc: Y.Doc): Y.Doc {
  const copy = new Y.Doc();
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(ydoc));
  return copy;
}

function refusal(update: Uint8Array, ydoc = new Y.Doc(), options = {}): string {
  const before = Y.encodeStateAsUpdate(ydoc);
  const inspection = inspectUpdate(update, ydoc, options);
  expect(Y.encodeStateAsUpdate(ydoc)).toEqual(before);
  if (inspection.ok) throw new Error("The update was not refused.");
  expect(inspection.problem.sentence).toMatch(/^[A-Z].*\.$/);
  return inspection.problem.type;
}

const records = (ydoc: Y.Doc) => ydoc.getArray<unknown>("records");

describe("updates that are let through", () => {
  it("takes additions to the records, and names those that are new", () => {
    const server = documentWith(1, 1, 2);
    const laptop = copyOf(server);
    const update = updateOf((ydoc) => records(ydoc).push([rawRecord(3), rawRecord(4)]), laptop);
    const inspection = inspectUpdate(update, server);
    expect(inspection.ok && numbersOf(inspection.records)).toEqual([3, 4]);
  });

  it("takes an update that is there already, wholly or in part, and names only what is new", () => {
    const server = documentWith(1, 1, 2);
    const laptop = copyOf(server);
    laptop.clientID = 9;
    const whole = Y.encodeStateAsUpdate(server);
    expect(inspectUpdate(whole, server)).toEqual({ ok: true, records: [], isNew: false });
    records(laptop).push([rawRecord(3)]);
    const inspection = inspectUpdate(Y.encodeStateAsUpdate(laptop), server);
    expect(inspection.ok && numbersOf(inspection.records)).toEqual([3]);
    expect(inspection).toMatchObject({ isNew: false });
  });

  it("takes an empty update", () => {
    expect(inspectUpdate(Y.encodeStateAsUpdate(new Y.Doc()), new Y.Doc())).toEqual({
      ok: true,
      records: [],
      isNew: false,
    });
  });

  it("takes whatever honest devices exchange in any order they can apply it, whole and at once", () => {
    const acts = fc.array(fc.tuple(fc.boolean(), fc.nat({ max: 2 }), fc.nat({ max: 2 })), { maxLength: 25 });
    fc.assert(
      fc.property(acts, (script) => {
        const devices = [1, 2, 3].map((clientId) => documentWith(clientId));
        let n = 0;
        for (const [sends, at, to] of script) {
          const [from, target] = [devices[at] as Y.Doc, devices[to] as Y.Doc];
          if (!sends) records(from).push([rawRecord(++n)]);
          else {
            const sendsAll = (at + to) % 2 === 1;
            const update = Y.encodeStateAsUpdate(from, sendsAll ? undefined : Y.encodeStateVector(target));
            const inspection = inspectUpdate(update, target);
            const before = records(target).length;
            Y.applyUpdate(target, update);
            const added = records(target).length - before;
            expect(inspection.ok && inspection.records.length).toBe(added);
            const sent = Y.decodeUpdate(update).structs.reduce((sum, { length }) => sum + length, 0);
            expect(inspection.ok && inspection.isNew).toBe(added > 0 && added === sent);
          }
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe("updates that are refused", () => {
  const nested = (ydoc: Y.Doc) => records(ydoc).push([new Y.Map([["a", 1]])]);

  it.each([
    ["a text beside the records", "not records", updateOf((ydoc) => ydoc.getText("notes").insert(0, "hello"))],
    ["another array", "elsewhere", updateOf((ydoc) => ydoc.getArray("other").push([rawRecord(1)]))],
    ["a key in a map of that name", "elsewhere", updateOf((ydoc) => ydoc.getMap("records").set("a", rawRecord(1)))],
    ["a shared type among the records", "not records", updateOf(nested)],
    [
      "something inside a shared type",
      "not records",
      updateOf((ydoc) => {
        nested(ydoc);
        (records(ydoc).get(0) as Y.Map<unknown>).set("b", 1);
      }),
    ],
    ["a document among the records", "not records", updateOf((ydoc) => records(ydoc).push([new Y.Doc()]))],
    ["bytes among the records", "not records", updateOf((ydoc) => records(ydoc).push([new Uint8Array([1])]))],
    [
      "a removal together with what it removes",
      "removes",
      updateOf((ydoc) => {
        records(ydoc).push([rawRecord(1)]);
        records(ydoc).delete(0, 1);
      }),
    ],
    ["a broken envelope", "bad record", updateOf((ydoc) => records(ydoc).push([{ ...rawRecord(1), by: 7 }]))],
    [
      "a record of more than 16 KiB",
      "bad record",
      updateOf((ydoc) => records(ydoc).push([rawRecord(1, { value: "x".repeat(17_000) })])),
    ],
    ["something that is no record", "bad record", updateOf((ydoc) => records(ydoc).push([null]))],
    [
      "one bad record among good ones",
      "bad record",
      updateOf((ydoc) => records(ydoc).push([rawRecord(1), { a: 1 }, rawRecord(2)])),
    ],
  ])("refuses %s", (_, type, update) => {
    expect(refusal(update)).toBe(type);
  });

  it("refuses the removal of what is there", () => {
    const server = documentWith(1, 1, 2);
    const laptop = copyOf(server);
    const removal = updateOf((ydoc) => records(ydoc).delete(0, 2), laptop);
    expect(refusal(removal, server)).toBe("removes");
  });

  it("refuses what stands beside something that is not a record in the document", () => {
    const server = documentWith(1);
    server.getArray("other").push([1]);
    const laptop = copyOf(server);
    expect(
      refusal(
        updateOf((ydoc) => ydoc.getArray("other").push([rawRecord(1)]), laptop),
        server,
      ),
    ).toBe("elsewhere");
  });

  it("refuses more bytes than are allowed before it looks at them", () => {
    const update = updateOf((ydoc) => records(ydoc).push([rawRecord(1)]));
    expect(refusal(update, new Y.Doc(), { maximumBytes: update.length - 1 })).toBe("too large");
    expect(inspectUpdate(update, new Y.Doc(), { maximumBytes: update.length }).ok).toBe(true);
    expect(refusal(new Uint8Array(1024 * 1024 + 1))).toBe("too large");
  });

  it("calls a gap what builds on entries that are not here, and takes it once they are", () => {
    const laptop = documentWith(5);
    const first = updateOf((ydoc) => records(ydoc).push([rawRecord(1)]), laptop);
    const second = updateOf((ydoc) => records(ydoc).push([rawRecord(2)]), laptop);
    const phone = copyOf(laptop);
    const reply = updateOf((ydoc) => records(ydoc).push([rawRecord(3)]), phone);
    const server = new Y.Doc();
    for (const update of [second, reply]) expect(refusal(update, server)).toBe("gap");
    for (const update of [first, second, reply]) {
      expect(inspectUpdate(update, server).ok).toBe(true);
      Y.applyUpdate(server, update);
    }
    expect(records(server).length).toBe(3);
    expect(server.store.pendingStructs).toBeNull();
    expect(inspectUpdate(Y.mergeUpdates([reply, second, first]), new Y.Doc()).ok).toBe(true);
    expect(refusal(Y.mergeUpdates([reply, first]))).toBe("gap");
  });

  it("refuses an update that says something else under a client number in use", () => {
    const server = documentWith(1, 1, 2);
    expect(refusal(Y.encodeStateAsUpdate(documentWith(1, 1, 3)), server)).toBe("contradicts");
    expect(refusal(Y.encodeStateAsUpdate(documentWith(1, 1, 3, 4)), server)).toBe("contradicts");
  });

  it("refuses an entry without length, which would break the document's search", () => {
    const name = [...new TextEncoder().encode("records")];
    expect(refusal(Uint8Array.from([1, 1, 1, 0, 8, 1, name.length, ...name, 0, 0]))).toBe("not records");
  });

  it("refuses short updates that claim counts they do not hold", () => {
    const huge = [0xff, 0xff, 0xff, 0xff, 0x0f];
    for (const bytes of [[1, ...huge, 1], [...huge, 1, 1], [1, 1, 1, 0, 8, ...huge], [0, ...huge], [0], []]) {
      expect(refusal(Uint8Array.from(bytes))).toBe("undecodable");
    }
  });

  it("refuses an update that names a client twice, of which applying would lose the first", () => {
    const [one, other] = [documentWith(3, 1), documentWith(3, 1, 2)].map((ydoc) => Y.encodeStateAsUpdate(ydoc));
    const blocks = [one, other].map((update) => [...(update as Uint8Array)].slice(1, -1));
    const twice = Uint8Array.from([2, ...blocks.flat(), 0]);
    expect(Y.decodeUpdate(twice).structs.length).toBeGreaterThan(1);
    expect(refusal(twice)).toBe("undecodable");
  });

  it("never throws, and what it lets through applies whole and adds only records", () => {
    const server = documentWith(1, 1, 2);
    const honest = updateOf((ydoc) => records(ydoc).push([rawRecord(3)]), copyOf(server));
    const spoilt = fc
      .array(fc.tuple(fc.nat({ max: honest.length - 1 }), fc.nat({ max: 255 })), { minLength: 1, maxLength: 6 })
      .map((changes) => {
        const bytes = Uint8Array.from(honest);
        for (const [at, byte] of changes) bytes[at] = byte;
        return bytes;
      });
    let passed = 0;
    fc.assert(
      fc.property(fc.oneof(spoilt, fc.uint8Array({ maxLength: 40 })), (update) => {
        const before = Y.encodeStateAsUpdate(server);
        const inspection = inspectUpdate(update, server);
        expect(Y.encodeStateAsUpdate(server)).toEqual(before);
        if (!inspection.ok) return;
        passed++;
        const target = copyOf(server);
        Y.applyUpdate(target, update);
        expect(records(target).length).toBe(2 + inspection.records.length);
        expect(target.store.pendingStructs).toBeNull();
        expect(records(target).toArray()).toEqual(
          expect.arrayContaining([...records(server).toArray(), ...inspection.records]),
        );
        expect([...target.share.keys()]).toEqual(["records"]);
      }),
      { numRuns: 3000 },
    );
    expect(passed).toBeGreaterThan(0);
  });
});

describe("the order of an update", () => {
  const at = (client: number, clock: number) => ({ client, clock });
  const run = (client: number, clock: number, length: number, ...needs: Run["needs"]): Run => ({
    client,
    clock,
    length,
    needs,
  });
  const nothingKnown = () => 0;

  it.each([
    [
      "runs that need each other crosswise but in turn",
      [run(1, 0, 1), run(1, 1, 1, at(2, 0)), run(2, 0, 1, at(1, 0))],
      undefined,
    ],
    ["two runs that wait for each other", [run(1, 0, 1, at(2, 0)), run(2, 0, 1, at(1, 0))], 0],
    ["a run that waits for itself", [run(1, 0, 3, at(1, 1))], 0],
    ["a run that waits for a later one of its client", [run(1, 0, 1, at(1, 1)), run(1, 1, 1)], 0],
    ["a run after a hole", [run(1, 0, 1), run(1, 2, 1)], 1],
    ["a run that needs what nobody has", [run(1, 0, 1, at(2, 5))], 0],
    ["a need in the middle of a longer run", [run(1, 0, 1, at(2, 3)), run(2, 0, 5)], undefined],
  ])("judges %s", (_, runs, unplaceable) => {
    const expected = unplaceable === undefined ? undefined : runs[unplaceable];
    expect(findUnplaceable(runs, nothingKnown)).toBe(expected);
  });

  it("counts what is known already", () => {
    expect(findUnplaceable([run(1, 4, 2, at(2, 9))], (client) => (client === 1 ? 5 : 10))).toBeUndefined();
    expect(findUnplaceable([run(1, 4, 2, at(2, 9))], (client) => (client === 1 ? 5 : 9))).toBeDefined();
    expect(findUnplaceable([run(1, 3, 4, at(1, 4))], () => 5)).toBeDefined();
  });
});
