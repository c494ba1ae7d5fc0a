import * as encoding from "lib0/encoding";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { createContentDigest } from "#core/ledger/content-digest.ts";
import { closeCode } from "#core/protocol/close-code.ts";
import { maximumReceipts, maximumReceiptWriters } from "#core/protocol/limits.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { decodeKeptReceipts, encodeReceipts, type Receipt } from "#core/protocol/receipt.ts";
import { encodeStateVector } from "#core/protocol/state-vector.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { join } from "./raw-device.ts";
import { deviceDocument, freshFolder, numbered, push, season, serve } from "./server-fixture.ts";

function receipt(device: string, count: number, clock = count): Receipt {
  const digest = new Uint8Array(32).fill(clock);
  return { device, member: "anna", count, at: 1000, stateVector: new Map([[5, clock]]), digest };
}

describe("the content of an acknowledgement", () => {
  it("P29 is that of the log below its state vector", async () => {
    const server = await serve();
    const device = await join(server);
    const document = deviceDocument(5);
    device.sendUpdate(push(document, numbered(1), numbered(2)));
    const { stateVector, digest } = await device.next("acknowledgement");
    const logged = new Y.Doc();
    for (const update of server.store.load(season)) Y.applyUpdate(logged, update);
    expect(digest).toEqual(createContentDigest(logged).at(stateVector));
  });
});

describe("what devices say that they hold", () => {
  it("P30 is passed on to the others in the document, and told to a newcomer before the acknowledgement", async () => {
    const server = await serve();
    const [phone, laptop] = [await join(server), await join(server)];
    phone.send(encodeReceipts([receipt("phone", 1)]));
    expect((await laptop.next("receipts")).receipts).toEqual([receipt("phone", 1)]);
    const newcomer = await join(server);
    expect((await newcomer.next("receipts")).receipts).toEqual([receipt("phone", 1)]);
    await phone.everything();
    expect(phone.kinds()).not.toContain("receipts");
    expect((await join(server, "team")).kinds()).not.toContain("receipts");
  });

  it("P31 is replaced by what the same device counts higher, and who says an older one is told the newer", async () => {
    const server = await serve();
    const [phone, laptop] = [await join(server), await join(server)];
    phone.send(encodeReceipts([receipt("phone", 3, 9)]));
    await laptop.next("receipts");
    phone.send(encodeReceipts([receipt("phone", 4, 2)]));
    expect((await laptop.next("receipts")).receipts).toEqual([receipt("phone", 4, 2)]);
    laptop.send(encodeReceipts([receipt("phone", 2, 99), receipt("laptop", 1)]));
    expect((await laptop.next("receipts")).receipts).toEqual([receipt("phone", 4, 2)]);
    expect((await phone.next("receipts")).receipts).toEqual([receipt("laptop", 1)]);
  });

  it("P32 is still known when the server has been started again, though its device is gone", async () => {
    const folder = freshFolder();
    const first = await serve({ store: openSqliteStore(folder) });
    const phone = await join(first);
    phone.send(encodeReceipts([receipt("phone", 1)]));
    phone.send(encodeReceipts([receipt("phone", 2)]));
    await phone.everything();
    await first.close();
    first.store.close();
    const second = await serve({ store: openSqliteStore(folder) });
    expect((await (await join(second)).next("receipts")).receipts).toEqual([receipt("phone", 2)]);
  });

  it("P32 does not hold up the document when it cannot be kept", async () => {
    const keepReceipts = () => {
      throw new Error("The disk is full.");
    };
    const server = await serve({ store: { ...createMemoryStore(), keepReceipts } });
    const [phone, laptop] = [await join(server), await join(server)];
    phone.send(encodeReceipts([receipt("phone", 1)]));
    await laptop.next("receipts");
    phone.sendUpdate(push(deviceDocument(5), numbered(1)));
    await phone.next("acknowledgement");
    expect(server.log.join("\n")).toContain("receipts could not be kept");
  });

  it("P33 closes a socket whose receipts cannot be read, and the others go on", async () => {
    const server = await serve();
    const [hostile, laptop] = [await join(server), await join(server)];
    hostile.send(encodeReceipts([receipt("phone", 1)]).slice(0, -1));
    expect((await hostile.closed).code).toBe(closeCode.malformedMessage);
    laptop.sendUpdate(push(deviceDocument(5), numbered(1)));
    await laptop.next("acknowledgement");
  });

  it("P33 closes the socket when one names more writers than any document of ours has", async () => {
    const server = await serve();
    const phone = await join(server);
    const writers = Array.from({ length: maximumReceiptWriters }, (_, writer): [number, number] => [writer, 1]);
    phone.send(encodeReceipts([{ ...receipt("phone", 1), stateVector: new Map(writers) }]));
    await phone.everything();
    const tooMany = encoding.encode((encoder) => {
      encoding.writeVarUint(encoder, messageType.receipts);
      encoding.writeVarUint(encoder, 1);
      for (const text of ["phone", "anna"]) encoding.writeVarString(encoder, text);
      for (const number of [2, 1000]) encoding.writeVarUint(encoder, number);
      encoding.writeVarUint8Array(encoder, encodeStateVector(new Map([...writers, [maximumReceiptWriters, 1]])));
      encoding.writeVarUint8Array(encoder, new Uint8Array(32));
    });
    phone.send(tooMany);
    expect((await phone.closed).code).toBe(closeCode.malformedMessage);
  });

  it("P32 are kept of so many devices as stand in memory, also on the disk, however many names somebody makes up", async () => {
    const server = await serve({ store: openSqliteStore(freshFolder()) });
    const phone = await join(server);
    for (let batch = 0; batch < 5; batch++) {
      phone.send(encodeReceipts(Array.from({ length: maximumReceipts }, (_, n) => receipt(`phone-${batch}-${n}`, 1))));
    }
    await phone.everything();
    const kept = server.store.receipts(season).flatMap((bytes) => decodeKeptReceipts(bytes) ?? []);
    expect(new Set(kept.map(({ device }) => device.split("-")[1]))).toEqual(new Set(["4"]));
    expect(kept).toHaveLength(maximumReceipts);
  });

  it("P32 come to a newcomer in messages that a device reads, however much all of them say", async () => {
    const server = await serve();
    const phone = await join(server);
    const writers = new Map(Array.from({ length: 20_000 }, (_, n): [number, number] => [4_000_000_000 + n, 1]));
    for (let n = 0; n < 20; n++) {
      phone.send(encodeReceipts([{ ...receipt(`phone-${n}`, 1), stateVector: writers }]));
    }
    await phone.everything();
    const newcomer = await join(server);
    const heard: string[] = [];
    await newcomer.everything();
    for (const message of newcomer.heard) {
      if (message.kind === "receipts") heard.push(...message.receipts.map(({ device }) => device));
    }
    expect(heard).toEqual(Array.from({ length: 13 }, (_, n) => `phone-${n + 7}`));
  });
});
