import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join as joinPath } from "node:path";
import Database from "libsql";
import { afterEach, describe, expect, it, onTestFinished, vi } from "vitest";
import * as Y from "yjs";
import { coversStateVector, decodeStateVector } from "#core/protocol/state-vector.ts";
import { backUpLog } from "#server/store/back-up.ts";
import { restoreLog } from "#server/store/restore.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import type { UpdateStore } from "#server/store/update-store.ts";
import { join, type RawDevice } from "./raw-device.ts";
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
import { runScript, startProcess } from "./server-process.ts";
import { stockDevice, until } from "./stock-device.ts";

const mostUpdates = 20_000;

afterEach(() => void vi.restoreAllMocks());

function openStore(folder: string): UpdateStore {
  const store = openSqliteStore(folder);
  onTestFinished(() => store.close());
  return store;
}

/** A data folder that has been used by a server, with some records. */
function usedFolder(...numbers: readonly number[]): string {
  const folder = freshFolder();
  const store = openSqliteStore(folder);
  const document = deviceDocument(9);
  for (const n of numbers) store.append([{ document: season, update: push(document, numbered(n)) }]);
  store.quarantine("team", new Uint8Array([7]), "too large");
  store.close();
  return folder;
}

/** Sends one update after another, each when the one before is acknowledged, while `goOn` says so. */
async function writeWhile(device: RawDevice, clientId: number, goOn: () => boolean): Promise<void> {
  const document = deviceDocument(clientId);
  for (let n = 1; n <= mostUpdates && goOn(); n++) {
    device.sendUpdate(push(document, numbered(clientId * mostUpdates + n)));
    await device.next("acknowledgement");
  }
}

function newestAcknowledgement(device: RawDevice): ReadonlyMap<number, number> {
  const last = device.heard.findLast((message) => message.kind === "acknowledgement");
  return last?.kind === "acknowledgement" ? last.stateVector : new Map();
}

function stateVectorOf(updates: readonly Uint8Array[]): ReadonlyMap<number, number> {
  const document = new Y.Doc();
  for (const update of updates) Y.applyUpdate(document, update);
  return decodeStateVector(Y.encodeStateVector(document)) ?? new Map();
}

