import type { LogEntry, QuarantinedUpdate, UpdateStore } from "./update-store.ts";

/** A log that lives as long as the process: for tests and for replays that need no disk. */
export function createMemoryStore(): UpdateStore {
  const log: LogEntry[] = [];
  const receipts = new Map<string, Map<string, Uint8Array>>();
  const refused: QuarantinedUpdate[] = [];
  const positions = new Map<string, number>();
  let open = true;
  const assertOpen = (): void => {
    if (!open) throw new Error("The log is closed.");
  };
  return {
    append(entries) {
      assertOpen();
      for (const { document, update } of entries) {
        positions.set(document, log.push({ document, update: update.slice() }));
      }
    },
    load(document) {
      assertOpen();
      return log.filter((entry) => entry.document === document).map((entry) => entry.update.slice());
    },
    documents() {
      assertOpen();
      return [...positions.keys()].sort();
    },
    positions() {
      assertOpen();
      return new Map(positions);
    },
    keepReceipts(entries) {
      assertOpen();
      for (const { document, device, receipt } of entries) {
        const known = receipts.get(document) ?? new Map<string, Uint8Array>();
        receipts.set(document, known.set(device, receipt.slice()));
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
      return [...log, ...refused].reduce((bytes, { update }) => bytes + update.length, 0);
    },
    close() {
      open = false;
    },
  };
}
