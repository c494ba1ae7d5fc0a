/** A device's disk: writes take time, and what was not finished when the device dies is gone. */
import * as Y from "yjs";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import type { Chance } from "./chance.ts";
import type { Mutation } from "./mutation.ts";
import type { VirtualTime } from "./virtual-time.ts";

export interface SimulatedDisk extends DeviceStorage {
  /** Ends all writes under way: the device has died. */
  die(): void;
  /** While true, every write fails. */
  setFull(full: boolean): void;
  /** The next write fails, as when the browser has closed the database. */
  failNext(): void;
  /** Empties it, as a browser does that evicts a site. */
  wipe(): void;
  /** What it holds now; {@link SimulatedDisk.restore} brings it back. */
  copy(): ReadonlyMap<string, readonly Uint8Array[]>;
  restore(copy: ReadonlyMap<string, readonly Uint8Array[]>): void;
  /** Grows with every change of what it holds. */
  version(): number;
  /** Whether another tab has kept something that a tab which is open has not seen. */
  hasOtherTab(): boolean;
  /** Another tab keeps an update of its own. */
  keepFromOtherTab(document: string, update: Uint8Array): void;
}

export function createSimulatedDisk(time: VirtualTime, chance: Chance, mutation: Mutation | undefined): SimulatedDisk {
  let documents = new Map<string, readonly Uint8Array[]>();
  let notes = new Map<string, Uint8Array>();
  let generation = 0;
  let full = false;
  let failsNext = false;
  let version = 0;
  let otherTab = false;
  const put = (document: string, updates: readonly Uint8Array[]): void => {
    version += 1;
    documents.set(document, updates);
  };

  /** Does the work after a while, unless the device has died or the disk is full by then. */
  const afterAWhile = <Result>(work: () => Result): Promise<Result> => {
    const own = generation;
    return new Promise((resolve, reject) => {
      if (mutation === "count as saved when handed over") resolve(undefined as Result);
      time.after(chance.whole(1, 30), () => {
        if (own !== generation) return;
        const fails = failsNext;
        failsNext = false;
        if (full) reject(new Error("The disk is full."));
        else if (fails) reject(new Error("The browser has closed the database."));
        else resolve(work());
      });
    });
  };
  return {
    documents: async () => [...documents.keys()],
    load: (document) =>
      new Promise((resolve) => {
        time.after(chance.whole(1, 10), () => resolve(documents.get(document) ?? []));
      }),
    append: (document, update) =>
      afterAWhile(() => {
        put(document, [...(documents.get(document) ?? []), update]);
      }),
    compact: (document, state) =>
      afterAWhile(() => {
        const kept = mutation === "compact over another tab" ? [] : (documents.get(document) ?? []);
        put(document, [Y.mergeUpdates([...kept, state])]);
      }),
    loadNote: async (document, note) => notes.get(`${note} ${document}`),
    keepNote: (document, note, bytes) => afterAWhile(() => void notes.set(`${note} ${document}`, bytes)),
    changeNote: (document, note, change) =>
      afterAWhile(() => void notes.set(`${note} ${document}`, change(notes.get(`${note} ${document}`)))),
    die: () => {
      generation += 1;
    },
    setFull: (value) => {
      full = value;
    },
    failNext: () => {
      failsNext = true;
    },
    wipe: () => {
      version += 1;
      documents = new Map();
      notes = new Map();
    },
    copy: () => new Map(documents),
    restore: (copy) => {
      version += 1;
      documents = new Map(copy);
      notes = new Map();
    },
    version: () => version,
    hasOtherTab: () => otherTab,
    keepFromOtherTab: (document, update) => {
      otherTab = true;
      put(document, [...(documents.get(document) ?? []), update]);
    },
  };
}
