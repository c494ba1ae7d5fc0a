import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { join, presenceOf, type RawDevice, statesIn } from "./raw-device.ts";
import { deviceDocument, numbered, numbersInLog, push, serve } from "./server-fixture.ts";
import { openWay } from "./server-way.ts";
import {
  eventually,
  eventuallyHold,
  eventuallyRests,
  healthOf,
  portTo,
  serveBelow,
  write,
} from "./upstream-fixture.ts";

describe("a server with an upstream", () => {
  it("P37 works alone while there is none, and both become equal when it appears", async () => {
    const home = await serve();
    const way = await openWay(home.port);
    way.cut();
    const pit = await serveBelow(way);
    await write(home, push(deviceDocument(5), numbered(1)));
    const device = await join(pit);
    device.sendUpdate(push(deviceDocument(6), numbered(2)));
    expect((await device.next("acknowledgement")).stateVector).toEqual(new Map([[6, 1]]));
    expect(await healthOf(pit)).toMatchObject({ status: "ok", upstream: { isConnected: false, documentsWaiting: 1 } });
    way.restore();
    await eventuallyHold([1, 2], [pit, home]);
    await device.next("update");
    await eventuallyRests(pit);
  });

  it("P36 brings over documents that only one side knows, though nobody has them open", async () => {
    const stores = [createMemoryStore(), createMemoryStore()] as const;
    const document = (n: number) => `rider/r${n}/2031`;
    const everywhere = Array.from({ length: 40 }, (_, n) => n);
    for (const n of everywhere) {
      stores[n % 2]?.append([{ document: document(n), update: push(deviceDocument(n + 1), numbered(n)) }]);
    }
    const home = await serve({ store: stores[0] });
    const pit = await serveBelow(home, { store: stores[1] });
    await eventuallyRests(pit);
    for (const n of everywhere) {
      for (const { store } of [home, pit]) expect(numbersInLog(store, document(n))).toEqual([n]);
    }
    await eventually(async () => expect((await healthOf(pit)).documents).toBe(0));
    expect((await healthOf(home)).connections).toBe(0);
  });

  it("P36 links a document that nobody has open again when either side has more of it", async () => {
    const home = await serve();
    const pit = await serveBelow(home);
    const [rowan, lou] = [deviceDocument(5), deviceDocument(6)];
    await write(home, push(rowan, numbered(1)));
    await eventuallyHold([1], [pit, home]);
    await eventuallyRests(pit);
    await write(home, push(rowan, numbered(2)));
    await eventuallyHold([1, 2], [pit, home]);
    await write(pit, push(lou, numbered(3)));
    await eventuallyHold([1, 2, 3], [pit, home]);
    await eventuallyRests(pit);
  });

  it("P34 P36 passes on at once what devices of both sides write into an open document", async () => {
    const home = await serve();
    const pit = await serveBelow(home, { upstream: { port: portTo(home), listEveryMs: 1_000_000 } });
    const [kim, lou] = [await join(pit), await join(home)];
    await eventually(async () => expect((await healthOf(home)).connections).toBe(2));
    kim.sendUpdate(push(deviceDocument(5), numbered(1)));
    const copy = new Y.Doc();
    Y.applyUpdate(copy, (await lou.next("update")).update);
    lou.sendUpdate(push(copy, numbered(2)));
    await kim.next("update");
    await eventuallyHold([1, 2], [pit, home]);
    await eventuallyRests(pit);
    kim.socket.close();
    await eventually(async () => expect((await healthOf(home)).connections).toBe(1));
  });

  it("P38 shows devices of both sides to each other, without echo, and takes them away with the link", async () => {
    const home = await serve();
    const way = await openWay(home.port);
    const pit = await serveBelow(way);
    const [kim, lou] = [await join(pit), await join(home)];
    kim.send(presenceOf(5, 1, { name: "Kim" }));
    lou.send(presenceOf(6, 1, { name: "Lou" }));
    await eventually(() => {
      expect(presentFor(kim)).toEqual({ 5: { name: "Kim" }, 6: { name: "Lou" } });
      expect(presentFor(lou)).toEqual({ 5: { name: "Kim" }, 6: { name: "Lou" } });
    });
    await kim.everything();
    await lou.everything();
    expect(kim.kinds().filter((kind) => kind === "presence")).toHaveLength(2);
    expect(lou.kinds().filter((kind) => kind === "presence")).toHaveLength(2);
    way.cut();
    await eventually(() => {
      expect(presentFor(kim)).toEqual({ 5: { name: "Kim" } });
      expect(presentFor(lou)).toEqual({ 6: { name: "Lou" } });
    });
    way.restore();
    await eventually(() => expect(presentFor(lou)).toEqual({ 5: { name: "Kim" }, 6: { name: "Lou" } }));
    kim.socket.close();
    await eventually(() => expect(presentFor(lou)).toEqual({ 6: { name: "Lou" } }));
  });

  it("P38 keeps a device present that its own server still sees, when the link over which it was echoed ends", async () => {
    const home = await serve();
    const way = await openWay(home.port);
    const pit = await serveBelow(way);
    const [kim, lou] = [await join(pit), await join(home)];
    kim.send(presenceOf(5, 1, { name: "Kim" }));
    await eventually(() => expect(presentFor(lou)).toEqual({ 5: { name: "Kim" } }));
    await lou.everything();
    await eventuallyRests(pit);
    way.cut();
    await eventually(() => expect(presentFor(lou)).toEqual({}));
    await eventually(async () => expect((await healthOf(pit)).upstream?.links).toBe(0));
    const rowan = await join(pit);
    await rowan.everything();
    expect(presentFor(rowan)).toEqual({ 5: { name: "Kim" } });
  });

  it("P45 settles what a client number that was used twice has made of a document, on both sides", async () => {
    const home = await serve();
    const way = await openWay(home.port);
    way.cut();
    const pit = await serveBelow(way);
    await write(home, push(deviceDocument(5), numbered(1)));
    await write(pit, push(deviceDocument(5), numbered(2)));
    const device = await join(pit);
    device.sendUpdate(push(deviceDocument(6), numbered(3)));
    await device.next("acknowledgement");
    way.restore();
    await eventuallyRests(pit);
    for (const { store } of [pit, home]) expect(new Set(numbersInLog(store))).toEqual(new Set([1, 2, 3]));
    expect((await healthOf(pit)).upstream?.refusals).toBe(0);
    expect((await healthOf(home)).refusedUpdates).toBe(0);
  });

  it("P43 closes its links when it stops", async () => {
    const home = await serve();
    const pit = await serveBelow(home);
    await join(pit);
    await eventually(async () => expect((await healthOf(home)).connections).toBe(1));
    await pit.close();
    await eventually(async () => expect((await healthOf(home)).connections).toBe(0));
    expect(home.log.join("\n")).not.toContain("silent");
  });
});

