/** A document on one device: first its local copy, then the network, and nothing twice. */
import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { describe, expect, test } from "vitest";
import * as syncProtocol from "y-protocols/sync";
import * as Y from "yjs";
import type { SocketEvents } from "#client/device/connection/socket.ts";
import { createSocketSlots } from "#client/device/connection/socket-slots.ts";
import { type DocumentReplica, openReplica } from "#client/device/document-replica.ts";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { createFakeTime } from "#tests/builders/fake-time.ts";

const record: LedgerRecord = {
  version: 1,
  id: "01ARZ3NDEKTSV4RRFFQ69G5FAV",
  subject: "venue:ridge",
  value: { name: "Kestrel Ridge" },
  supersedes: [],
  by: "larch",
  device: "laptop",
  at: "2026-05-29T09:00:00.000Z",
};

function copyWith(...records: readonly LedgerRecord[]): Uint8Array {
  const ydoc = new Y.Doc();
  ydoc.getArray("records").push([...records]);
  return Y.encodeStateAsUpdate(ydoc);
}

/** A device whose storage is read only once `read` is called, and the sockets that it opens. */
function device(storage: DeviceStorage) {
  let read = (): void => {};
  const mayRead = new Promise<void>((resolve) => {
    read = resolve;
  });
  const sockets: { readonly events: SocketEvents; readonly sent: Uint8Array[] }[] = [];
  const time = createFakeTime();
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const replica: DocumentReplica = openReplica("team", {
    ledger,
    storage: {
      ...storage,
      load: async (name) => {
        await mayRead;
        return storage.load(name);
      },
    },
    openSocket: (_document, events) => {
      const sent: Uint8Array[] = [];
      sockets.push({ events, sent });
      return { send: (message) => void sent.push(message), close: () => {} };
    },
    timers: time,
    random: () => 0.5,
    slots: createSocketSlots(),
    rankOf: () => 0,
    deviceId: "laptop",
    holder: () => undefined,
    onFacts: () => {},
  });
  return { replica, ledger, sockets, time, read: () => read() };
}

function message(write: (encoder: encoding.Encoder) => void): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, messageType.sync);
  write(encoder);
  return encoding.toUint8Array(encoder);
}

describe("a document on a device", () => {
  test("is asked of the server only when its local copy has been read, and then only for what that lacks", async () => {
    const disk = createMemoryStorage();
    await disk.append("team", copyWith(record));
    const { sockets, time, read, ledger } = device(disk);
    await time.pass(60_000);
    expect(sockets).toHaveLength(0);
    read();
    await time.pass(0);
    expect(ledger.size).toBe(1);
    sockets[0]?.events.onOpen();
    const question = decoding.createDecoder(sockets[0]?.sent[0] ?? new Uint8Array());
    decoding.readVarUint(question);
    expect(decoding.readVarUint(question)).toBe(syncProtocol.messageYjsSyncStep1);
    const vector = Y.decodeStateVector(decoding.readVarUint8Array(question));
    expect([...vector.values()]).toEqual([1]);
  });

  test("cannot be written to before that: a first record on what only seems empty would stand beside the real one", () => {
    const { replica } = device(createMemoryStorage());
    expect(() => replica.append([record])).toThrow(/before its local copy had loaded/);
  });

  test("that the server has too stands there once, and is not written again", async () => {
    const copy = copyWith(record);
    const disk = createMemoryStorage();
    await disk.append("team", copy);
    const { sockets, time, read, replica } = device(disk);
    read();
    await time.pass(0);
    sockets[0]?.events.onOpen();
    sockets[0]?.events.onMessage(message((encoder) => syncProtocol.writeUpdate(encoder, copy)));
    await time.pass(60_000);
    const here = new Y.Doc();
    Y.applyUpdate(here, replica.state());
    expect(here.getArray("records").toArray()).toEqual([record]);
    expect(await disk.load("team")).toEqual([copy]);
  });

  test("of nothing writes nothing when it is opened, neither to the disk nor to the server: a seed would come twice", async () => {
    const disk = createMemoryStorage();
    const { sockets, time, read } = device(disk);
    read();
    await time.pass(0);
    const [socket] = sockets;
    if (!socket) throw new Error("No socket was opened.");
    socket.events.onOpen();
    socket.events.onMessage(message((encoder) => syncProtocol.writeSyncStep1(encoder, new Y.Doc())));
    await time.pass(1000);
    expect(await disk.load("team")).toEqual([]);
    const updates = socket.sent.flatMap((sent) => {
      const decoder = decoding.createDecoder(sent);
      if (decoding.readVarUint(decoder) !== messageType.sync) return [];
      if (decoding.readVarUint(decoder) === syncProtocol.messageYjsSyncStep1) return [];
      return [Y.decodeUpdate(decoding.readVarUint8Array(decoder)).structs.length];
    });
    expect(updates).toEqual([0]);
  });

  test("takes nothing of an update that is cut short, not even the part that can be read, and gives its socket up", async () => {
    const { sockets, time, read, ledger } = device(createMemoryStorage());
    read();
    await time.pass(0);
    const [socket] = sockets;
    if (!socket) throw new Error("No socket was opened.");
    socket.events.onOpen();
    const cut = copyWith(record).slice(0, -1);
    // Without a look before it is applied, Yjs takes the entries and then fails on what is missing behind them.
    const careless = new Y.Doc();
    expect(() => Y.applyUpdate(careless, cut)).toThrow();
    expect(careless.getArray("records")).toHaveLength(1);
    socket.events.onMessage(message((encoder) => syncProtocol.writeUpdate(encoder, cut)));
    expect(ledger.size).toBe(0);
    await time.pass(3000);
    expect(sockets).toHaveLength(2);
  });
});
