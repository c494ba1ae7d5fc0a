import { describe, expect, it } from "vitest";
import { createLogger } from "#server/logging.ts";
import type { Peer } from "#server/peer.ts";
import { createRooms } from "#server/rooms.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import type { LogEntry, UpdateStore } from "#server/store/update-store.ts";
import { syncUpdate } from "#server/sync-message.ts";
import { deviceDocument, numbered, numbersInLog, push, realGuard, season } from "./server-fixture.ts";

type TestPeer = Peer & { readonly sent: Uint8Array[]; readonly closings: number[] };

function peer(): TestPeer {
  const sent: Uint8Array[] = [];
  const closings: number[] = [];
  return { sent, closings, send: (message) => sent.push(message), close: (code) => closings.push(code) };
}

/** Real rooms in which the test decides when the log is written, and sees each batch before it is. */
function rooms(onAppend: (entries: readonly LogEntry[]) => void = () => {}) {
  const memory = createMemoryStore();
  const store: UpdateStore = {
    ...memory,
    append(entries) {
      onAppend(entries);
      memory.append(entries);
    },
  };
  const flushes: (() => void)[] = [];
  const made = createRooms({
    store,
    guard: realGuard,
    logger: createLogger("silent", () => {}),
    schedule: (flush) => flushes.push(flush),
  });
  const enter = (document = season) => {
    const device = peer();
    const session = made.join(document, device);
    if (session === undefined) throw new Error("The document could not be joined.");
    device.sent.length = 0;
    return { device, session, sendUpdate: (update: Uint8Array) => session.receive(syncUpdate(update)) };
  };
  return { made, store, flushes, enter };
}

describe("the order of things", () => {
  it("P7 sends nothing to anybody before the log has been written", () => {
    let sentWhileWriting: number | undefined;
    const { enter, flushes } = rooms(() => {
      sentWhileWriting = sender.device.sent.length + other.device.sent.length;
    });
    const [sender, other] = [enter(), enter()];
    sender.sendUpdate(push(deviceDocument(5), numbered(1)));
    expect(other.device.sent).toEqual([]);
    flushes.shift()?.();
    expect(sentWhileWriting).toBe(0);
    expect(sender.device.sent).toHaveLength(1);
    expect(other.device.sent).toHaveLength(2);
  });

  it("P11 writes all that has arrived in one transaction, in its order, and asks for one flush only", () => {
    const batches: string[][] = [];
    const { enter, flushes, store } = rooms((entries) => batches.push(entries.map(({ document }) => document)));
    const [anna, ben] = [enter(), enter("rider/ben/2031")];
    const [first, second] = [deviceDocument(5), deviceDocument(6)];
    anna.sendUpdate(push(first, numbered(1)));
    ben.sendUpdate(push(second, numbered(2)));
    anna.sendUpdate(push(first, numbered(3)));
    expect(flushes).toHaveLength(1);
    flushes.shift()?.();
    expect(batches).toEqual([[season, "rider/ben/2031", season]]);
    expect(numbersInLog(store)).toEqual([1, 3]);
    expect(anna.device.sent).toHaveLength(1);
    anna.sendUpdate(push(first, numbered(4)));
    expect(flushes).toHaveLength(1);
  });

  it("P11 lets a refused update in the middle of a batch stop none of the others", () => {
    const { enter, flushes, store } = rooms();
    const anna = enter();
    const document = deviceDocument(5);
    anna.sendUpdate(push(document, numbered(1)));
    anna.sendUpdate(new Uint8Array([1, 2, 3]));
    anna.sendUpdate(push(document, numbered(2)));
    flushes.shift()?.();
    expect(numbersInLog(store)).toEqual([1, 2]);
    expect(store.quarantined()).toHaveLength(1);
  });

  it("still logs an update whose device has left before the flush", () => {
    const { enter, flushes, store, made } = rooms();
    const anna = enter();
    anna.sendUpdate(push(deviceDocument(5), numbered(1)));
    made.leave(anna.device);
    flushes.shift()?.();
    expect(numbersInLog(store)).toEqual([1]);
    expect(made.status.documents).toBe(0);
  });

  it("keeps a document one while an update waits, though its sender has left and another device comes", () => {
    const { enter, flushes, made } = rooms();
    const anna = enter();
    anna.sendUpdate(push(deviceDocument(5), numbered(1)));
    made.leave(anna.device);
    const ben = enter();
    flushes.shift()?.();
    expect(ben.device.sent).toHaveLength(2);
    expect(made.status.documents).toBe(1);
  });
});

it("P8 hears nothing more in a document that it had to give up, not even what was on its way", () => {
  let isFull = true;
  const { enter, flushes, store } = rooms(() => {
    if (isFull) throw new Error("database or disk is full");
  });
  const anna = enter();
  const document = deviceDocument(5);
  anna.sendUpdate(push(document, numbered(1)));
  flushes.shift()?.();
  expect(anna.device.closings).toEqual([4500]);
  isFull = false;
  const sentBefore = anna.device.sent.length;
  anna.sendUpdate(push(document, numbered(2)));
  expect(flushes).toEqual([]);
  expect(anna.device.sent).toHaveLength(sentBefore);
  expect(store.load(season)).toEqual([]);
});
