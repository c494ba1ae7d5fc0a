import { maximumReceipts, maximumReceiptWriters } from "./limits.ts";
import type { Receipt } from "./receipt.ts";

/** Most writers that all receipts of one document may name together. */
const maximumKeptWriters = 8 * maximumReceiptWriters;

/** The newest receipt of each device for one document. */
export type ReceiptBook = {
  /**
   * Takes those that are newer than what is known of their device.
   * @returns them, the newer ones known of the rest, and the devices that had to make room.
   */
  take(receipts: readonly Receipt[]): {
    readonly taken: readonly Receipt[];
    readonly newerKnown: readonly Receipt[];
    readonly forgotten: readonly string[];
  };
  of(device: string): Receipt | undefined;
  /** All, the one that changed longest ago first. */
  all(): readonly Receipt[];
};

/**
 * A book without receipts. It holds at most {@link maximumReceipts} devices, and {@link maximumKeptWriters} in all that
 * they say: the one that was silent longest goes.
 */
export function createReceiptBook(): ReceiptBook {
  const byDevice = new Map<string, Receipt>();
  let writers = 0;
  const remove = (device: string): void => {
    writers -= byDevice.get(device)?.stateVector.size ?? 0;
    byDevice.delete(device);
  };
  return {
    take: (receipts) => {
      const taken: Receipt[] = [];
      const newerKnown: Receipt[] = [];
      for (const receipt of receipts) {
        const known = byDevice.get(receipt.device);
        const order = known === undefined ? 1 : inOrder(receipt, known);
        if (order <= 0) {
          if (order < 0 && known !== undefined) newerKnown.push(known);
          continue;
        }
        remove(receipt.device);
        byDevice.set(receipt.device, receipt);
        writers += receipt.stateVector.size;
        taken.push(receipt);
      }
      const forgotten: string[] = [];
      for (const device of byDevice.keys()) {
        if (byDevice.size <= maximumReceipts && writers <= maximumKeptWriters) break;
        remove(device);
        forgotten.push(device);
      }
      return { taken: taken.filter(({ device }) => byDevice.has(device)), newerKnown, forgotten };
    },
    of: (device) => byDevice.get(device),
    all: () => [...byDevice.values()],
  };
}

/**
 * Above 0 when the first one stands. A device that died before it had kept its count may use one a second time with another
 * server: so that both servers keep the same one, the later by its clock stands, or else either of them.
 */
function inOrder(one: Receipt, other: Receipt): number {
  return one.count - other.count || one.at - other.at || compare(contentOf(one), contentOf(other));
}

function contentOf({ member, stateVector, digest }: Receipt): string {
  return [member ?? "", ...[...stateVector].sort(([a], [b]) => a - b), ...digest].join();
}

function compare(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}
