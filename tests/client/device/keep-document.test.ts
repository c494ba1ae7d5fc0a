import { describe, expect, test } from "vitest";
import * as Y from "yjs";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { keepDocument } from "#client/device/storage/keep-document.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { createFakeTime } from "#tests/builders/fake-time.ts";

/** A memory storage whose disk can be made to fail, and that counts its writes. */
function failingStorage() {
  const disk = createMemoryStorage();
  const state = { fails: false, writes: 0 };
  const guarded =
    <Args extends unknown[], Result>(work: (...args: Args) => Promise<Result>) =>
    async (...args: Args): Promise<Result> => {
      state.writes += 1;
      if (state.fails) throw new Error("The disk is full.");
      return work(...args);
    };
  const storage: DeviceStorage = {
    ...disk,
    load: guarded(disk.load),
    append: guarded(disk.append),
    compact: guarded(disk.compact),
  };
  return { disk, state, storage };
}

/** A storage that says when what it kept may be gone. */
function losingStorage() {
  let disk = createMemoryStorage();
  const listeners = new Set<() => void>();
  let write = (): Promise<void> => Promise.resolve();
  const storage: DeviceStorage = {
    documents: () => disk.documents(),
    load: (name) => disk.load(name),
    append: async (name, update) => {
      const here = disk;
      await write();
      await here.append(name, update);
    },
    compact: async (name, state) => {
      const here = disk;
      await write();
      await here.compact(name, state);
    },
    loadNote: (name, note) => disk.loadNote(name, note),
    keepNote: (name, note, bytes) => disk.keepNote(name, note, bytes),
    changeNote: (name, note, change) => disk.changeNote(name, note, change),
    onLoss: (_name, listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
  return {
    storage,
    disk: () => disk,
    listeners,
    /** Until the returned function is called, writes hang. */
    hold: (): (() => void) => {
      let go = (): void => {};
      const held = new Promise<void>((resolve) => {
        go = resolve;
      });
      const own = (): Promise<void> => held;
      write = own;
      return () => {
        if (write === own) write = () => Promise.resolve();
        go();
      };
    },
    lose: () => {
      disk = createMemoryStorage();
      for (const listener of listeners) listener();
    },
  };
}

function keep(storage: DeviceStorage) {
  const ydoc = new Y.Doc();
  const time = createFakeTime();
  let loads = 0;
  const kept = keepDocument({
    name: "team",
    ydoc,
    storage,
    timers: time,
    inTheBackground: (act) => void time.after(0, act),
    onChange: () => {},
    onLoaded: () => {
      loads += 1;
    },
  });
  return { ydoc, time, kept, loads: () => loads, push: (entry: string) => ydoc.getArray("records").push([entry]) };
}

async function onDisk(disk: DeviceStorage): Promise<readonly unknown[]> {
  const ydoc = new Y.Doc();
  for (const update of await disk.load("team")) Y.applyUpdate(ydoc, update);
  return ydoc.getArray("records").toArray();
}

describe("a kept document", () => {
  test("is read a part a turn where it is large, and is not loaded before all of it is read", async () => {
    const { storage, disk } = failingStorage();
    const long = "x".repeat(40_000);
    for (const name of ["a", "b", "c"]) {
      const written = new Y.Doc();
      written.getArray("records").push([`${name}${long}`]);
      await disk.append("team", Y.encodeStateAsUpdate(written));
    }
    const { kept, ydoc, time, loads } = keep(storage);
    const lengths: number[] = [];
    ydoc.on("afterTransaction", () => lengths.push(ydoc.getArray("records").length));
    for (let turn = 0; turn < 5; turn++) {
      expect(kept.isLoaded()).toBe(ydoc.getArray("records").length === 3);
      await time.pass(0);
    }
    expect([...new Set(lengths)]).toEqual([0, 1, 2, 3]);
    expect(loads()).toBe(1);
  });

  test("counts an entry as unsaved until its write is done", async () => {
    const { storage, disk } = failingStorage();
    const { kept, time, push } = keep(storage);
    await time.pass(0);
    push("a");
    expect(kept.unsaved()).toBe(1);
    await time.pass(0);
    expect(kept.unsaved()).toBe(0);
    expect(await onDisk(disk)).toEqual(["a"]);
  });

  test("says that storage fails, keeps what could not be written, and writes all of it when it can", async () => {
    const { storage, disk, state } = failingStorage();
    const { kept, time, push } = keep(storage);
    await time.pass(0);
    state.fails = true;
    push("a");
    push("b");
    await time.pass(1000);
    expect(kept.isFailing()).toBe(true);
    expect(kept.unsaved()).toBeGreaterThan(0);
    state.fails = false;
    await time.pass(60_000);
    expect(kept.isFailing()).toBe(false);
    expect(kept.unsaved()).toBe(0);
    expect(await onDisk(disk)).toEqual(["a", "b"]);
  });

  test("goes on without a local copy when the storage cannot be read, and joins it in when it can", async () => {
    const { storage, disk, state } = failingStorage();
    const before = new Y.Doc();
    before.getArray("records").push(["from before"]);
    await disk.append("team", Y.encodeStateAsUpdate(before));
    state.fails = true;
    const { kept, time, push, ydoc, loads } = keep(storage);
    await time.pass(5000);
    expect(kept.isLoaded()).toBe(true);
    expect(kept.isFailing()).toBe(true);
    push("meanwhile");
    state.fails = false;
    await time.pass(60_000);
    expect(loads()).toBe(1);
    expect([...ydoc.getArray("records").toArray()].sort()).toEqual(["from before", "meanwhile"]);
    expect([...(await onDisk(disk))].sort()).toEqual(["from before", "meanwhile"]);
  });

  test("does not hammer a failing disk: the waits grow", async () => {
    const { storage, state } = failingStorage();
    const { time, push } = keep(storage);
    await time.pass(0);
    state.fails = true;
    state.writes = 0;
    push("a");
    await time.pass(60_000);
    expect(state.writes).toBeGreaterThan(3);
    expect(state.writes).toBeLessThan(12);
  });

  test("puts a long log together once it is quiet, and also while edits keep coming", async () => {
    const { storage, disk } = failingStorage();
    const { time, push } = keep(storage);
    await time.pass(0);
    for (let index = 0; index < 250; index += 1) {
      push(`quiet ${index}`);
      await time.pass(1);
    }
    expect((await disk.load("team")).length).toBe(250);
    await time.pass(3000);
    expect((await disk.load("team")).length).toBe(1);
    let longest = 0;
    for (let index = 0; index < 1500; index += 1) {
      push(`busy ${index}`);
      await time.pass(1);
      longest = Math.max(longest, (await disk.load("team")).length);
    }
    expect(longest).toBeLessThanOrEqual(1000);
    expect(await onDisk(disk)).toHaveLength(1750);
  });

  test("writes everything again when the storage has lost it, and says that it is not saved until then", async () => {
    const { storage, disk, lose, hold } = losingStorage();
    const { kept, time, push, ydoc } = keep(storage);
    await time.pass(0);
    push("a");
    await time.pass(0);
    expect(kept.saved().get(ydoc.clientID)).toBe(1);
    const release = hold();
    lose();
    await time.pass(1000);
    expect(kept.isFailing()).toBe(true);
    expect(kept.saved().size).toBe(0);
    release();
    await time.pass(0);
    expect(kept.isFailing()).toBe(false);
    expect(kept.saved().get(ydoc.clientID)).toBe(1);
    expect(await onDisk(disk())).toEqual(["a"]);
  });

  test("a loss while everything is being written again asks for one more time", async () => {
    const { storage, disk, lose, hold } = losingStorage();
    const { kept, time, push } = keep(storage);
    await time.pass(0);
    push("a");
    await time.pass(0);
    const releaseFirst = hold();
    lose();
    await time.pass(0);
    const releaseSecond = hold();
    lose();
    releaseFirst();
    await time.pass(0);
    expect(kept.isFailing()).toBe(true);
    expect(kept.saved().size).toBe(0);
    releaseSecond();
    await time.pass(0);
    expect(kept.isFailing()).toBe(false);
    expect(await onDisk(disk())).toEqual(["a"]);
  });

  test("hears of no losses once it is closed", () => {
    const { storage, listeners } = losingStorage();
    const { kept } = keep(storage);
    expect(listeners.size).toBe(1);
    kept.close();
    expect(listeners.size).toBe(0);
  });
});
