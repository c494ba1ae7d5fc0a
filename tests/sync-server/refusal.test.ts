import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { closeCode } from "#core/protocol/close-code.ts";
import { maximumCatchUpBytes, maximumPresenceBytes, maximumUpdateBytes } from "#core/protocol/limits.ts";
import { createLogger } from "#server/logging.ts";
import { createQuarantine } from "#server/quarantine.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { syncStep1, syncUpdate } from "#server/sync-message.ts";
import { join, presence, presenceOf } from "./raw-device.ts";
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

const changed = (change: (document: Y.Doc) => void): Uint8Array => {
  const document = deviceDocument(66);
  change(document);
  return Y.encodeStateAsUpdate(document);
};

/** Bytes that repeat the same for each run, so that a failure can be replayed. */
function noise(length: number, seed: number): Uint8Array {
  let state = seed;
  return Uint8Array.from({ length }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state >>> 24;
  });
}

const full = Array.from({ length: 80 }, (_, n) => numbered(n, "x".repeat(14_000)));

const hostile: [string, string, Uint8Array][] = [
  ["bytes that are no update", "undecodable", noise(400, 1)],
  ["no bytes at all", "undecodable", new Uint8Array()],
  ["seven bytes that claim two hundred million entries", "undecodable", new Uint8Array([255, 255, 255, 95, 1, 1, 0])],
  ["half an update", "undecodable", changed((document) => push(document, numbered(1))).slice(0, 60)],
  [
    "a deletion",
    "removes",
    changed((document) => {
      push(document, numbered(1));
      document.getArray("records").delete(0, 1);
    }),
  ],
  ["a shared map", "elsewhere", changed((document) => document.getMap("records").set("a", numbered(1)))],
  ["another list", "elsewhere", changed((document) => document.getArray("others").push([numbered(1)]))],
  ["a text", "not records", changed((document) => document.getText("records").insert(0, "hello"))],
  ["something that is no record", "bad record", changed((document) => document.getArray("records").push([{ a: 1 }]))],
  ["a record of 20 KiB", "bad record", changed((document) => push(document, numbered(1, "x".repeat(20_000))))],
  ["an update above 1 MiB", "too large", changed((document) => push(document, ...full))],
];

describe("an update that the guard does not take", () => {
  it.each(hostile)("P15 P17 changes nothing and is kept apart: %s", async (_what, type, update) => {
    const server = await serve();
    const [sender, other] = [await join(server), await join(server)];
    const document = deviceDocument(5);
    sender.sendUpdate(push(document, numbered(1)));
    await sender.next("acknowledgement");
    sender.sendUpdate(update);
    const { refusal } = await sender.next("refusal");
    expect(refusal.type).toBe(type);
    expect(refusal.sentence).toMatch(/^[A-Z].*\.$/);
    expect(numbersIn(await other.everything())).toEqual([1]);
    expect(other.kinds()).toEqual(["step1", "update", "acknowledgement", "step2", "acknowledgement"]);
    expect(server.store.load(season)).toHaveLength(1);
    const [kept, ...others] = server.store.quarantined();
    expect(kept).toMatchObject({ document: season, reason: `${refusal.type}: ${refusal.sentence}` });
    // Byte by byte: a deep comparison of 1 MiB takes seconds, in which the sockets of this process fall silent.
    expect(Buffer.compare(kept?.update ?? new Uint8Array(), update)).toBe(0);
    expect(others).toEqual([]);
    sender.sendUpdate(push(document, numbered(2)));
    expect((await sender.next("acknowledgement")).stateVector).toEqual(new Map([[5, 2]]));
  });

  it("P15 is refused in the same way by a server with the log on disk", async () => {
    const folder = freshFolder();
    const server = await serve({ store: openSqliteStore(folder) });
    const sender = await join(server);
    sender.sendUpdate(noise(400, 2));
    expect((await sender.next("refusal")).refusal.type).toBe("undecodable");
    expect(server.store.quarantined()).toMatchObject([{ document: season, update: noise(400, 2) }]);
    expect(readFileSync(`${folder}/log.db`).length).toBeGreaterThan(0);
  });

  it("P15 says something else under another device's client number: refused, and the first stays", async () => {
    const server = await serve();
    const sender = await join(server);
    sender.sendUpdate(push(deviceDocument(5), numbered(1)));
    await sender.next("acknowledgement");
    sender.sendUpdate(push(deviceDocument(5), numbered(2)));
    expect((await sender.next("refusal")).refusal.type).toBe("contradicts");
    expect(numbersIn(await sender.everything())).toEqual([1]);
  });

  it("P15 is refused when the guard was wrong and it fails half-way, and the document is read anew", async () => {
    const server = await serve({ guard: () => ({ ok: true }) });
    const sender = await join(server);
    const document = deviceDocument(5);
    sender.sendUpdate(push(document, numbered(1)));
    await sender.next("acknowledgement");
    sender.sendUpdate(noise(400, 3));
    expect((await sender.next("refusal")).refusal.type).toBe("cannot be applied");
    push(document, numbered(2));
    sender.sendUpdate(push(document, numbered(3)));
    expect((await sender.next("refusal")).refusal.type).toBe("cannot be applied");
    expect(numbersIn(await sender.everything())).toEqual([1]);
    expect(numbersInLog(server.store)).toEqual([1]);
  });

  it("P17 is kept only up to a bound, and counted beyond it", () => {
    const store = createMemoryStore();
    const logger = createLogger("silent", () => {});
    const quarantine = createQuarantine(store, logger, { updates: 3, bytes: 100 });
    const problem = { type: "undecodable", sentence: "The change cannot be read." };
    quarantine.keep("team", new Uint8Array(60), problem);
    quarantine.keep("team", new Uint8Array(60), problem);
    for (let n = 0; n < 5; n++) quarantine.keep("team", new Uint8Array(1), problem);
    expect(store.quarantined().map(({ update }) => update.length)).toEqual([60, 1, 1]);
    expect(quarantine.refused).toBe(7);
  });

  it("P17 is still refused when it cannot be kept", () => {
    const store = createMemoryStore();
    store.close();
    const lines: string[] = [];
    const quarantine = createQuarantine(
      store,
      createLogger("error", (line) => lines.push(line)),
    );
    quarantine.keep("team", new Uint8Array(1), { type: "undecodable", sentence: "The change cannot be read." });
    expect(lines).toHaveLength(1);
  });
});

