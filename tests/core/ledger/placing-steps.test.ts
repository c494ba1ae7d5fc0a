import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { allowedSteps } from "#core/ledger/placing-steps.ts";
import { inspectUpdate, stepsToPlace } from "#core/ledger/update-guard.ts";
import { rawRecord } from "./ledger-fixture.ts";

function device(clientId: number, ...known: readonly Uint8Array[]): Y.Doc {
  const ydoc = new Y.Doc();
  ydoc.clientID = clientId;
  for (const update of known) Y.applyUpdate(ydoc, update);
  return ydoc;
}

function pushes(ydoc: Y.Doc, ...numbers: readonly number[]): Uint8Array {
  const before = Y.encodeStateVector(ydoc);
  for (const n of numbers) ydoc.getArray("records").push([rawRecord(n)]);
  return Y.encodeStateAsUpdate(ydoc, before);
}

function stepsInto(ydoc: Y.Doc, ...updates: readonly Uint8Array[]): number {
  return stepsToPlace(Y.decodeUpdate(Y.mergeUpdates([...updates])).structs as Y.Item[], ydoc);
}

describe("the steps of putting an update into a document", () => {
  it("are none for what is written at the end, however much it is", () => {
    const server = device(1);
    pushes(server, 1, 2, 3);
    const laptop = device(2, Y.encodeStateAsUpdate(server));
    expect(stepsInto(server, pushes(laptop, 4, 5, 6))).toBe(0);
    expect(stepsInto(new Y.Doc(), Y.encodeStateAsUpdate(laptop))).toBe(0);
  });

  it("are those past the lower clients and what stands behind them, where several wrote behind one entry", () => {
    const updates = [5, 3, 9].map((clientId, n) => pushes(device(clientId), n));
    expect(stepsInto(new Y.Doc(), ...updates)).toBe(0 + 1 + 2);
    // Client 4 wrote behind what client 3 wrote, so 5 and 9 pass that too.
    const more = pushes(device(4, updates[1] as Uint8Array), 7);
    expect(stepsInto(new Y.Doc(), ...updates, more)).toBe(0 + 2 + 3);
  });

  it("are counted from the middle of a run too", () => {
    const phone = device(1);
    const first = pushes(phone, 1);
    const rest = pushes(phone, 2, 3);
    const apart = pushes(device(2, first), 4);
    expect(stepsInto(new Y.Doc(), Y.encodeStateAsUpdate(phone), apart)).toBe(1);
    const server = device(9, first, rest);
    expect(stepsInto(server, apart)).toBe(1 + 1);
  });

  it("grow with a document only by what was written since, for a device that was away", () => {
    const server = device(1);
    const early = pushes(server, 1);
    for (let n = 2; n <= 50; n++) Y.applyUpdate(server, pushes(device(n, Y.encodeStateAsUpdate(server)), n));
    expect(stepsInto(server, pushes(device(99, early), 100, 101, 102))).toBe(49 + 1);
  });

  it("stay near the number of runs for a season of three devices that meet every ten records", () => {
    const devices = [device(11), device(7), device(42)];
    const server = device(1);
    for (let n = 0; n < 2100; n++) {
      pushes(devices[n % 3] as Y.Doc, n);
      if (n % 10 < 9) continue;
      for (const one of devices) Y.applyUpdate(server, Y.encodeStateAsUpdate(one, Y.encodeStateVector(server)));
      for (const one of devices) Y.applyUpdate(one, Y.encodeStateAsUpdate(server, Y.encodeStateVector(one)));
    }
    const season = Y.encodeStateAsUpdate(server);
    const { structs } = Y.decodeUpdate(season);
    expect(stepsInto(new Y.Doc(), season)).toBeLessThan(2 * structs.length);
    expect(inspectUpdate(season, new Y.Doc()).ok).toBe(true);
  });
});

describe("an update that would take a document's time", () => {
  const crowd = Array.from({ length: 10_050 }, (_, n) => pushes(device(n + 1), n));

  it("is refused, though every record in it is good", () => {
    const update = Y.mergeUpdates(crowd);
    expect(stepsInto(new Y.Doc(), update)).toBeGreaterThan(allowedSteps);
    const inspection = inspectUpdate(update, new Y.Doc(), { maximumBytes: update.length });
    expect(inspection).toMatchObject({ ok: false, problem: { type: "tangled" } });
  });

  it("is taken once it is a hundredth of it", () => {
    const update = Y.mergeUpdates(crowd.slice(0, 100));
    expect(inspectUpdate(update, new Y.Doc()).ok).toBe(true);
  });

  it("is refused too where the crowd stands in the document already", () => {
    const server = device(1_000_000);
    // From the highest client down, each takes its place at once.
    for (const update of crowd.slice(0, 8000).reverse()) Y.applyUpdate(server, update);
    const late = Y.mergeUpdates(Array.from({ length: 8000 }, (_, n) => pushes(device(n + 20_000), n + 20_000)));
    expect(inspectUpdate(late, server, { maximumBytes: late.length })).toMatchObject({ problem: { type: "tangled" } });
  });
});
