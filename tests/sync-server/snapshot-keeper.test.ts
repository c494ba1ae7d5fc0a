import { describe, expect, it } from "vitest";
import { createLogger } from "#server/logging.ts";
import { createSnapshotKeeper, defaultSnapshotLimits, type SnapshotLimits } from "#server/snapshot/snapshot-keeper.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import type { UpdateStore } from "#server/store/update-store.ts";
import { createFakeTime } from "#tests/builders/fake-time.ts";
import { deviceDocument, numbered, numbersInLog, push, season } from "./server-fixture.ts";

const limits: SnapshotLimits = { ...defaultSnapshotLimits, rows: 10, quietMs: 1000, mostTimes: 4, retryMs: 60_000 };

type Options = { readonly limits?: Partial<SnapshotLimits>; readonly store?: UpdateStore; readonly before?: number };

/** A keeper on a clock that the test drives, and a document with `before` updates that it finds at its start. */
async function keeper(options: Options = {}) {
  const time = createFakeTime();
  const log: string[] = [];
  const state = { isOpen: true, isFlushDue: false };
  const store = options.store ?? createMemoryStore();
  const device = deviceDocument(5);
  let count = 0;
  const append = (updates: number) => {
    for (let n = 0; n < updates; n++) {
      count += 1;
      store.append([{ document: season, update: push(device, numbered(count)) }]);
    }
  };
  append(options.before ?? 0);
  const made = createSnapshotKeeper({
    store,
    logger: createLogger("info", (line) => log.push(line)),
    limits: { ...limits, ...options.limits },
    now: time.now,
    // As Node's timers: never sooner than in a millisecond.
    after: (ms, act) => time.after(Math.max(1, ms), act),
    isOpen: () => state.isOpen,
    isFlushDue: () => state.isFlushDue,
  });
  if (options.before === undefined) await time.pass(1);
  const write = (updates: number) => {
    append(updates);
    made.written(season);
  };
  return { made, store, time, log, state, write, rows: () => store.extent(season).rows };
}

describe("a snapshot of an open document", () => {
  it("is taken when there are more updates than the limit and nothing was written for a while", async () => {
    const { made, write, rows, time, store, log } = await keeper();
    write(11);
    await time.pass(998);
    expect(rows()).toBe(11);
    await time.pass(1002);
    expect(rows()).toBe(0);
    expect(numbersInLog(store)).toHaveLength(11);
    expect(made.report()).toMatchObject({ snapshots: 1, failures: 0 });
    expect(log.join()).toContain("snapshot taken");
  });

  it("is taken when there are more bytes than the limit", async () => {
    const { write, rows, time } = await keeper({ limits: { bytes: 500 } });
    write(5);
    await time.pass(2000);
    expect(rows()).toBe(0);
  });

  it("is not taken at the limit or below it", async () => {
    const { write, rows, time, made } = await keeper();
    write(10);
    await time.pass(100_000);
    expect(rows()).toBe(10);
    expect(made.report().snapshots).toBe(0);
  });

  it("waits while it is written to, but not for ever", async () => {
    const { write, rows, time } = await keeper();
    for (let n = 0; n < 40; n++) {
      write(1);
      await time.pass(900);
    }
    expect(rows()).toBe(40);
    write(1);
    await time.pass(100);
    expect(rows()).toBe(0);
  });

  it("begins also when writes follow each other sooner than its turns do", async () => {
    const { made, write, time } = await keeper();
    write(41);
    for (let n = 0; n < 100; n++) {
      await time.pass(0.5);
      write(1);
    }
    expect(made.report().snapshots).toBeGreaterThan(0);
  });

  it("waits for a flush that is due, at each turn", async () => {
    const { write, rows, time, state } = await keeper();
    write(11);
    state.isFlushDue = true;
    await time.pass(10_000);
    expect(rows()).toBe(11);
    state.isFlushDue = false;
    await time.pass(100);
    expect(rows()).toBe(0);
  });

  it("of many bytes waits until it is closed", async () => {
    const { made, write, rows, time, state } = await keeper({ limits: { largeBytes: 100 } });
    write(100);
    await time.pass(100_000);
    expect(rows()).toBe(100);
    state.isOpen = false;
    made.closed(season);
    await time.pass(100);
    expect(rows()).toBe(0);
  });
});

describe("a snapshot of a closed document", () => {
  it("is taken as soon as it is closed", async () => {
    const { made, write, rows, time, state } = await keeper();
    write(11);
    state.isOpen = false;
    made.closed(season);
    await time.pass(100);
    expect(rows()).toBe(0);
  });

  it("is taken at the start when an earlier run has left many updates", async () => {
    const { rows, time, state } = await keeper({ before: 11 });
    state.isOpen = false;
    await time.pass(100);
    expect(rows()).toBe(0);
  });
});

describe("a snapshot that fails", () => {
  /** A log whose snapshots are spoiled on the way, until it is repaired. */
  function spoiling() {
    const store = createMemoryStore();
    const state = { isSpoiling: true };
    const spoilt: UpdateStore = {
      ...store,
      draftSnapshot: (document) => {
        const draft = store.draftSnapshot(document);
        return { ...draft, write: (part) => draft.write(state.isSpoiling ? part.fill(1, 20, 22) : part) };
      },
    };
    return { store: spoilt, state };
  }

  it("leaves the updates, is logged and counted, and is tried again after a while", async () => {
    const { store, state } = spoiling();
    const { made, write, rows, time, log } = await keeper({ store });
    write(11);
    await time.pass(3000);
    expect(rows()).toBe(11);
    expect(made.report()).toMatchObject({ snapshots: 0, failures: 1 });
    expect(log.join()).toContain("snapshot failed; the log stays as it was");
    state.isSpoiling = false;
    await time.pass(50_000);
    expect(made.report()).toMatchObject({ snapshots: 0, failures: 1 });
    await time.pass(20_000);
    expect(rows()).toBe(0);
    expect(made.report()).toMatchObject({ snapshots: 1, failures: 1 });
  });

  it("because the medium does, leaves the updates", async () => {
    const memory = createMemoryStore();
    const store: UpdateStore = {
      ...memory,
      draftSnapshot: () => {
        throw new Error("database or disk is full");
      },
    };
    const { made, write, rows, time, log } = await keeper({ store });
    write(11);
    await time.pass(3000);
    expect(rows()).toBe(11);
    expect(made.report().failures).toBe(1);
    expect(log.join()).toContain("database or disk is full");
  });
});

it("stops in the middle of a snapshot, which leaves the updates as they are", async () => {
  const { made, write, rows, time, state, store } = await keeper();
  let turns = 0;
  write(41);
  const stopSoon = () => {
    turns += 1;
    if (turns === 3) made.stop();
    else time.after(0, stopSoon);
  };
  time.after(0, stopSoon);
  await time.pass(100_000);
  expect(rows()).toBe(41);
  state.isOpen = false;
  made.closed(season);
  write(1);
  await time.pass(100_000);
  expect(rows()).toBe(42);
  expect(numbersInLog(store)).toHaveLength(42);
});
