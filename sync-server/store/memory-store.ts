import type { LogExtent, QuarantinedUpdate, SnapshotDraft, UpdateStore } from "./update-store.ts";

type Row = { readonly position: number; readonly update: Uint8Array };
type DocumentLog = { newest: number; snapshot: readonly Uint8Array[]; rows: Row[] };

/** So many updates a draft reads at a time. */
const rowsAtOnce = 200;

/** A log that lives as long as the process: for tests and for replays that need no disk. */
export function createMemoryStore(): UpdateStore {
  const logs = new Map<string, DocumentLog>();
  const receipts = new Map<string, Map<string, Uint8Array>>();
  const refused: QuarantinedUpdate[] = [];
  let newest = 0;
  let newestDraft: SnapshotDraft | undefined;
  let open = true;
  const assertOpen = (): void => {
    if (!open) throw new Error("The log is closed.");
  };
  return {
    append(entries) {
      assertOpen();
      for (const { document, update } of entries) {
        newest += 1;
        const log = logs.get(document) ?? { newest, snapshot: [], rows: [] };
        log.newest = newest;
        log.rows.push({ position: newest, update: update.slice() });
        logs.set(document, log);
      }
    },
    load(document) {
      assertOpen();
      return updatesIn(logs.get(document)).map((update) => update.slice());
    },
    documents() {
      assertOpen();
      return [...logs.keys()].sort();
    },
    positions() {
      assertOpen();
      return new Map([...logs].map(([document, log]) => [document, log.newest]));
    },
    extent(document) {
      assertOpen();
      return extentOf(logs.get(document));
    },
    draftSnapshot(document) {
      assertOpen();
      newestDraft?.discard();
      newestDraft = draftOf(logs.get(document) ?? { newest: 0, snapshot: [], rows: [] }, assertOpen);
      return newestDraft;
    },
    giveBackSpace() {
      assertOpen();
      return false;
    },
    keepReceipts(entries) {
      assertOpen();
      for (const { document, device, receipt } of entries) {
        const known = receipts.get(document) ?? new Map<string, Uint8Array>();
        if (receipt === undefined) known.delete(device);
        else known.set(device, receipt.slice());
        receipts.set(document, known);
      }
    },
    receipts(document) {
      assertOpen();
      return [...(receipts.get(document)?.values() ?? [])].map((receipt) => receipt.slice());
    },
    quarantine(document, update, reason) {
      assertOpen();
      refused.push({ document, update: update.slice(), reason });
    },
    quarantined() {
      assertOpen();
      return [...refused];
    },
    sizeBytes() {
      assertOpen();
      return bytesOf([...logs.values()].flatMap(updatesIn)) + bytesOf(refused.map(({ update }) => update));
    },
    close() {
      open = false;
    },
  };
}

function updatesIn(log: DocumentLog | undefined): readonly Uint8Array[] {
  return log === undefined ? [] : [...log.snapshot, ...log.rows.map(({ update }) => update)];
}

function bytesOf(updates: readonly Uint8Array[]): number {
  return updates.reduce((bytes, { length }) => bytes + length, 0);
}

function extentOf(log: DocumentLog | undefined): LogExtent {
  const rows = log?.rows ?? [];
  return {
    rows: rows.length,
    rowBytes: bytesOf(rows.map(({ update }) => update)),
    snapshotBytes: bytesOf(log?.snapshot ?? []),
  };
}

function draftOf(log: DocumentLog, assertOpen: () => void): SnapshotDraft {
  const position = log.newest;
  const unread = [...updatesIn(log)];
  const parts: Uint8Array[] = [];
  let partsRead = 0;
  let isEnded = false;
  const assertGoesOn = (): void => {
    assertOpen();
    if (isEnded) throw new Error("The snapshot's draft has ended.");
  };
  return {
    position,
    read() {
      assertGoesOn();
      return unread.splice(0, rowsAtOnce).map((update) => update.slice());
    },
    write(part) {
      assertGoesOn();
      parts.push(part.slice());
    },
    readBack() {
      assertGoesOn();
      partsRead += 1;
      return parts[partsRead - 1]?.slice();
    },
    adopt() {
      assertGoesOn();
      isEnded = true;
      log.snapshot = parts;
      log.rows = log.rows.filter((row) => row.position > position);
    },
    discard() {
      isEnded = true;
    },
  };
}
