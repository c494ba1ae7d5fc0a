import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { createContentDigest } from "#core/ledger/content-digest.ts";
import { encodeDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { createLogger } from "#server/logging.ts";
import { createRooms } from "#server/rooms.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { syncStep1, syncUpdate } from "#server/sync-message.ts";
import { createUpstream } from "#server/upstream/upstream.ts";
import type { UpstreamEvents, UpstreamPort } from "#server/upstream/upstream-port.ts";
import { createVirtualTime } from "#tests/simulation/virtual-time.ts";
import { deviceDocument, numbered, push, realGuard } from "./server-fixture.ts";

type Line = { readonly document: string; readonly purpose: string; readonly events: UpstreamEvents; isClosed: boolean };

/** The real choice of links and the real links, on time that the test moves and an upstream of which it sees each socket. */
function upstreamOf(documents: readonly string[]) {
  const time = createVirtualTime(0);
  const store = createMemoryStore();
  for (const [n, document] of documents.entries()) {
    store.append([{ document, update: push(deviceDocument(n + 1), numbered(n)) }]);
  }
  const lines: Line[] = [];
  let positions: readonly { readonly name: string; readonly position: number }[] | undefined = [];
  const port: UpstreamPort = {
    openSocket(document, purpose, events) {
      const line: Line = { document, purpose: purpose.type, events, isClosed: false };
      lines.push(line);
      const close = (): void => {
        line.isClosed = true;
      };
      return { send: () => {}, ping: () => {}, close };
    },
    listDocuments: async () =>
      positions === undefined
        ? { ok: false, problem: { type: "no list", sentence: "Away." } }
        : { ok: true, list: { documents: [...positions] } },
  };
  const logger = createLogger("silent", () => {});
  const schedule = (flush: () => void) => void time.after(1, flush);
  const watched = {
    ...store,
    append: (entries: Parameters<typeof store.append>[0]) => {
      store.append(entries);
      upstream.wrote(entries.map(({ document }) => document));
    },
  };
  const rooms = createRooms({ store: watched, guard: realGuard, logger, schedule });
  const upstream = createUpstream({
    id: "self",
    port,
    rooms,
    store,
    guard: realGuard,
    isDocumentName: () => true,
    createBudget: () => ({ spend: () => true }),
    timers: time,
    random: () => 0.5,
    logger,
    listEveryMs: 1000,
  });
  return {
    upstream,
    rooms,
    lines,
    open: () => lines.filter(({ isClosed }) => !isClosed),
    list: (listed: typeof positions) => {
      positions = listed;
    },
    async pass(ms: number) {
      const until = time.now() + ms;
      while (await time.step(until));
    },
  };
}

const many = Array.from({ length: 20 }, (_, n) => `rider/r${n + 10}/2031`);

describe("the choice of links", () => {
  it("P36 opens no more than eight documents at a time to catch up, and every one that a device has open", async () => {
    const { upstream, open, pass } = upstreamOf(many);
    for (const document of many.slice(0, 10)) upstream.arrived(document, { type: "device" });
    await pass(100);
    expect(open().filter(({ purpose }) => purpose === "catch-up")).toHaveLength(8);
    expect(open().filter(({ purpose }) => purpose === "open")).toHaveLength(10);
    expect(upstream.status.documentsWaiting).toBe(20);
  });

  it("P42 forgets what only the upstream named, when it names it no longer", async () => {
    const { upstream, list, pass } = upstreamOf(["team"]);
    for (let round = 0; round < 20; round++) {
      list(Array.from({ length: 50 }, (_, n) => ({ name: `rider/made-up-${round}-${n}/2031`, position: 1 })));
      await pass(1000);
    }
    // Those of the last lists, and of those before only the eight that were being looked at.
    expect(upstream.status.documentsWaiting).toBeLessThan(150);
  });

  it("P36 makes room for the next when one gets nowhere, and leaves that one alone until something has changed", async () => {
    const { upstream, lines, open, list, pass } = upstreamOf(many);
    await pass(100);
    // The sockets open and then say nothing but that they are alive.
    const alive = async (seconds: number): Promise<void> => {
      for (let second = 0; second < seconds; second++) {
        for (const { events, isClosed } of lines) if (!isClosed) events.onAlive();
        await pass(1000);
      }
    };
    for (const { events } of open()) events.onOpen();
    const first = lines.slice(0, 8).map(({ document }) => document);
    await alive(70);
    expect(lines.slice(0, 8).every(({ isClosed }) => isClosed)).toBe(true);
    expect(lines.slice(8, 16).map(({ document }) => document)).toEqual(
      many.filter((name) => !first.includes(name)).slice(0, 8),
    );
    expect(upstream.status.documentsWaiting).toBe(20);
    const before = lines.length;
    list([{ name: first[0] ?? "", position: 1 }]);
    await alive(70);
    expect(lines.slice(before).map(({ document }) => document)).toContain(first[0]);
    expect(lines.slice(before).map(({ document }) => document)).not.toContain(first[1]);
  });

  it("P36 tries what got nowhere again when the upstream comes back", async () => {
    const { lines, list, pass } = upstreamOf(["team"]);
    await pass(100);
    lines[0]?.events.onClose(4404, "There is no such document.");
    await pass(10_000);
    expect(lines).toHaveLength(1);
    list(undefined);
    await pass(3000);
    list([]);
    await pass(4000);
    expect(lines).toHaveLength(2);
  });

  it("P36 links a document that a device wrote to and left before a link could be opened", async () => {
    const { upstream, rooms, lines, list, pass } = upstreamOf(["team"]);
    list([{ name: "team", position: 7 }]);
    await pass(100);
    const [line] = lines;
    const vector = Y.encodeStateVector(new Map([[1, 1]]));
    line?.events.onOpen();
    // Both hold the same now, so the link is closed.
    const same = deviceDocument(9);
    Y.applyUpdate(same, push(deviceDocument(1), numbered(0)));
    const digest = createContentDigest(same).at(new Map([[1, 1]]));
    line?.events.onMessage(syncStep1(vector));
    line?.events.onMessage(encodeDurableAcknowledgement(vector, digest ?? new Uint8Array(32)));
    await pass(2000);
    expect(line?.isClosed).toBe(true);
    expect(upstream.status.documentsWaiting).toBe(0);
    expect(lines).toHaveLength(1);
    const left = upstream.arrived("team", { type: "device" });
    const peer = { send: () => {}, close: () => {} };
    rooms.join("team", peer)?.receive(syncUpdate(push(deviceDocument(2), numbered(1))));
    await pass(2);
    rooms.leave(peer);
    left();
    await pass(100);
    expect(lines.map(({ purpose }) => purpose)).toEqual(["catch-up", "catch-up"]);
  });

  it("P37 forgets the names that devices ask for while the upstream is away and nothing is written", async () => {
    const { upstream, list, pass } = upstreamOf([]);
    list(undefined);
    for (const document of many) upstream.arrived(document, { type: "device" })();
    await pass(1000);
    expect(upstream.status).toMatchObject({ isConnected: false, documentsWaiting: 0 });
  });

  it("P43 does nothing more after it was closed", async () => {
    const { upstream, lines, open, pass } = upstreamOf(many);
    await pass(100);
    upstream.close();
    expect(open()).toEqual([]);
    const before = lines.length;
    upstream.wrote(["team"]);
    upstream.arrived("team", { type: "device" });
    await pass(60_000);
    expect(lines).toHaveLength(before);
  });
});
