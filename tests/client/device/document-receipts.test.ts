import { describe, expect, test } from "vitest";
import * as Y from "yjs";
import { localClocks } from "#client/device/local-clocks.ts";
import { createDocumentReceipts } from "#client/device/receipts/document-receipts.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { type Clocks, createContentDigest } from "#core/ledger/content-digest.ts";
import type { Receipt } from "#core/protocol/receipt.ts";
import { createFakeTime } from "#tests/builders/fake-time.ts";

/** One device's side, with its disk and its holder in the test's hands. */
function device(id: string, storage = createMemoryStorage()) {
  const ydoc = new Y.Doc();
  const digest = createContentDigest(ydoc);
  const time = createFakeTime(5000);
  const said: Receipt[] = [];
  const state: { saved: Clocks; holder: string | undefined; connected: boolean; hears: boolean } = {
    saved: new Map(),
    holder: "kim",
    connected: true,
    hears: true,
  };
  const receipts = createDocumentReceipts({
    name: "team",
    digest,
    storage,
    timers: time,
    deviceId: id,
    holder: () => state.holder,
    saved: () => state.saved,
    isConnected: () => state.connected,
    canSay: () => state.connected && state.hears,
    say: (receipt) => said.push(receipt),
    onChange: () => {},
  });
  const save = async (): Promise<void> => {
    state.saved = localClocks(ydoc);
    receipts.consider();
    await time.pass(600);
  };
  return {
    ydoc,
    time,
    said,
    state,
    receipts,
    save,
    last: (): Receipt => {
      const last = said.at(-1);
      if (!last) throw new Error(`${id} has said nothing.`);
      return last;
    },
    write: (...ids: string[]) => ydoc.getArray("records").push(ids.map((record) => ({ id: record }))),
    hold: (record: string) => receipts.holdersOf(record).map((holder) => holder.device),
  };
}

function pass(from: { ydoc: Y.Doc }, to: { ydoc: Y.Doc }): void {
  Y.applyUpdate(to.ydoc, Y.encodeStateAsUpdate(from.ydoc));
}

describe("a device", () => {
  test("says what it holds only after it is saved, and what came together at once", async () => {
    const phone = device("phone");
    phone.write("a");
    phone.receipts.consider();
    await phone.time.pass(5000);
    expect(phone.said).toEqual([]);
    phone.write("b");
    await phone.save();
    expect(phone.said).toHaveLength(1);
    expect(phone.last()).toMatchObject({ device: "phone", member: "kim", count: 1, stateVector: phone.state.saved });
  });

  test("says no more, and goes on hearing others, when somebody has said the highest count in its name", async () => {
    const phone = device("phone");
    phone.write("a");
    const digest = createContentDigest(phone.ydoc).at(new Map()) ?? new Uint8Array(32);
    const forged = {
      member: "kim",
      count: Number.MAX_SAFE_INTEGER,
      at: 1,
      stateVector: new Map<number, number>(),
      digest,
    };
    phone.receipts.hear([{ ...forged, device: "phone" }]);
    await phone.save();
    expect(phone.said).toEqual([]);
    const laptop = device("laptop");
    pass(phone, laptop);
    await laptop.save();
    phone.receipts.hear([laptop.last()]);
    expect(phone.hold("a")).toEqual(["phone", "laptop"]);
  });

  test("says nothing before the server has been heard, and then what it has", async () => {
    const phone = device("phone");
    phone.state.hears = false;
    phone.write("a");
    await phone.save();
    expect(phone.said).toEqual([]);
    phone.state.hears = true;
    phone.receipts.consider();
    await phone.time.pass(600);
    expect(phone.said).toHaveLength(1);
  });

  test("says it again on a new socket on which the server does not know it: the old one may have swallowed it", async () => {
    const phone = device("phone");
    phone.write("a");
    await phone.save();
    const first = phone.last();
    for (const state of [false, true]) {
      phone.state.connected = state;
      phone.receipts.consider();
      await phone.time.pass(600);
    }
    expect(phone.said).toEqual([first, { ...first, count: 2, at: phone.last().at }]);
  });

  test("does not say it again when the server tells that it knows", async () => {
    const phone = device("phone");
    phone.write("a");
    await phone.save();
    phone.state.connected = false;
    phone.receipts.consider();
    phone.state.connected = true;
    phone.receipts.hear([phone.last()]);
    await phone.time.pass(600);
    expect(phone.said).toHaveLength(1);
  });

  test("says so when somebody else has it, and counts on", async () => {
    const phone = device("phone");
    phone.write("a");
    await phone.save();
    phone.state.holder = "rowan";
    phone.receipts.consider();
    await phone.time.pass(600);
    expect(phone.last()).toMatchObject({ member: "rowan", count: 2 });
  });

  test("takes back what it said before its storage was set back", async () => {
    const before = device("phone");
    before.write("a", "b");
    await before.save();
    const restored = device("phone");
    restored.receipts.hear([before.last()]);
    restored.receipts.consider();
    await restored.time.pass(600);
    expect(restored.last()).toMatchObject({ count: 2, stateVector: new Map() });
  });

  test("of which two tabs hold different amounts does not argue with itself for ever", async () => {
    const [one, other] = [device("phone"), device("phone")];
    one.write("a");
    pass(one, other);
    await one.save();
    // The other tab cannot write, so nothing counts as saved there.
    for (let round = 0; round < 50; round += 1) {
      for (const [from, to] of [
        [one, other],
        [other, one],
      ] as const) {
        const last = from.said.at(-1);
        if (last) to.receipts.hear([last]);
        to.receipts.consider();
        await to.time.pass(600);
      }
    }
    expect(one.said.length + other.said.length).toBeLessThan(20);
  });
});

