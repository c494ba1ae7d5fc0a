import { decodeKeptReceipts, encodeKeptReceipts, type Receipt } from "#core/protocol/receipt.ts";
import { type Logger, reasonOf } from "./logging.ts";
import type { ReceiptEntry, UpdateStore } from "./store/update-store.ts";

/** Keeps the devices' receipts on the disk, so that a device that has gone home still counts after a restart. */
export type ReceiptKeeper = {
  /** Writes them soon, together with those that come in the same turn, and removes those of devices that made room. */
  keep(document: string, receipts: readonly Receipt[], forgotten: readonly string[]): void;
  /** @throws when the log cannot be read. A damaged receipt is left out: it claims less, never more. */
  load(document: string): readonly Receipt[];
  /** Writes what waits. */
  flush(): void;
};

type KeeperNeeds = {
  readonly store: UpdateStore;
  readonly logger: Logger;
  readonly schedule: (write: () => void) => void;
};

/** A receipt that is lost makes a claim smaller and is sent again, so nothing waits for its write and none is tried again. */
export function createReceiptKeeper({ store, logger, schedule }: KeeperNeeds): ReceiptKeeper {
  const waiting = new Map<string, ReceiptEntry>();
  let isScheduled = false;

  function flush(): void {
    isScheduled = false;
    if (waiting.size === 0) return;
    const entries = [...waiting.values()];
    waiting.clear();
    try {
      store.keepReceipts(entries);
    } catch (error) {
      logger.error("receipts could not be kept", { receipts: entries.length, reason: reasonOf(error) });
    }
  }

  return {
    keep(document, receipts, forgotten) {
      for (const device of forgotten) waiting.set(`${document}\n${device}`, { document, device, receipt: undefined });
      for (const receipt of receipts) {
        const { device } = receipt;
        waiting.set(`${document}\n${device}`, { document, device, receipt: encodeKeptReceipts([receipt]) });
      }
      if (isScheduled || waiting.size === 0) return;
      isScheduled = true;
      schedule(flush);
    },
    load: (document) => {
      flush();
      return store.receipts(document).flatMap((bytes) => decodeKeptReceipts(bytes) ?? []);
    },
    flush,
  };
}