describe("several servers", () => {
  it.each(["in a chain", "as a star"])(
    "P34 become equal %s, open documents at once and the others soon",
    async (shape) => {
      const home = await serve();
      const near = await serveBelow(home);
      const far = await serveBelow(shape === "in a chain" ? near : home);
      const servers = [home, near, far];
      await Promise.all(servers.map((server, n) => write(server, push(deviceDocument(n + 1), numbered(n)), "team")));
      const devices = await Promise.all(servers.map((server) => join(server)));
      for (const [n, device] of devices.entries()) device.sendUpdate(push(deviceDocument(n + 11), numbered(n + 10)));
      await eventuallyHold([10, 11, 12], servers);
      await eventuallyHold([0, 1, 2], servers, "team");
      for (const server of [near, far]) await eventuallyRests(server);
      for (const device of devices) device.socket.close();
      await eventually(async () => {
        for (const server of servers) expect(await healthOf(server)).toMatchObject({ connections: 0, documents: 0 });
      });
    },
  );
});

/** Who is there, by all presence messages that a device has heard. */
function presentFor(device: RawDevice): Record<number, unknown> {
  const states: Record<number, unknown> = {};
  for (const message of device.heard) if (message.kind === "presence") Object.assign(states, statesIn(message.payload));
  return Object.fromEntries(Object.entries(states).filter(([, state]) => state !== null));
}