describe("a backup", () => {
  it("made under load is a prefix of the log with everything that was acknowledged before it began", async () => {
    const [folder, outside] = [freshFolder(), freshFolder()];
    const server = startProcess("--port", "0", "--data", folder, "--log-level", "silent", "--snapshot-rows", "1000000");
    const url = await server.listening;
    const devices = await Promise.all([join({ url }), join({ url }), join({ url })]);
    let isBackedUp = false;
    const writing = devices.map((device, index) => writeWhile(device, index + 1, () => !isBackedUp));
    // A single acknowledgement tells of all that is in the log, so the watcher's count is the progress of the writers.
    const watcher = await join({ url });
    for (let count = 0; count < 30; count++) await watcher.next("update");
    const before = newestAcknowledgement(watcher);
    const file = joinPath(outside, "weekend.backup");
    const backup = await runScript("sync-server/backup.ts", file, "--data", folder);
    isBackedUp = true;
    await Promise.all(writing);
    server.child.kill("SIGTERM");
    expect((await server.finished).code).toBe(0);

    expect(backup).toMatchObject({ code: 0, errors: "" });
    expect(readdirSync(outside)).toEqual(["weekend.backup"]);
    const restored = joinPath(outside, "restored");
    restoreLog(file, restored);
    const copied = openStore(restored).load(season);
    const logged = openStore(folder).load(season);
    expect(backup.output).toMatch(
      new RegExp(`^Backed up: documents 1, snapshots 0, updates ${copied.length}, bytes \\d+\\.\n$`),
    );
    expect(before.size).toBeGreaterThan(0);
    expect(coversStateVector(stateVectorOf(copied), before)).toBe(true);
    expect(copied.length).toBeLessThan(logged.length);
    expect(copied).toEqual(logged.slice(0, copied.length));
  });

  it("restored when it is old gets what devices have that it lacks, and they get what it got since", async () => {
    // The stock client reports each message type that it does not know on the console.
    vi.spyOn(console, "error").mockImplementation(() => {});
    const [folder, outside] = [freshFolder(), freshFolder()];
    const file = joinPath(outside, "old.backup");
    const store = openSqliteStore(folder);
    const first = await serve({ store });
    const [anna, ben] = [stockDevice(first, deviceDocument(5)), stockDevice(first, deviceDocument(6))];
    push(anna.document, numbered(1));
    push(ben.document, numbered(2));
    for (const { document } of [anna, ben]) await until(document, "update", () => numbersIn(document).length === 2);
    backUpLog(folder, file);
    push(anna.document, numbered(3));
    push(anna.document, numbered(4));
    await until(ben.document, "update", () => numbersIn(ben.document).length === 4);
    for (const { provider } of [anna, ben]) provider.destroy();
    await first.close();
    push(ben.document, numbered(5));

    const restored = joinPath(outside, "restored");
    expect(restoreLog(file, restored)).toMatchObject({ updates: 2, documents: 1 });
    const second = await serve({ store: openSqliteStore(restored) });
    expect(numbersInLog(second.store)).toEqual([1, 2]);
    const carol = await join(second);
    carol.sendUpdate(push(deviceDocument(7), numbered(6)));
    await carol.next("acknowledgement");
    const back = [stockDevice(second, anna.document), stockDevice(second, ben.document)];
    const all = [1, 2, 3, 4, 5, 6];
    for (const { document } of back) await until(document, "update", () => numbersIn(document).length === all.length);
    expect(back.map(({ document }) => numbersIn(document))).toEqual([all, all]);
    expect(numbersIn(await carol.everything())).toEqual(all);
    expect(numbersInLog(second.store)).toEqual(all);
    expect(second.store.quarantined()).toEqual([]);
  });

  it("made while snapshots are taken holds everything that was acknowledged before it began", async () => {
    const [folder, outside] = [freshFolder(), freshFolder()];
    const server = startProcess("--port", "0", "--data", folder, "--log-level", "silent", "--snapshot-rows", "3");
    const url = await server.listening;
    const devices = await Promise.all([join({ url }), join({ url })]);
    let isBackedUp = false;
    const writing = devices.map((device, index) => writeWhile(device, index + 1, () => !isBackedUp));
    const watcher = await join({ url });
    for (let count = 0; count < 200; count++) await watcher.next("update");
    const before = newestAcknowledgement(watcher);
    const file = joinPath(outside, "weekend.backup");
    const backup = await runScript("sync-server/backup.ts", file, "--data", folder);
    isBackedUp = true;
    await Promise.all(writing);
    server.child.kill("SIGTERM");
    expect((await server.finished).code).toBe(0);
    expect(backup.output).toMatch(/^Backed up: documents 1, snapshots 1, updates \d+, bytes \d+\.\n$/);
    const restored = joinPath(outside, "restored");
    restoreLog(file, restored);
    expect(coversStateVector(stateVectorOf(openStore(restored).load(season)), before)).toBe(true);
  });

  it("of a log of version 1 is restored and opened as one of version 2, which can give back space", () => {
    const [folder, outside] = [usedFolder(1, 2), freshFolder()];
    const old = new Database(joinPath(folder, "log.db"));
    old.exec("DROP TABLE snapshot; DROP TABLE snapshot_part; PRAGMA user_version = 1; PRAGMA auto_vacuum = 0; VACUUM");
    old.close();
    const file = joinPath(outside, "old.backup");
    expect(backUpLog(folder, file)).toMatchObject({ documents: 1, snapshots: 0, updates: 2 });
    const restored = joinPath(outside, "restored");
    expect(restoreLog(file, restored)).toMatchObject({ documents: 1, snapshots: 0, updates: 2 });
    const store = openStore(restored);
    expect(numbersInLog(store)).toEqual([1, 2]);
    store.append([{ document: "team", update: new Uint8Array(1_000_000) }]);
    const draft = store.draftSnapshot("team");
    draft.write(new Uint8Array([0, 0]));
    draft.adopt();
    expect(store.giveBackSpace()).toBe(true);
  });

  it("with a snapshot that has lost its parts is refused", () => {
    const [folder, outside] = [usedFolder(1), freshFolder()];
    const broken = new Database(joinPath(folder, "log.db"));
    broken.exec("INSERT INTO snapshot (id, document, position) VALUES (7, 'team', 1)");
    broken.close();
    const file = joinPath(outside, "broken.backup");
    expect(() => backUpLog(folder, file)).toThrow("is damaged: a snapshot has no parts");
    expect(readdirSync(outside)).toEqual([]);
  });

  it("keeps what was refused, with the reasons", () => {
    const file = joinPath(freshFolder(), "weekend.backup");
    backUpLog(usedFolder(1), file);
    const restored = freshFolder();
    restoreLog(file, restored);
    expect(openStore(restored).quarantined()).toEqual([
      { document: "team", update: new Uint8Array([7]), reason: "too large" },
    ]);
  });

  it("overwrites nothing, and makes no log where there is none", () => {
    const folder = freshFolder();
    const file = joinPath(folder, "weekend.backup");
    writeFileSync(file, "precious");
    expect(() => backUpLog(usedFolder(1), file)).toThrow(`The file ${file} exists already`);
    expect(readFileSync(file, "utf8")).toBe("precious");
    expect(() => backUpLog(folder, `${file}.2`)).toThrow(`There is no log in the data folder ${folder}.`);
    expect(readdirSync(folder)).toEqual(["weekend.backup"]);
  });

  it("says in one sentence that its file cannot be written, and leaves nothing behind", () => {
    const folder = freshFolder();
    const file = joinPath(folder, "nowhere", "weekend.backup");
    expect(() => backUpLog(usedFolder(1), file)).toThrow(/^The log in .* cannot be copied to .*: .*\.$/);
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe("restoring", () => {
  it("is refused into a folder that is not empty, which stays as it is", () => {
    const file = joinPath(freshFolder(), "weekend.backup");
    backUpLog(usedFolder(1, 2), file);
    const used = usedFolder(3);
    expect(() => restoreLog(file, used)).toThrow(
      `The data folder ${used} is not empty; a backup is restored into an empty one only.`,
    );
    expect(numbersInLog(openStore(used))).toEqual([3]);
    const other = freshFolder();
    mkdirSync(joinPath(other, "photos"));
    expect(() => restoreLog(file, other)).toThrow("is not empty");
    expect(readdirSync(other)).toEqual(["photos"]);
  });

  it("is refused for a file that is missing, foreign, damaged or newer, and then still possible with a good one", () => {
    const [outside, folder] = [freshFolder(), freshFolder()];
    const file = (name: string) => joinPath(outside, name);
    backUpLog(usedFolder(...Array.from({ length: 500 }, (_, n) => n)), file("good"));
    writeFileSync(file("foreign"), "These are no records. ".repeat(500));
    const damaged = readFileSync(file("good"));
    damaged.fill(0xa5, 3 * 4096, 5 * 4096);
    writeFileSync(file("damaged"), damaged);
    writeFileSync(file("empty"), "");
    const newer = new Database(file("newer"));
    newer.exec("PRAGMA user_version = 99");
    newer.close();
    expect(() => restoreLog(file("missing"), folder)).toThrow(`There is no file ${file("missing")}.`);
    expect(() => restoreLog(file("damaged"), folder)).toThrow(`The file ${file("damaged")} is damaged.`);
    for (const name of ["foreign", "empty"]) {
      expect(() => restoreLog(file(name), folder)).toThrow(`The file ${file(name)} is no log or is damaged: `);
    }
    expect(() => restoreLog(file("newer"), folder)).toThrow("was written by a newer version of this program (99;");
    expect(readdirSync(folder).filter((name) => name.startsWith("log"))).toEqual([]);
    expect(existsSync(file("missing"))).toBe(false);
    expect(restoreLog(file("good"), folder)).toMatchObject({ updates: 500, documents: 1 });
    expect(openStore(folder).load(season)).toHaveLength(500);
  });
});
