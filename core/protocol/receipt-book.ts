import { maximumReceipts } from "./limits.ts";
import type { Receipt } from "./receipt.ts";

/** The newest receipt of each device for one document. */
export type ReceiptBook = {
  /** Takes those that are newer than what is known of their device. @returns them, and the newer ones known of the rest. */
  take(receipts: readonly Receipt[]): { readonly taken: readonly Receipt[]; readonly newerKnown: readonly Receipt[] };
  of(device: string): Receipt | undefined;
  /** All, the one that changed longest ago first. */
  all(): readonly Receipt[];
};

/** A book without receipts. It holds at most {@link maximumReceipts} devices: the one that was silent longest goes. */
export function createReceiptBook(): ReceiptBook {
  const byDevice = new Map<string, Receipt>();
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
        byDevice.delete(receipt.device);
        byDevice.set(receipt.device, receipt);
        taken.push(receipt);
      }
      for (const device of byDevice.keys()) {
        if (byDevice.size <= maximumReceipts) break;
        byDevice.delete(device);
      }
      return { taken: taken.filter(({ device }) => byDevice.has(device)), newerKnown };
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
