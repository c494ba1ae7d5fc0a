import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { describe, expect, test } from "vitest";
import * as syncProtocol from "y-protocols/sync";
import * as Y from "yjs";
import { connectToServer } from "#client/device/connection/connect-document.ts";
import type { Socket, SocketEvents } from "#client/device/connection/socket.ts";
import { createSocketSlots, type Rank } from "#client/device/connection/socket-slots.ts";
import { createContentDigest } from "#core/ledger/content-digest.ts";
import { encodeDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { createFakeTime } from "#tests/builders/fake-time.ts";

const FRESH_CLIENT = 77;

/** A server's end of one socket, with what the device has sent on it. */
interface Line {
  readonly events: SocketEvents;
  readonly sent: Uint8Array[];
  ended: boolean;
}

function device(random = 0.5, slots = createSocketSlots(), rank: Rank = 2) {
  const ydoc = new Y.Doc();
  const time = createFakeTime();
  const lines: Line[] = [];
  const openSocket = (_document: string, events: SocketEvents): Socket => {
    const line: Line = { events, sent: [], ended: false };
    lines.push(line);
    return {
      send: (message) => void line.sent.push(message),
      close: () => {
        line.ended = true;
      },
    };
  };
  const connection = connectToServer({
    name: "team",
    ydoc,
    digest: createContentDigest(ydoc),
    clientId: () => FRESH_CLIENT,
    openSocket,
    slots,
    rank: () => rank,
    timers: time,
    random: () => random,
    onChange: () => {},
    onProven: () => {},
    onReceipts: () => {},
  });
  const line = (): Line => {
    const last = lines.at(-1);
    if (!last) throw new Error("No socket was opened.");
    return last;
  };
  return { ydoc, time, lines, line, connection };
}

/** The numbers that a message begins with: its type, and for sync messages its kind. */
function kindOf(message: Uint8Array): readonly number[] {
  const decoder = decoding.createDecoder(message);
  return [decoding.readVarUint(decoder), decoding.readVarUint(decoder)];
}

/** What a server says that holds this document. */
function acknowledge(held: Y.Doc): Uint8Array {
  const vector = Y.encodeStateVector(held);
  const content = createContentDigest(held).at(Y.decodeStateVector(vector));
  if (!content) throw new Error("The document does not hold what it holds.");
  return encodeDurableAcknowledgement(vector, content);
}

function update(bytes: Uint8Array): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, messageType.sync);
  syncProtocol.writeUpdate(encoder, bytes);
  return encoding.toUint8Array(encoder);
}

const step1 = [messageType.sync, syncProtocol.messageYjsSyncStep1];

