import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { closeCode } from "#core/protocol/close-code.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import type { UpdateStore } from "#server/store/update-store.ts";
import { join } from "./raw-device.ts";
import { deviceDocument, numbered, numbersIn, numbersInLog, push, season, serve } from "./server-fixture.ts";

/** A real store on a disk that may be full. */
function onDisk(): { readonly store: UpdateStore; isFull: boolean } {
  const store = createMemoryStore();
  const disk = {
    isFull: false,
    store: {
      ...store,
      append: (entries) => {
        if (disk.isFull) throw new Error("database or disk is full");
        store.append(entries);
      },
    } as UpdateStore,
  };
  return disk;
}

const health = async (server: { readonly url: string }) => {
  const response = await fetch(`http://${server.url}/health`);
  return { status: response.status, report: await response.json() };
};

describe("an update that is taken", () => {
  it("P7 P9 reaches the log and the others, and all learn what the log holds", async () => {
    const server = await serve();
    const [sender, other] = [await join(server), await join(server)];
    sender.sendUpdate(push(deviceDocument(5), numbered(1)));
    expect((await sender.next("acknowledgement")).stateVector).toEqual(new Map([[5, 1]]));
    expect(numbersInLog(server.store)).toEqual([1]);
    const copy = new Y.Doc();
    Y.applyUpdate(copy, (await other.next("update")).update);
    expect(numbersIn(copy)).toEqual([1]);
    expect((await other.next("acknowledgement")).stateVector).toEqual(new Map([[5, 1]]));
    expect(sender.kinds()).not.toContain("update");
  });

  it("P7 stays in its own document", async () => {
    const server = await serve();
    const [sender, elsewhere] = [await join(server), await join(server, "rider/ben/2031")];
    sender.sendUpdate(push(deviceDocument(5), numbered(1)));
    await sender.next("acknowledgement");
    expect(numbersIn(await elsewhere.everything())).toEqual([]);
    expect(elsewhere.kinds()).toEqual(["step1", "step2", "acknowledgement"]);
    expect(server.store.documents()).toEqual([season]);
  });

  it("P10 is acknowledged again when it comes again, but neither logged nor passed on", async () => {
    const server = await serve();
    const [sender, other] = [await join(server), await join(server)];
    const update = push(deviceDocument(5), numbered(1));
    for (let time = 0; time < 3; time++) {
      sender.sendUpdate(update);
      expect((await sender.next("acknowledgement")).stateVector).toEqual(new Map([[5, 1]]));
    }
    sender.sendCatchUp(Y.encodeStateAsUpdate(new Y.Doc()));
    await sender.next("acknowledgement");
    await other.everything();
    expect(other.kinds().filter((kind) => kind === "update")).toHaveLength(1);
    expect(server.store.load(season)).toHaveLength(1);
  });

  it("P10 has only its new part logged when the device sends all that it has", async () => {
    const server = await serve();
    const sender = await join(server);
    const document = deviceDocument(5);
    sender.sendUpdate(push(document, numbered(1), numbered(2)));
    push(document, numbered(3));
    sender.sendCatchUp(Y.encodeStateAsUpdate(document));
    await sender.next("acknowledgement");
    await sender.everything();
    const logged = server.store.load(season).map((update) => Y.decodeUpdate(update).structs[0]?.id.clock);
    expect(logged).toEqual([0, 2]);
    expect(numbersInLog(server.store)).toEqual([1, 2, 3]);
  });
});

