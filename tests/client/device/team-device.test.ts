import { monotonicFactory } from "ulid";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { WebSocket } from "ws";
import { webSockets } from "#client/device/connection/socket.ts";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { openTeamDevice, type TeamDevice } from "#client/device/team-device.ts";
import { parseDocumentName } from "#core/ledger/documents.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import type { Writer } from "#core/ledger/write.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { runKind, settingKind, weekendKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { createLogger } from "#server/logging.ts";
import { type RunningServer, startServer } from "#server/server.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import type { UpdateStore } from "#server/store/update-store.ts";

const KEY = "alder/alder-1/fork.main-pressure";
const setting = (psi: number): Setting => ({ quantity: { value: psi, unit: "psi" }, standing: "on the bike" });

let store: UpdateStore;
let server: RunningServer;
let port = 0;
let devices: TeamDevice[] = [];
let disks = new Map<string, DeviceStorage>();

async function start(): Promise<void> {
  server = await startServer({
    host: "127.0.0.1",
    port,
    clientFolder: "client/dist",
    store,
    logger: createLogger("error", () => {}),
    guard: (update, document, maximumBytes) => inspectUpdate(update, document, { maximumBytes }),
    isDocumentName: (name) => parseDocumentName(name) !== undefined,
  });
  port = server.port;
}

function device(id: string, riders: "all" | readonly string[] = "all"): TeamDevice {
  const storage = disks.get(id) ?? createMemoryStorage();
  disks.set(id, storage);
  const newId = monotonicFactory();
  const opened = openTeamDevice({
    storage,
    openSocket: webSockets(`ws://127.0.0.1:${port}/sync`),
    timers: { now: () => Date.now(), after },
    random: Math.random,
    deviceId: id,
    newId: (moment) => newId(moment),
  });
  opened.showRiders(riders);
  devices.push(opened);
  return opened;
}

function after(ms: number, act: () => void): () => void {
  const timer = setTimeout(act, ms);
  return () => clearTimeout(timer);
}

function until(condition: () => boolean): Promise<void> {
  return vi.waitFor(() => expect(condition()).toBe(true), { timeout: 15_000, interval: 20 });
}

const isOnServer = (opened: TeamDevice) => opened.status().state === "on the server";
const mainPressure = (opened: TeamDevice) => opened.ledger.current(settingKind, KEY);

beforeEach(async () => {
  vi.stubGlobal("WebSocket", WebSocket);
  disks = new Map();
  port = 0;
  store = createMemoryStore();
  await start();
});

afterEach(async () => {
  for (const opened of devices) opened.close();
  devices = [];
  await server.close();
  store.close();
});

async function teamWith(opened: TeamDevice): Promise<void> {
  await until(() => opened.isLoaded());
  const written = opened.writerFor("mechanic").setMany([
    { kind: weekendKind, key: "kestrel", value: { name: "Kestrel", venue: "ridge", startsOn: "2026-05-29" } },
    { kind: riderKind, key: "alder", value: { name: "Alder", mass: { value: 80, unit: "kg" }, bike: "alder-1" } },
  ]);
  expect(written.ok).toBe(true);
  await until(() => opened.isLoaded() && isOnServer(opened));
}

function waitingOf(opened: TeamDevice): number | undefined {
  const status = opened.status();
  return "waiting" in status ? status.waiting : undefined;
}