describe("sizes", () => {
  it("P18 takes as an answer to sync step 1 what is too large as a single update", async () => {
    const server = await serve();
    const sender = await join(server);
    const update = changed((document) => push(document, ...full));
    expect(update.length).toBeGreaterThan(maximumUpdateBytes);
    sender.sendCatchUp(update);
    expect((await sender.next("acknowledgement")).stateVector).toEqual(new Map([[66, full.length]]));
  });

  it("P18 refuses an answer above 16 MiB and closes on a message that is larger still", async () => {
    const server = await serve();
    const [sender, other] = [await join(server), await join(server)];
    sender.sendCatchUp(new Uint8Array(maximumCatchUpBytes + 1));
    expect((await sender.next("refusal")).refusal.type).toBe("too large");
    sender.send(new Uint8Array(maximumCatchUpBytes + 1000));
    expect((await sender.closed).code).toBe(1009);
    expect(numbersIn(await other.everything())).toEqual([]);
  });
});

describe("a message that cannot be read", () => {
  const cut = syncUpdate(changed((document) => push(document, numbered(1)))).slice(0, 20);
  it.each([
    ["an empty message", new Uint8Array()],
    ["a number without end", new Uint8Array(20).fill(255)],
    ["a sync message of no known kind", new Uint8Array([0, 9, 0])],
    ["a sync message without content", new Uint8Array([0, 0])],
    ["an update that says it is longer than it is", cut],
    ["a state vector that is none", syncStep1(new Uint8Array([5, 1]))],
    ["a state vector that claims more than it holds", syncStep1(new Uint8Array([255, 255, 255, 255, 15]))],
    ["P23 a presence above its limit", presenceOf(1, 1, "x".repeat(maximumPresenceBytes))],
    ["P23 a presence state that is no JSON", presence(new Uint8Array([1, 7, 1, 2, 123, 123]))],
    ["P23 a presence that is cut off", presence(new Uint8Array([3, 7, 1]))],
  ])("P19 closes its socket and no other: %s", async (_what, message) => {
    const server = await serve();
    const [sender, other] = [await join(server), await join(server)];
    sender.send(message);
    expect((await sender.closed).code).toBe(closeCode.malformedMessage);
    expect(numbersIn(await other.everything())).toEqual([]);
    expect(other.kinds()).toEqual(["step1", "step2", "acknowledgement"]);
    expect(server.store.documents()).toEqual([]);
  });

  it("P19 closes on a text frame", async () => {
    const server = await serve();
    const device = await join(server);
    device.socket.send("hello");
    expect((await device.closed).code).toBe(closeCode.binaryOnly);
  });

  it("P19 ignores types that it does not know, and its own sent back", async () => {
    const server = await serve();
    const device = await join(server);
    for (const type of [2, 4, 99, 100, 101, 127]) device.send(new Uint8Array([type, 1, 0]));
    expect(numbersIn(await device.everything())).toEqual([]);
  });

  it("P19 outlives two thousand messages of noise", async () => {
    const server = await serve();
    const watcher = await join(server);
    for (let round = 0; round < 20; round++) {
      const device = await join(server);
      for (let n = 0; n < 100; n++) device.send(noise(1 + (n % 40), round * 100 + n));
      device.socket.close();
      await device.closed;
    }
    expect(numbersIn(await watcher.everything())).toEqual([]);
    expect(server.store.documents()).toEqual([]);
    expect(server.log.join("\n")).not.toContain("callback failed");
  });
});
