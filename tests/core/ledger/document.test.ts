import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { connectDocument } from "#core/ledger/document.ts";
import { createLedger, settledValue } from "#core/ledger/ledger.ts";
import { createWriter } from "#core/ledger/write.ts";
import { everythingOf, numbersOf, paperKind, rawRecord, recordId, registry } from "./ledger-fixture.ts";

/** A device: a document, the ledger that it feeds, and a writer. All devices of a test share one sequence of ids. */
function createDevice(name: string, clientId: number, nextNumber: () => number) {
  const ydoc = new Y.Doc();
  ydoc.clientID = clientId;
  const ledger = createLedger(registry);
  const connected = connectDocument(ydoc, "team", ledger);
  const writer = createWriter({
    ledger,
    append: (record) => connected.append([record]),
    newId: () => recordId(nextNumber()),
    now: () => "2031-05-04T09:00:00Z",
    by: name,
    device: name,
    documentFor: () => "team",
  });
  return { ydoc, ledger, connected, writer };
}

type Device = ReturnType<typeof createDevice>;

function devicesOf(count: number): { devices: Device[]; number: () => number } {
  let number = 0;
  const devices = Array.from({ length: count }, (_, n) => createDevice(`device-${n}`, n + 1, () => ++number));
  return { devices, number: () => number };
}

function send(from: Device, to: Device): void {
  Y.applyUpdate(to.ydoc, Y.encodeStateAsUpdate(from.ydoc, Y.encodeStateVector(to.ydoc)));
}

function exchangeAll(devices: readonly Device[]): void {
  for (const from of devices) for (const to of devices) if (from !== to) send(from, to);
  for (const from of devices) for (const to of devices) if (from !== to) send(from, to);
}

type Step = { act: "set"; device: number; key: string; value: number } | { act: "send"; device: number; to: number };

const device = fc.integer({ min: 0, max: 2 });
const steps: fc.Arbitrary<Step[]> = fc.array(
  fc.oneof(
    fc.record({
      act: fc.constant("set" as const),
      device,
      key: fc.constantFrom("one", "two"),
      value: fc.integer({ min: 0, max: 3 }),
    }),
    fc.record({ act: fc.constant("send" as const), device, to: device }),
  ),
  { maxLength: 30 },
);

describe("devices that write apart and exchange their documents", () => {
  it("M2 M9 have every concurrent pair with different values in dispute on all sides, and the same everything", () => {
    fc.assert(
      fc.property(steps, (script) => {
        const { devices, number } = devicesOf(3);
        // The oracle knows only who had seen which write when he wrote.
        const seen = devices.map(() => new Set<number>());
        const writes: { n: number; key: string; value: number; saw: ReadonlySet<number> }[] = [];
        for (const step of script) {
          const [at, sight] = [devices[step.device], seen[step.device]];
          if (at === undefined || sight === undefined) throw new Error("no such device");
          if (step.act === "send") {
            const to = devices[step.to];
            if (to === undefined || to === at) continue;
            send(at, to);
            for (const n of sight) seen[step.to]?.add(n);
          } else {
            const { key, value } = step;
            at.writer.set(paperKind, key, value, { force: true });
            writes.push({ n: number(), key, value, saw: new Set(sight) });
            sight.add(number());
          }
        }
        exchangeAll(devices);
        for (const { ledger } of devices) {
          for (const key of ["one", "two"]) {
            const ofKey = writes.filter((write) => write.key === key);
            const open = ofKey.filter(({ n }) => !ofKey.some(({ saw }) => saw.has(n)));
            const current = ledger.current(paperKind, key);
            expect(numbersOf(ledger.heads(paperKind, key))).toEqual(open.map(({ n }) => n));
            const different = new Set(open.map(({ value }) => value)).size;
            expect(current.state).toBe(different === 0 ? "absent" : different === 1 ? "settled" : "disputed");
            if (current.state === "disputed") expect(numbersOf(current.claims)).toEqual(open.map(({ n }) => n));
            expect(ledger.history(paperKind, key)).toHaveLength(ofKey.length);
          }
          expect(everythingOf(ledger)).toEqual(everythingOf((devices[0] as Device).ledger));
        }
      }),
      { numRuns: 200 },
    );
  });

  it("M12 settle a dispute for all by one record", () => {
    const { devices } = devicesOf(2);
    const [one, other] = devices as [Device, Device];
    one.writer.set(paperKind, "one", "a");
    other.writer.set(paperKind, "one", "b");
    exchangeAll(devices);
    expect(devices.map(({ ledger }) => ledger.current(paperKind, "one").state)).toEqual(["disputed", "disputed"]);
    other.writer.resolve(paperKind, "one", "b");
    exchangeAll(devices);
    expect(devices.map(({ ledger }) => settledValue(ledger.current(paperKind, "one")))).toEqual(["b", "b"]);
  });
});