describe("what another device says", () => {
  test("counts when the same entries are here, and only for what lies below its clocks", async () => {
    const [phone, laptop] = [device("phone"), device("laptop")];
    phone.write("a");
    await phone.save();
    pass(phone, laptop);
    laptop.write("b");
    laptop.receipts.hear([phone.last()]);
    expect(laptop.receipts.holdersOf("a")).toEqual([
      { device: "phone", isThis: false, member: "kim", at: phone.last().at },
    ]);
    expect(laptop.hold("b")).toEqual([]);
    expect(laptop.hold("unknown")).toEqual([]);
  });

  test("counts for nothing when its entries under the same clocks are others", async () => {
    const [phone, laptop] = [device("phone"), device("laptop")];
    phone.ydoc.clientID = 5;
    laptop.ydoc.clientID = 5;
    phone.write("a");
    laptop.write("b");
    await phone.save();
    laptop.receipts.hear([phone.last()]);
    expect(laptop.hold("b")).toEqual([]);
  });

  test("counts as before while something of it is not here yet, and as a whole when it has come", async () => {
    const [phone, laptop] = [device("phone"), device("laptop")];
    phone.write("a");
    await phone.save();
    pass(phone, laptop);
    laptop.receipts.hear([phone.last()]);
    expect(laptop.hold("a")).toEqual(["phone"]);
    phone.write("b");
    await phone.save();
    laptop.receipts.hear([phone.last()]);
    expect(laptop.hold("a")).toEqual(["phone"]);
    expect(laptop.hold("b")).toEqual([]);
    pass(phone, laptop);
    expect(laptop.hold("b")).toEqual(["phone"]);
  });

  test("takes a claim away when it says less than before", async () => {
    const [phone, laptop] = [device("phone"), device("laptop")];
    phone.write("a");
    await phone.save();
    pass(phone, laptop);
    laptop.receipts.hear([phone.last()]);
    const less = { ...phone.last(), count: 9, stateVector: new Map() };
    laptop.receipts.hear([less]);
    expect(laptop.hold("a")).toEqual([]);
  });

  test("is still known after a start without a network", async () => {
    const storage = createMemoryStorage();
    const [phone, laptop] = [device("phone"), device("laptop", storage)];
    phone.write("a");
    await phone.save();
    laptop.receipts.hear([phone.last()]);
    await laptop.time.pass(2000);
    const restarted = device("laptop", storage);
    pass(phone, restarted);
    await restarted.time.pass(0);
    expect(restarted.hold("a")).toEqual(["phone"]);
  });

  test("is not spoilt by damaged bytes on the disk", async () => {
    const storage = createMemoryStorage();
    await storage.keepNote("team", "receipts", new Uint8Array([9, 9, 9]));
    const laptop = device("laptop", storage);
    laptop.write("a");
    await laptop.save();
    expect(laptop.hold("a")).toEqual(["laptop"]);
  });
});
