/**
 * Keeps a document on the device, and tells the truth about it: what has not
 * been written yet counts as unsaved, and a write that failed is tried again,
 * with the whole state, until it is done.
 */
import * as Y from "yjs";
import { localClocks } from "#client/device/local-clocks.ts";
import type { DeviceStorage, Timers } from "./device-storage.ts";

/** Updates after which the log of a document is put together into one. */
const UPDATES_BEFORE_COMPACTION = 200;
/** While edits keep coming, a log of this length is put together all the same. */
const MOST_UPDATES = 1000;
/** ms without a new update after which a long log is put together. */
const QUIET_MS = 2000;
/** Failed attempts to read the local copy after which the device goes on without it, and says so. */
const ATTEMPTS_BEFORE_GOING_ON = 3;
/** ms before a failed write is tried again, doubled up to the longest. */
const FIRST_RETRY_MS = 250;
const LONGEST_RETRY_MS = 30_000;

/** Bytes of updates that are read in one turn. */
const BYTES_A_TURN = 65_536;

export interface KeptDocument {
  /** The local copy has been read, or cannot be had: the document may be written to. */
  isLoaded(): boolean;
  /** Updates that are not proven to be on the device's disk. */
  unsaved(): number;
  /** Clocks by writer below which everything is proven to be on the device's disk. */
  saved(): ReadonlyMap<number, number>;
  /** The last attempt to read or write failed, or what was kept may be gone; it is being written again. */
  isFailing(): boolean;
  close(): void;
}

export interface KeepContext {
  readonly name: string;
  readonly ydoc: Y.Doc;
  readonly storage: DeviceStorage;
  readonly timers: Timers;
  /** Calls back when nothing more pressing waits. */
  readonly inTheBackground: (act: () => void) => void;
  readonly onChange: () => void;
  /** Called once, when the document may be written to. */
  readonly onLoaded: () => void;
}

/** Reads the local copy into `ydoc`, and from then on keeps every update of it, wherever it comes from. */
export function keepDocument({
  name,
  ydoc,
  storage,
  timers,
  inTheBackground,
  onChange,
  onLoaded,
}: KeepContext): KeptDocument {
  let loaded = false;
  /** The storage has answered: before that nothing is written to it. */
  let readable = false;
  let closed = false;
  let failures = 0;
  let length = 0;
  let saved: ReadonlyMap<number, number> = new Map();
  let waiting: Uint8Array[] = [];
  let writing = 0;
  let mustRewrite = false;
  /** How often the storage said that what it kept may be gone, and how many of these a write of everything has mended. */
  let losses = 0;
  let mended = 0;
  let callOffRetry: (() => void) | undefined;
  let callOffCompaction: (() => void) | undefined;
  const own = {};

  const failed = (again: () => void): void => {
    failures += 1;
    callOffRetry?.();
    callOffRetry = timers.after(Math.min(FIRST_RETRY_MS * 2 ** (failures - 1), LONGEST_RETRY_MS), again);
    onChange();
  };

  const load = async (): Promise<void> => {
    let updates: readonly Uint8Array[];
    try {
      updates = await storage.load(name);
    } catch {
      if (closed) return;
      failed(() => void load());
      // A browser that gives no storage must not keep the pit waiting. What a later attempt reads is joined in.
      if (failures >= ATTEMPTS_BEFORE_GOING_ON && !loaded) start();
      return;
    }
    if (closed) return;
    for (const [index, turn] of turnsOf(updates).entries()) {
      if (index > 0) await new Promise<void>((resolve) => inTheBackground(resolve));
      if (closed) return;
      apply(turn);
    }
    length = updates.length;
    // What came in before the disk could be read is not on it; then the write that follows tells.
    if (waiting.length === 0 && losses === mended) saved = localClocks(ydoc);
    failures = 0;
    readable = true;
    if (!loaded) start();
    void write();
    compactSoon();
  };

  const apply = (updates: readonly Uint8Array[]): void => {
    // Yjs writes down what a transaction did for whoever listens, which takes as long as reading it: here nobody needs it.
    ydoc.off("update", keep);
    ydoc.transact(() => {
      for (const update of updates) Y.applyUpdate(ydoc, update, own);
    }, own);
    ydoc.on("update", keep);
  };

  const start = (): void => {
    loaded = true;
    onLoaded();
    onChange();
  };

  /** One write at a time, of all that waits. After a failure nobody knows what is there: then the whole state goes. */
  const write = async (): Promise<void> => {
    const mustWriteAll = mustRewrite || losses > mended;
    if (!readable || closed || writing > 0 || (waiting.length === 0 && !mustWriteAll)) return;
    const batch = waiting;
    const clocks = localClocks(ydoc);
    waiting = [];
    writing = Math.max(batch.length, 1);
    const rewrite = mustWriteAll || length + 1 > MOST_UPDATES;
    const mending = losses;
    try {
      if (rewrite) await storage.compact(name, Y.encodeStateAsUpdate(ydoc));
      else await storage.append(name, batch.length === 1 && batch[0] ? batch[0] : Y.mergeUpdates(batch));
    } catch {
      writing = 0;
      waiting = [...batch, ...waiting];
      mustRewrite = true;
      saved = new Map();
      if (!closed) failed(() => void write());
      return;
    }
    writing = 0;
    failures = 0;
    mustRewrite = false;
    // What was lost while this write was under way may be lost with it.
    if (losses === mending) saved = clocks;
    if (rewrite) mended = mending;
    length = rewrite ? 1 : length + 1;
    onChange();
    compactSoon();
    void write();
  };

  const compactSoon = (): void => {
    callOffCompaction?.();
    if (closed || length < UPDATES_BEFORE_COMPACTION) return;
    callOffCompaction = timers.after(QUIET_MS, () => {
      mustRewrite = true;
      void write();
    });
  };

  const keep = (update: Uint8Array, origin: unknown): void => {
    if (origin === own) return;
    waiting.push(update);
    onChange();
    void write();
  };

  const stopHearingLosses = storage.onLoss?.(name, () => {
    losses += 1;
    saved = new Map();
    onChange();
    void write();
  });
  ydoc.on("update", keep);
  void load();
  return {
    isLoaded: () => loaded,
    unsaved: () => waiting.length + writing,
    saved: () => saved,
    isFailing: () => failures > 0 || losses > mended,
    close: () => {
      closed = true;
      ydoc.off("update", keep);
      stopHearingLosses?.();
      callOffRetry?.();
      callOffCompaction?.();
    },
  };
}

/** Updates in the order in which they were kept, so many together as can be read before a touch is answered. */
function turnsOf(updates: readonly Uint8Array[]): readonly (readonly Uint8Array[])[] {
  const turns: Uint8Array[][] = [];
  let bytes = Number.POSITIVE_INFINITY;
  for (const update of updates) {
    if (bytes + update.length > BYTES_A_TURN) {
      turns.push([]);
      bytes = 0;
    }
    turns.at(-1)?.push(update);
    bytes += update.length;
  }
  return turns;
}