describe("an update whose predecessors are missing", () => {
  it("P13 is asked for at once, and comes together with them", async () => {
    const server = await serve();
    const [sender, other] = [await join(server), await join(server)];
    sender.sendCatchUp(Y.encodeStateAsUpdate(new Y.Doc()));
    await sender.next("acknowledgement");
    const document = deviceDocument(5);
    push(document, numbered(1));
    sender.sendUpdate(push(document, numbered(2)));
    const { stateVector } = await sender.next("step1");
    expect(server.store.load(season)).toEqual([]);
    expect(sender.kinds()).toEqual(["step1", "acknowledgement", "step1"]);
    sender.sendCatchUp(Y.encodeStateAsUpdate(document, stateVector));
    expect((await sender.next("acknowledgement")).stateVector).toEqual(new Map([[5, 2]]));
    expect(numbersIn(await other.everything())).toEqual([1, 2]);
    expect(server.store.quarantined()).toEqual([]);
    expect(sender.kinds()).not.toContain("refusal");
  });

  it("P13 is asked for once, however many follow before the answer", async () => {
    const server = await serve();
    const sender = await join(server);
    sender.sendCatchUp(Y.encodeStateAsUpdate(new Y.Doc()));
    await sender.next("acknowledgement");
    const document = deviceDocument(5);
    push(document, numbered(0));
    for (let n = 1; n <= 50; n++) sender.sendUpdate(push(document, numbered(n)));
    await sender.next("step1");
    sender.sendCatchUp(Y.encodeStateAsUpdate(document));
    await sender.next("acknowledgement");
    expect(sender.kinds().filter((kind) => kind === "step1")).toHaveLength(2);
    expect(numbersInLog(server.store)).toHaveLength(51);
  });

  it("P14 is refused for itself when the device does not have them either, and the rest is taken", async () => {
    const server = await serve();
    const sender = await join(server);
    const lossy = deviceDocument(5);
    push(lossy, numbered(1));
    const orphan = push(lossy, numbered(2));
    const document = deviceDocument(6);
    push(document, numbered(3));
    Y.applyUpdate(document, orphan);
    const everything = Y.encodeStateAsUpdate(document);
    sender.sendCatchUp(everything);
    expect((await sender.next("acknowledgement")).stateVector).toEqual(new Map([[6, 1]]));
    expect((await sender.next("refusal")).refusal.type).toBe("gap");
    expect(numbersInLog(server.store)).toEqual([3]);
    expect(server.store.quarantined().map(({ update }) => update)).toEqual([everything]);
    sender.sendUpdate(push(document, numbered(4)));
    expect((await sender.next("acknowledgement")).stateVector).toEqual(new Map([[6, 2]]));
  });
});

describe("a log that cannot be written", () => {
  it("P8 passes nothing on, acknowledges nothing, tells everybody, and takes it when there is room again", async () => {
    const disk = onDisk();
    const server = await serve({ store: disk.store });
    const [sender, other] = [await join(server), await join(server)];
    const document = deviceDocument(5);
    sender.sendUpdate(push(document, numbered(1)));
    await other.next("update");
    disk.isFull = true;
    sender.sendUpdate(push(document, numbered(2)));
    for (const device of [sender, other]) {
      const { refusal } = await device.next("refusal");
      expect(refusal.type).toBe("not stored");
      expect(refusal.sentence).toMatch(/could not write to its disk\. Your changes stay on this device/);
      expect((await device.closed).code).toBe(closeCode.notStored);
    }
    expect(sender.kinds()).toEqual(["step1", "acknowledgement", "refusal"]);
    expect(other.kinds()).toEqual(["step1", "update", "acknowledgement", "refusal"]);
    expect(await health(server)).toMatchObject({ status: 503, report: { status: "not storing" } });

    const back = await join(server);
    expect(numbersIn(await back.everything())).toEqual([1]);
    disk.isFull = false;
    back.sendCatchUp(Y.encodeStateAsUpdate(document));
    expect((await back.next("acknowledgement")).stateVector).toEqual(new Map([[5, 2]]));
    expect(numbersInLog(server.store)).toEqual([1, 2]);
    expect(await health(server)).toMatchObject({ status: 200, report: { status: "ok" } });
  });

  it("P8 leaves devices in other documents alone", async () => {
    const disk = onDisk();
    const server = await serve({ store: disk.store });
    const [sender, elsewhere] = [await join(server), await join(server, "team")];
    disk.isFull = true;
    sender.sendUpdate(push(deviceDocument(5), numbered(1)));
    await sender.closed;
    expect(numbersIn(await elsewhere.everything())).toEqual([]);
    expect(elsewhere.kinds()).not.toContain("refusal");
  });
});

it("closes a device with 4500 when the log of its document cannot be read", async () => {
  const store = createMemoryStore();
  store.append([{ document: season, update: new Uint8Array([1, 2, 3]) }]);
  const server = await serve({ store });
  const device = await join(server, "team");
  await expect(join(server)).rejects.toThrow("closed before");
  await device.everything();
  expect(server.log.join("\n")).toContain("document could not be opened");
});
