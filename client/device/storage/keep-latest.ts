/**
 * Keeps the latest of something small beside a document: one write at a time,
 * of what is the latest by then. What is kept already is not written again, unless
 * the storage says that it may be gone; a write that failed is tried again with
 * the next call.
 */
import { bytesEqual } from "#client/device/bytes-equal.ts";
import type { DeviceStorage, Note } from "./device-storage.ts";

export interface LatestKeeper {
  keep(bytes: Uint8Array): void;
  close(): void;
}

export function createLatestKeeper(
  storage: Pick<DeviceStorage, "keepNote" | "onLoss">,
  document: string,
  note: Note,
): LatestKeeper {
  let latest: Uint8Array | undefined;
  let kept: Uint8Array | undefined;
  let isWriting = false;
  let closed = false;
  const run = async (): Promise<void> => {
    if (isWriting) return;
    isWriting = true;
    try {
      while (!closed && latest && !(kept && bytesEqual(kept, latest))) {
        const bytes = latest;
        kept = bytes;
        await storage.keepNote(document, note, bytes);
      }
    } catch {
      // Not kept is known less after a restart, never more.
      kept = undefined;
    }
    isWriting = false;
  };
  const stopHearingLosses = storage.onLoss?.(document, () => {
    kept = undefined;
    void run();
  });
  return {
    keep: (bytes) => {
      latest = bytes;
      void run();
    },
    close: () => {
      closed = true;
      stopHearingLosses?.();
    },
  };
}
