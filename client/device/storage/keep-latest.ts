/**
 * Keeps the latest of something small beside a document: one write at a time,
 * of what is the latest by then. What could not be kept is known less after a
 * restart, never more; the next change tries again.
 */
export interface LatestKeeper {
  keep(bytes: Uint8Array): void;
  close(): void;
}

export function createLatestKeeper(write: (bytes: Uint8Array) => Promise<void>): LatestKeeper {
  let waiting: Uint8Array | undefined;
  let isWriting = false;
  let closed = false;
  const run = async (): Promise<void> => {
    if (isWriting) return;
    isWriting = true;
    while (waiting && !closed) {
      const bytes = waiting;
      waiting = undefined;
      await write(bytes).catch(() => {});
    }
    isWriting = false;
  };
  return {
    keep: (bytes) => {
      waiting = bytes;
      void run();
    },
    close: () => {
      closed = true;
    },
  };
}