describe("a document's connection", () => {
  test("asks for what it lacks as soon as the socket is open, and tells what is written here", () => {
    const { line, ydoc, connection } = device();
    line().events.onOpen();
    ydoc.getArray("records").push(["a"]);
    expect(line().sent.map(kindOf)).toEqual([step1, [messageType.sync, syncProtocol.messageYjsUpdate]]);
    expect(connection.facts()).toMatchObject({ connected: true, held: undefined });
  });

  test("holds as proven what the server has acknowledged on this socket, and forgets it with the socket", async () => {
    const { line, ydoc, connection, time } = device();
    ydoc.getArray("records").push(["a"]);
    line().events.onOpen();
    line().events.onMessage(acknowledge(ydoc));
    expect(connection.facts().held?.get(ydoc.clientID)).toBe(1);
    line().events.onClose(1006);
    expect(connection.facts()).toMatchObject({ connected: false, held: undefined });
    expect(connection.facts().lastHeld?.get(ydoc.clientID)).toBe(1);
    await time.pass(0);
  });

  test("holds as last proven what was proven before this start, as long as the content agrees", () => {
    const { ydoc, connection } = device();
    ydoc.getArray("records").push(["a"]);
    const stateVector = Y.decodeStateVector(Y.encodeStateVector(ydoc));
    connection.recall({ stateVector, digest: new Uint8Array(32) });
    expect(connection.facts().lastHeld).toBeUndefined();
    connection.recall({ stateVector, digest: createContentDigest(ydoc).at(stateVector) });
    expect(connection.facts()).toMatchObject({ held: undefined, lastHeld: stateVector });
  });

  test("a socket that has gone silent is asked, and given up within 5 s to 7 s", async () => {
    const { line, lines, time, connection } = device();
    line().events.onOpen();
    await time.pass(4500);
    expect(line().sent.map(kindOf)).toEqual([step1, step1, step1]);
    await time.pass(2000);
    expect(lines[0]?.ended).toBe(true);
    expect(connection.facts().connected).toBe(false);
  });

  test("a socket on which the server answers is kept, however little is said", async () => {
    const { line, lines, time } = device();
    line().events.onOpen();
    for (let second = 0; second < 30; second += 1) {
      await time.pass(1000);
      line().events.onMessage(acknowledge(new Y.Doc()));
    }
    expect(lines).toHaveLength(1);
  });

  test("comes back after a time drawn below a bound that grows, so that a whole pit does not come back at once", async () => {
    const waits = async (random: number): Promise<readonly number[]> => {
      const { line, lines, time } = device(random);
      const found: number[] = [];
      for (let attempt = 0; attempt < 6; attempt += 1) {
        line().events.onClose(1006);
        const before = lines.length;
        let waited = 0;
        while (lines.length === before && waited < 10_000) {
          await time.pass(10);
          waited += 10;
        }
        found.push(waited);
      }
      return found;
    };
    expect(await waits(0.999)).toEqual([300, 600, 1200, 2400, 3000, 3000]);
    expect(Math.max(...(await waits(0)))).toBe(10);
  });

  test("is woken at once when the network is back", async () => {
    const { line, lines, connection, time } = device(0.999);
    for (let attempt = 0; attempt < 5; attempt += 1) {
      line().events.onClose(1006);
      await time.pass(3000);
    }
    line().events.onClose(1006);
    const before = lines.length;
    connection.wake();
    expect(lines.length).toBe(before + 1);
  });

  test("asks at once for what is missing when an update waits for another", () => {
    const { line } = device();
    const source = new Y.Doc();
    const updates: Uint8Array[] = [];
    source.on("update", (bytes: Uint8Array) => updates.push(bytes));
    source.getArray("records").push(["first"]);
    source.getArray("records").push(["second"]);
    line().events.onOpen();
    const second = updates[1];
    if (!second) throw new Error("There is no second update.");
    line().events.onMessage(update(second));
    expect(line().sent.map(kindOf)).toEqual([step1, step1]);
  });

  test("waits for a place, gives it up when all is proven and another waits, and comes back for news or a change", async () => {
    const slots = createSocketSlots(1);
    const history = device(0, slots);
    const other = device(0, slots);
    expect(other.lines).toHaveLength(0);
    expect(other.connection.facts()).toMatchObject({ connected: false, turn: "waiting" });
    history.line().events.onOpen();
    await history.time.pass(2100);
    expect(other.lines).toHaveLength(0);
    history.line().events.onMessage(acknowledge(history.ydoc));
    await history.time.pass(2100);
    expect(history.line().ended).toBe(true);
    expect(history.connection.facts()).toMatchObject({ connected: false, turn: "resting", held: undefined });
    expect(history.connection.facts().lastHeld).toBeDefined();
    expect(other.connection.facts().turn).toBe("opening");
    other.line().events.onOpen();
    other.line().events.onMessage(acknowledge(other.ydoc));
    history.ydoc.getArray("records").push(["a"]);
    expect(history.lines).toHaveLength(1);
    await other.time.pass(2100);
    expect(other.line().ended).toBe(true);
    expect(history.lines).toHaveLength(2);
    history.line().events.onOpen();
    history.line().events.onMessage(acknowledge(history.ydoc));
    expect(history.connection.facts()).toMatchObject({ connected: true, turn: undefined });
    await other.time.pass(31_000);
    expect(other.lines).toHaveLength(1);
    await history.time.pass(2100);
    expect(other.lines).toHaveLength(2);
  });

  test("is no connection that was lost while its first socket is being opened, and is one once that has failed", async () => {
    const { connection, line, lines, time } = device(0);
    expect(connection.facts()).toMatchObject({ connected: false, turn: "opening" });
    line().events.onClose(1006);
    expect(connection.facts()).toMatchObject({ connected: false, turn: undefined });
    await time.pass(31_000);
    expect(lines.length).toBeGreaterThan(1);
    expect(connection.facts()).toMatchObject({ connected: false, turn: undefined });
    line().events.onOpen();
    expect(connection.facts()).toMatchObject({ connected: true, turn: undefined });
  });

  test("is offline, not resting, when its turn has come and the server does not answer", async () => {
    const slots = createSocketSlots(1);
    const [history, other] = [device(0, slots), device(0, slots)];
    history.line().events.onOpen();
    history.line().events.onMessage(acknowledge(history.ydoc));
    await history.time.pass(2100);
    other.line().events.onClose(1006);
    await history.time.pass(31_000);
    history.line().events.onClose(1006);
    expect(history.connection.facts()).toMatchObject({ connected: false, turn: undefined });
  });

  test.each([
    ["an acknowledgement", messageType.durableAcknowledgement],
    ["receipts", messageType.receipts],
    ["an update", messageType.sync],
  ])("gives up a socket on which %s came spoiled, and asks again on the next", async (_what, type) => {
    const { line, lines, time } = device();
    line().events.onOpen();
    line().events.onMessage(new Uint8Array([type, 255]));
    expect(lines[0]?.ended).toBe(true);
    await time.pass(300);
    line().events.onOpen();
    expect(lines).toHaveLength(2);
    expect(line().sent.map(kindOf)).toEqual([[messageType.sync, syncProtocol.messageYjsSyncStep1]]);
  });

  test("does not come back when the server sends it away for good", async () => {
    const { line, lines, connection, time } = device();
    line().events.onOpen();
    line().events.onClose(4404);
    await time.pass(60_000);
    connection.wake();
    expect(lines).toHaveLength(1);
    expect(connection.facts().sentAway).toBe(4404);
  });
});

describe("a hostile server", () => {
  const entry = { id: "a" };
  function deviceWithOneEntry() {
    const hostile = new Y.Doc();
    hostile.getArray("records").push([entry]);
    const { ydoc, line, connection } = device();
    Y.applyUpdate(ydoc, Y.encodeStateAsUpdate(hostile));
    line().events.onOpen();
    return { hostile, ydoc, line, connection };
  }

  test("removes nothing: what it sends to that end is not applied, and a person is told", () => {
    const { hostile, ydoc, line, connection } = deviceWithOneEntry();
    hostile.getArray("records").delete(0, 1);
    line().events.onMessage(update(Y.encodeStateAsUpdate(hostile)));
    expect(ydoc.getArray("records").toArray()).toEqual([entry]);
    expect(connection.facts().refusal).toContain("remove");
  });

  test("puts nothing else into the document than entries of the list of records", () => {
    const { hostile, ydoc, line, connection } = deviceWithOneEntry();
    hostile.getMap("other").set("key", "value");
    line().events.onMessage(update(Y.encodeStateAsUpdate(hostile)));
    expect([...ydoc.share.keys()]).toEqual(["records"]);
    expect(connection.facts().refusal).toBeDefined();
  });
});
