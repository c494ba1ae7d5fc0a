import { createServer } from "node:http";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { encodeDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { maximumCatchUpBytes } from "#core/protocol/limits.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { syncStep1, syncStep2, syncUpdate } from "#server/sync-message.ts";
import { join, presence } from "./raw-device.ts";
import { listing, type Script, scriptedUpstream } from "./scripted-upstream.ts";
import { deviceDocument, numbered, numbersInLog, push, realGuard, season, serve } from "./server-fixture.ts";
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

const quickSilence = { askAfterMs: 50, deadAfterMs: 125 };
const empty = Y.encodeStateVector(new Y.Doc());

describe("a way to the upstream that fails", () => {
  it("P41 is asked for a sign of life and given up when it is half open", async () => {
    const home = await serve();
    const way = await openWay(home.port);
    const pit = await serveBelow(way, { upstream: { port: portTo(way), listEveryMs: 100, silence: quickSilence } });
    const device = await join(pit);
    await eventuallyRests(pit);
    way.silence();
    const document = deviceDocument(5);
    device.sendUpdate(push(document, numbered(1)));
    await device.next("acknowledgement");
    await eventually(() => expect(pit.log.join("\n")).toContain("The upstream is silent."));
    await eventually(async () =>
      expect((await healthOf(pit)).upstream).toMatchObject({ isConnected: false, links: 0 }),
    );
    way.restore();
    await eventuallyHold([1], [home]);
    await eventuallyRests(pit);
  });

  it("P41 keeps a quiet link that answers", async () => {
    const home = await serve();
    const pit = await serveBelow(home, {
      upstream: { port: portTo(home), silence: { askAfterMs: 10, deadAfterMs: 400 } },
    });
    const device = await join(pit);
    await eventuallyRests(pit);
    const asked = Array.from({ length: 30 }, () => healthOf(home));
    await Promise.all(asked);
    await eventually(async () => {
      const { upstream } = await healthOf(pit);
      expect(upstream?.secondsSinceContact).toBeLessThan(0.05);
    });
    await device.everything();
    expect(pit.log.join("\n")).not.toContain("silent");
  });

  it("P37 goes on after either server was stopped and started again", async () => {
    const stores = { home: createMemoryStore(), pit: createMemoryStore() };
    let home = await serve({ store: stores.home });
    const way = await openWay(home.port);
    let pit = await serveBelow(way, { store: stores.pit });
    const document = deviceDocument(5);
    await write(pit, push(document, numbered(1)));
    await eventuallyHold([1], [home]);
    await home.close();
    await write(pit, push(document, numbered(2)));
    home = await serve({ store: stores.home });
    way.lead(home.port);
    await eventuallyHold([1, 2], [home]);
    await pit.close();
    await write(home, push(document, numbered(3)));
    pit = await serveBelow(way, { store: stores.pit });
    await eventuallyHold([1, 2, 3], [pit, home]);
  });

  it("P36 finds again what an upstream that came back from an old copy has lost", async () => {
    const pitStore = createMemoryStore();
    const home = await serve();
    const way = await openWay(home.port);
    const pit = await serveBelow(way, { store: pitStore });
    await write(home, push(deviceDocument(5), numbered(1)));
    await eventuallyHold([1], [pit]);
    await eventuallyRests(pit);
    way.cut();
    await eventually(async () => expect((await healthOf(pit)).upstream?.isConnected).toBe(false));
    const restored = await serve();
    way.lead(restored.port);
    way.restore();
    await eventuallyHold([1], [restored]);
  });
});

describe("what one of the servers refuses", () => {
  it("P42 stays where it is, is counted, and keeps nothing else from passing", async () => {
    const home = await serve();
    const pit = await serveBelow(home, { guard: () => ({ ok: true }) });
    const device = await join(pit);
    await eventuallyRests(pit);
    const strange = deviceDocument(5);
    strange.getMap("elsewhere").set("word", 1);
    device.sendUpdate(Y.encodeStateAsUpdate(strange));
    device.sendUpdate(push(deviceDocument(6), numbered(1)));
    await eventuallyHold([1], [pit, home]);
    await eventually(async () => expect((await healthOf(pit)).upstream?.refusals).toBeGreaterThan(0));
    expect(home.store.quarantined()[0]?.reason).toContain("records");
    expect(pit.log.join("\n")).toContain("change refused between servers");
    await write(pit, push(deviceDocument(7), numbered(2)), "team");
    await eventuallyHold([2], [home], "team");
  });

  it("P42 is refused here when the upstream holds it", async () => {
    const home = await serve({ guard: () => ({ ok: true }) });
    const pit = await serveBelow(home);
    const strange = deviceDocument(5);
    strange.getMap("elsewhere").set("word", 1);
    await write(home, Y.encodeStateAsUpdate(strange));
    await eventually(() => expect(pit.store.quarantined()).toHaveLength(1));
    await write(home, push(deviceDocument(7), numbered(2)), "team");
    await eventuallyHold([2], [pit], "team");
    expect(pit.store.load(season)).toEqual([]);
  });
});

describe("large changes", () => {
  const megabytes = (count: number) =>
    Array.from({ length: count * 67 }, (_, n) => numbered(n, `${"x".repeat(15_900)}${n}`));

  it("P39 pass both ways as catch-ups when they are larger than one update may be", async () => {
    const home = await serve();
    const pit = await serveBelow(home);
    const [below, above] = [await join(pit), await join(home)];
    await eventuallyRests(pit);
    for (const [device, other, client] of [[below, home, 5] as const, [above, pit, 6] as const]) {
      device.sendCatchUp(push(deviceDocument(client), ...megabytes(2)));
      await device.next("acknowledgement");
      await eventually(() => expect(other.store.load(season).length).toBe(client - 4));
    }
    await eventuallyRests(pit);
    expect((await healthOf(pit)).upstream?.refusals).toBe(0);
    expect((await healthOf(home)).refusedUpdates).toBe(0);
  });

  it("P39 that are larger than a catch-up may be stay where they are, are counted, and are not tried in a circle", async () => {
    const store = createMemoryStore();
    const document = deviceDocument(5);
    for (let n = 0; n < 3; n++) store.append([{ document: season, update: push(document, ...megabytes(6)) }]);
    expect(Y.encodeStateAsUpdate(document).length).toBeGreaterThan(maximumCatchUpBytes);
    const home = await serve();
    const way = await openWay(home.port);
    const pit = await serveBelow(way, { store });
    await eventually(async () =>
      expect((await healthOf(pit)).upstream).toMatchObject({ refusals: 1, documentsWaiting: 1 }),
    );
    await write(pit, push(deviceDocument(7), numbered(2)), "team");
    await eventuallyHold([2], [home], "team");
    expect((await healthOf(pit)).upstream?.refusals).toBe(1);
    expect(way.passed).toBeLessThan(1024 * 1024);
  });
});

const hostile: [string, Partial<Script>][] = [
  ["hangs", { list: () => {} }],
  ["answers with an error", { list: (response) => response.writeHead(500).end() }],
  ["answers with a page", { list: (response) => response.end("<!doctype html><title>Hello</title>") }],
  ["answers with another list", { list: (response) => response.end('{"documents":[{"name":1}]}') }],
  ["answers without end", { list: (response) => void endless(response) }],
  ["sends elsewhere", { list: (response) => response.writeHead(302, { location: "http://127.0.0.1:1/" }).end() }],
  ["turns every socket away for good", { onSocket: (socket) => socket.close(4404, "There is no such document.") }],
  ["turns every socket away for now", { onSocket: (socket) => socket.close(4503, "Too many.") }],
  ["sends text", { onSocket: (socket) => socket.send("hello") }],
  ["sends bytes that are no message", { onSocket: (socket) => socket.send(new Uint8Array([255, 255, 255])) }],
  ["sends a broken presence", { onSocket: (socket) => socket.send(presence(new Uint8Array([9, 9]))) }],
  ["sends a message above the limit", { onSocket: (socket) => socket.send(new Uint8Array(17 * 1024 * 1024)) }],
  ["sends a broken update", { onSocket: (socket) => socket.send(syncUpdate(new Uint8Array([1, 2, 3]))) }],
  ["sends a broken answer", { onSocket: (socket) => socket.send(syncStep2(new Uint8Array([9, 9, 9, 9]))) }],
  ["acknowledges what it does not have", { onSocket: (socket) => socket.send(claim) }],
  ["says nothing", {}],
];
const claim = encodeDurableAcknowledgement(Y.encodeStateVector(new Map([[5, 1_000_000]])), new Uint8Array(32));

function endless(response: Parameters<Script["list"]>[0]): void {
  const part = "x".repeat(1024 * 1024);
  const write = (): void => {
    if (response.destroyed) return;
    if (response.write(part)) setImmediate(write);
  };
  response.on("drain", write);
  write();
}

describe("an upstream that is hostile or broken", () => {
  it.each(hostile)("P42 and %s does a device no harm", async (_what, script) => {
    const upstream = await scriptedUpstream({ list: listing(season, "team"), ...script });
    const pit = await serveBelow(upstream);
    const [writer, reader] = [await join(pit), await join(pit)];
    await eventually(async () => {
      const { upstream: tie } = await healthOf(pit);
      expect(upstream.addresses.length > 0 || tie?.isConnected === false).toBe(true);
    });
    const document = deviceDocument(5);
    for (const n of [1, 2, 3]) {
      writer.sendUpdate(push(document, numbered(n)));
      await reader.next("update");
      await writer.next("acknowledgement");
    }
    expect(writer.kinds()).not.toContain("refusal");
    expect(numbersInLog(pit.store)).toEqual([1, 2, 3]);
    expect(await healthOf(pit)).toMatchObject({ status: "ok", connections: 2 });
  });

  it("P42 and floods is cut off at the rate of a device", async () => {
    const upstream = await scriptedUpstream({
      list: listing(),
      onSocket: (socket) => {
        for (let n = 0; n < 100; n++) socket.send(syncStep1(empty));
      },
    });
    const pit = await serveBelow(upstream, { byteRate: { bytesPerSecond: 1, burstBytes: 2000 } });
    await join(pit);
    await eventually(() => expect(pit.log.join("\n")).toContain("The upstream sends too much."));
  });

  it("P42 and lists names that are no documents gets no socket for them", async () => {
    const upstream = await scriptedUpstream({ list: listing("../secret", "rider/anna", "team", "team?link=open", "") });
    const other = await scriptedUpstream({ list: listing("../secret", "rider/anna", "team", "team?link=open") });
    const [pit, second] = [await serveBelow(upstream), await serveBelow(other)];
    await eventually(() => expect(other.addresses).toEqual(["/sync/team?link=catch-up"]));
    expect((await healthOf(second)).upstream?.documentsWaiting).toBe(1);
    expect((await healthOf(pit)).upstream).toMatchObject({ isConnected: false, links: 0 });
    expect(upstream.addresses).toEqual([]);
  });
});

describe("servers in a ring", () => {
  it("P40 come to rest, and let go of a document when the last device has left it", async () => {
    const ports = await Promise.all([freePort(), freePort(), freePort()]);
    const commits = [0, 0, 0];
    const servers = await Promise.all(
      ports.map((port, n) =>
        serveBelow({ url: `127.0.0.1:${ports[(n + 1) % 3]}` }, { port, store: counting(commits, n) }),
      ),
    );
    const devices = await Promise.all(servers.map((server) => join(server)));
    for (const [n, device] of devices.entries()) {
      device.send(presence(new Uint8Array([1, n + 1, 1, 2, 0x7b, 0x7d])));
      device.sendUpdate(push(deviceDocument(n + 1), numbered(n)));
    }
    await eventuallyHold([0, 1, 2], servers);
    for (const server of servers) await eventuallyRests(server);
    // Three updates at the most: what arrives in one catch-up is written as one.
    expect(Math.max(...commits)).toBeLessThanOrEqual(3);
    const rested = [...commits];
    for (const device of devices) device.socket.close();
    await eventually(async () => {
      for (const server of servers) expect(await healthOf(server)).toMatchObject({ connections: 0, documents: 0 });
    });
    for (const { store } of servers) expect(store.quarantined()).toEqual([]);
    expect(commits).toEqual(rested);
  });

  it("P40 are one when a server names itself", async () => {
    const port = await freePort();
    const server = await serveBelow({ url: `127.0.0.1:${port}` }, { port, guard: realGuard });
    const device = await join(server);
    device.sendUpdate(push(deviceDocument(5), numbered(1)));
    await device.next("acknowledgement");
    await eventuallyRests(server);
    expect(server.store.load(season)).toHaveLength(1);
    device.socket.close();
    await eventually(async () => expect(await healthOf(server)).toMatchObject({ connections: 0, documents: 0 }));
  });
});

function counting(commits: number[], index: number) {
  const store = createMemoryStore();
  return {
    ...store,
    append: (entries: Parameters<typeof store.append>[0]) => {
      commits[index] = (commits[index] ?? 0) + entries.length;
      store.append(entries);
    },
  };
}

/** A port that was free a moment ago: each server of a ring has to know the next one's before that one listens. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer().listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() =>
        address && typeof address === "object" ? resolve(address.port) : reject(new Error("No port.")),
      );
    });
  });
}
