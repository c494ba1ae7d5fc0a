import { budgetBurstBytes, budgetBytesPerMessage, budgetBytesPerSecond } from "#core/protocol/limits.ts";

/** What one socket may send: so many bytes at once, and so many a second for ever. Both above 0. */
export type ByteRate = { readonly bytesPerSecond: number; readonly burstBytes: number };

export const defaultByteRate: ByteRate = { bytesPerSecond: budgetBytesPerSecond, burstBytes: budgetBurstBytes };

/** A token bucket: it begins full, each message takes its bytes out, and time fills it again. */
export type ByteBudget = {
  /** Pays for one message. @returns false when there is not enough left; then nothing is taken. */
  spend(messageBytes: number): boolean;
};

/** @param now milliseconds of a clock that never goes back. */
export function createByteBudget({ bytesPerSecond, burstBytes }: ByteRate, now: () => number): ByteBudget {
  let left = burstBytes;
  let filledAt = now();
  return {
    spend(messageBytes) {
      const time = now();
      left = Math.min(burstBytes, left + ((time - filledAt) / 1000) * bytesPerSecond);
      filledAt = time;
      const price = messageBytes + budgetBytesPerMessage;
      if (price > left) return false;
      left -= price;
      return true;
    },
  };
}