describe("two devices and the pit laptop", () => {
  test("what one writes, the other reads, and both say that it is on the server", async () => {
    const pit = device("pit");
    await teamWith(pit);
    const phone = device("phone");
    pit.writerFor("mechanic").set(settingKind, KEY, setting(62));
    await until(() => mainPressure(phone).state === "settled" && isOnServer(phone) && isOnServer(pit));
    expect(settledValue(mainPressure(phone))).toEqual(setting(62));
  });

  test("set apart while the laptop is off, both values stand as a dispute on both, and one person resolves it", async () => {
    const pit = device("pit");
    await teamWith(pit);
    const phone = device("phone");
    await until(() => phone.isLoaded() && isOnServer(phone));
    await server.close();
    await until(() => pit.status().state === "offline" && phone.status().state === "offline");
    pit.writerFor("mechanic").set(settingKind, KEY, setting(62));
    phone.writerFor("rider").set(settingKind, KEY, setting(58));
    await until(() => pit.status().state === "offline");
    expect(pit.status()).toMatchObject({ state: "offline", waiting: 1 });
    await start();
    await until(() => [pit, phone].every((opened) => mainPressure(opened).state === "disputed" && isOnServer(opened)));
    pit.writerFor("mechanic").resolve(settingKind, KEY, setting(58));
    await until(() => mainPressure(phone).state === "settled");
    expect(settledValue(mainPressure(phone))).toEqual(setting(58));
  });

  test("each says which devices have saved what is written, and nothing of one that is away", async () => {
    const pit = device("pit");
    await teamWith(pit);
    const phone = device("phone");
    phone.setHolder("rider");
    await until(() => phone.isLoaded() && isOnServer(phone));
    const holders = (opened: TeamDevice, id: string) => opened.holdingOf(id).devices.map((holder) => holder.device);
    const write = (psi: number): string => {
      const result = pit.writerFor("mechanic").set(settingKind, KEY, setting(psi));
      if (!result.ok || !result.records[0]) throw new Error("It was not written.");
      return result.records[0].id;
    };
    const first = write(62);
    await until(() => holders(pit, first).length === 2 && pit.holdingOf(first).server);
    expect(pit.holdingOf(first).devices).toMatchObject([
      { device: "pit", isThis: true },
      { device: "phone", isThis: false, member: "rider" },
    ]);
    await until(() => holders(phone, first).length === 2);
    phone.close();
    const second = write(64);
    await until(() => isOnServer(pit) && holders(pit, second).length === 1);
    expect(holders(pit, first)).toEqual(["pit", "phone"]);
    expect(pit.holdingOf(second)).toMatchObject({ server: true, devices: [{ device: "pit" }] });
  });

  test("more than one update may hold, written in one go, reaches the server and the other device", async () => {
    const pit = device("pit");
    await teamWith(pit);
    const phone = device("phone");
    await until(() => phone.isLoaded() && isOnServer(phone));
    const note = "x".repeat(480);
    const runs = Array.from({ length: 2500 }, (_, index) => ({
      kind: runKind,
      key: `alder/run-${index}`,
      value: { bike: "alder-1", weekend: "kestrel", session: "p1", front: {}, rear: {}, note },
    }));
    const written = pit.writerFor("mechanic").setMany(runs as Parameters<Writer["setMany"]>[0]);
    expect(written.ok).toBe(true);
    await until(() => isOnServer(pit) && phone.ledger.keys(runKind).length === runs.length);
    expect(pit.refusals()).toEqual([]);
  });

  test("what nobody shows any more is sent all the same, and nothing is called on the server before it is there", async () => {
    const pit = device("pit");
    await teamWith(pit);
    const phone = device("phone");
    await until(() => phone.isLoaded() && isOnServer(phone));
    await server.close();
    const written = phone.writerFor("alder").set(settingKind, KEY, setting(58));
    if (!written.ok || !written.records[0]) throw new Error("It was not written.");
    const [{ id }] = written.records;
    await until(() => phone.status().state === "offline");
    phone.close();
    await start();
    const ofSomebodyElse = device("phone", []);
    const isStored = () =>
      store.documents().some((name) => store.load(name).some((bytes) => Buffer.from(bytes).includes(id)));
    const lies: string[] = [];
    ofSomebodyElse.onStatus(() => {
      if (isOnServer(ofSomebodyElse) && !isStored()) lies.push("on the server");
    });
    await until(() => isOnServer(ofSomebodyElse));
    expect(lies).toEqual([]);
    expect(isStored()).toBe(true);
    ofSomebodyElse.close();
    const later = device("phone", []);
    await until(() => isOnServer(later));
    expect(settledValue(mainPressure(later))).toBeUndefined();
  });

  test("a device that was closed offline has what it wrote when it opens again", async () => {
    const pit = device("pit");
    await teamWith(pit);
    await server.close();
    await until(() => pit.status().state === "offline");
    pit.writerFor("mechanic").set(settingKind, KEY, setting(61));
    await until(() => pit.status().state === "offline");
    pit.close();
    const again = device("pit");
    await until(() => again.isLoaded() && mainPressure(again).state === "settled");
    // What the server held was kept: only what it has not got is waiting.
    await until(() => waitingOf(again) === 1);
    await start();
    await until(() => isOnServer(again));
    expect(store.load("rider/alder/2026").length).toBeGreaterThan(0);
  });
});
