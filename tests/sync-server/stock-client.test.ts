import { describe, expect, it, onTestFinished, vi } from "vitest";
import type * as Y from "yjs";
import { closeCode } from "#core/protocol/close-code.ts";
import { type DurableAcknowledgement, readDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { readRefusal } from "#core/protocol/refusal.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import {
  deviceDocument,
  freshFolder,
  numbered,
  numbersIn,
  numbersInLog,
  push,
  season,
  serve,
} from "./server-fixture.ts";
import { stockDevice, until } from "./stock-device.ts";

const holds = (document: Y.Doc, count: number) => until(document, "update", () => numbersIn(document).length === count);

/** The stock client reports a message type that it does not know on the console, and goes on. */
function hearConsole() {
  const error = vi.spyOn(console, "error").mockImplementation(() => {});
  onTestFinished(() => error.mockRestore());
  return error;
}

describe("the stock y-websocket client", () => {
  it("P1 exchanges a document with another one, both ways, and goes on after messages of our types", async () => {
    const heard = hearConsole();
    const server = await serve({ store: openSqliteStore(freshFolder()) });
    const [anna, ben] = [stockDevice(server, deviceDocument(5)), stockDevice(server, deviceDocument(6))];
    push(anna.document, numbered(1));
    await holds(ben.document, 1);
    push(ben.document, numbered(2));
    await holds(anna.document, 2);
    push(anna.document, numbered(3));
    await holds(ben.document, 3);
    expect(numbersIn(anna.document)).toEqual([1, 2, 3]);
    expect(numbersInLog(server.store)).toEqual([1, 2, 3]);
    expect(heard.mock.calls.flat()).toContain("Unable to compute message");
    expect(anna.provider.synced && ben.provider.synced).toBe(true);
  });

  it("P1 hands in what it wrote while it was away, and gets what the others wrote", async () => {
    hearConsole();
    const server = await serve();
    const [anna, ben] = [stockDevice(server, deviceDocument(5)), stockDevice(server, deviceDocument(6))];
    push(anna.document, numbered(1));
    await holds(ben.document, 1);
    anna.provider.disconnect();
    push(anna.document, numbered(2));
    push(ben.document, numbered(3));
    anna.provider.connect();
    await holds(anna.document, 3);
    await holds(ben.document, 3);
    expect(numbersInLog(server.store)).toEqual([1, 2, 3]);
  });

  it("P13 loses nothing of what it writes before the first exchange is through", async () => {
    hearConsole();
    const server = await serve();
    const anna = stockDevice(server, deviceDocument(5));
    push(anna.document, numbered(1));
    await until(anna.provider, "status", () => anna.provider.wsconnected);
    for (let n = 2; n <= 20; n++) push(anna.document, numbered(n));
    const ben = stockDevice(server, deviceDocument(6));
    await holds(ben.document, 20);
    expect(numbersInLog(server.store)).toEqual(Array.from({ length: 20 }, (_, index) => index + 1));
    expect(server.store.quarantined()).toEqual([]);
  });

  it("P9 P16 hears acknowledgements and refusals through handlers of its own", async () => {
    const server = await serve();
    const { document, provider } = stockDevice(server, deviceDocument(5));
    const acknowledged: (DurableAcknowledgement | undefined)[] = [];
    const refused = new Promise((resolve) => {
      provider.messageHandlers[messageType.refusal] = (_encoder, decoder) => resolve(readRefusal(decoder));
    });
    const durable = new Promise<void>((resolve) => {
      provider.messageHandlers[messageType.durableAcknowledgement] = (_encoder, decoder) => {
        acknowledged.push(readDurableAcknowledgement(decoder));
        if (acknowledged.at(-1)?.stateVector.get(5) === 1) resolve();
      };
    });
    push(document, numbered(1));
    await durable;
    document.getMap("elsewhere").set("a", 1);
    expect(await refused).toMatchObject({ type: "elsewhere" });
  });

  it("P8 sends again by itself what the server could not store", async () => {
    hearConsole();
    const memory = createMemoryStore();
    let failures = 2;
    const server = await serve({
      store: {
        ...memory,
        append(entries) {
          if (failures-- > 0) throw new Error("database or disk is full");
          memory.append(entries);
        },
      },
    });
    const anna = stockDevice(server, deviceDocument(5));
    push(anna.document, numbered(1));
    const ben = stockDevice(server, deviceDocument(6));
    await holds(ben.document, 1);
    expect(failures).toBeLessThan(0);
    expect(numbersInLog(memory)).toEqual([1]);
  });

  it("P4 P26 does not come back to a document that there is not, and says so", async () => {
    const server = await serve();
    const { provider } = stockDevice(server, deviceDocument(5), "rider/anna/never");
    const closed = await new Promise((resolve) => provider.on("closed", resolve));
    expect(closed).toMatchObject({ code: closeCode.unknownDocument });
    expect(provider.shouldConnect).toBe(false);
  });

  it("P12 comes back by itself to a server that was stopped and started, which has everything", async () => {
    hearConsole();
    const folder = freshFolder();
    const first = await serve({ store: openSqliteStore(folder) });
    const { document } = stockDevice(first, deviceDocument(5));
    push(document, numbered(1));
    await holds(stockDevice(first, deviceDocument(6)).document, 1);
    await first.close();
    first.store.close();
    push(document, numbered(2));
    const second = await serve({ store: openSqliteStore(folder), port: first.port });
    expect(numbersInLog(second.store)).toContain(1);
    await holds(stockDevice(second, deviceDocument(7)).document, 2);
  });
});

describe("presence of stock clients", () => {
  it("P20 P21 shows each device to the others, also to those that come later, until it goes", async () => {
    hearConsole();
    const server = await serve();
    const [anna, ben] = [stockDevice(server, deviceDocument(5)), stockDevice(server, deviceDocument(6))];
    const sees = (device: typeof anna, client: number, name: string | undefined) =>
      until(
        device.provider.awareness,
        "change",
        () => device.provider.awareness.getStates().get(client)?.name === name,
      );
    anna.provider.awareness.setLocalStateField("name", "Anna");
    await sees(ben, 5, "Anna");
    const late = stockDevice(server, deviceDocument(7));
    await sees(late, 5, "Anna");
    anna.provider.ws?.close();
    await sees(ben, 5, undefined);
    await until(anna.provider, "sync", () => anna.provider.synced);
    anna.provider.awareness.setLocalStateField("name", "Anna again");
    await sees(ben, 5, "Anna again");
    anna.provider.disconnect();
    await sees(ben, 5, undefined);
    await sees(late, 5, undefined);
    expect(server.store.load(season)).toEqual([]);
  });
});