describe("a connected document", () => {
  it("feeds what is there when it is connected, and what comes later, each once", () => {
    const ydoc = new Y.Doc();
    ydoc.getArray("records").push([rawRecord(1)]);
    const ledger = createLedger(registry);
    const connected = connectDocument(ydoc, "team", ledger);
    expect(ledger.size).toBe(1);
    let told = 0;
    ledger.onChange(() => void told++);
    connected.append([rawRecord(2, { supersedes: [recordId(1)] }), rawRecord(3, { subject: "paper:two" })]);
    expect([told, ledger.size, ledger.revision]).toEqual([1, 3, 3]);
    connected.append([]);
    expect(ydoc.getArray("records").length).toBe(3);
  });

  it("puts the records of one append into one item", () => {
    const ydoc = new Y.Doc();
    const connected = connectDocument(ydoc, "team", createLedger(registry));
    let updates = 0;
    ydoc.on("update", () => void updates++);
    connected.append(Array.from({ length: 100 }, (_, n) => rawRecord(n)));
    expect(updates).toBe(1);
    expect(Y.decodeUpdate(Y.encodeStateAsUpdate(ydoc)).structs).toHaveLength(1);
  });

  it("stops when it is closed", () => {
    const ydoc = new Y.Doc();
    const ledger = createLedger(registry);
    connectDocument(ydoc, "team", ledger).close();
    ydoc.getArray("records").push([rawRecord(1)]);
    expect(ledger.size).toBe(0);
  });

  it("M7 sets shared types, documents and bytes among the records aside", () => {
    const ydoc = new Y.Doc();
    const ledger = createLedger(registry);
    connectDocument(ydoc, "team", ledger);
    const array = ydoc.getArray("records");
    array.push([new Y.Map([["a", 1]]), new Y.Doc({ guid: "inner" }), new Uint8Array([1, 2]), rawRecord(1)]);
    expect(ledger.size).toBe(4);
    expect(ledger.unreadable().map(({ raw }) => raw)).toEqual(
      expect.arrayContaining([{ nestedType: { a: 1 } }, { nestedDocument: "inner" }, new Uint8Array([1, 2])]),
    );
  });

  it("M10 keeps in the ledger what a peer deletes from the document", () => {
    const ydoc = new Y.Doc();
    const ledger = createLedger(registry);
    connectDocument(ydoc, "team", ledger).append([rawRecord(1)]);
    ydoc.getArray("records").delete(0, 1);
    expect(ledger.size).toBe(1);
  });

  it("feeds many records in turns, few at once, and none after it is closed", () => {
    const many = Array.from({ length: 1000 }, (_, index) => rawRecord(index + 1));
    const fedWithTurns = () => {
      const ydoc = new Y.Doc();
      const ledger = createLedger(registry);
      const turns: (() => void)[] = [];
      let fed = 0;
      const connected = connectDocument(ydoc, "team", ledger, {
        later: (turn) => void turns.push(turn),
        onFed: () => {
          fed += 1;
        },
      });
      const takeTurn = () => turns.shift()?.();
      return { array: ydoc.getArray("records"), ledger, connected, turns, takeTurn, fed: () => fed };
    };
    const few = fedWithTurns();
    few.array.push(many.slice(0, 3));
    expect([few.ledger.size, few.turns.length, few.connected.isFed()]).toEqual([3, 0, true]);

    const all = fedWithTurns();
    all.array.push(many);
    expect([all.ledger.size, all.connected.isFed()]).toEqual([0, false]);
    const sizes: number[] = [];
    while (all.turns.length > 0) {
      all.takeTurn();
      sizes.push(all.ledger.size);
    }
    expect(sizes.length).toBeGreaterThan(2);
    expect(sizes.at(-1)).toBe(1000);
    expect([all.connected.isFed(), all.fed()]).toEqual([true, 1]);

    const closed = fedWithTurns();
    closed.array.push(many);
    closed.takeTurn();
    const before = closed.ledger.size;
    closed.connected.close();
    closed.takeTurn();
    expect(closed.ledger.size).toBe(before);
  });
});
