/** What the server was proven to hold of a document, kept over a start: without a network nobody else can tell. */
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createLatestKeeper } from "#client/device/storage/keep-latest.ts";
import {
  type DurableAcknowledgement,
  decodeKeptAcknowledgement,
  encodeKeptAcknowledgement,
} from "#core/protocol/durable-acknowledgement.ts";

export interface RememberedHeld {
  /** What was kept before this start, once it has been read. */
  before(): DurableAcknowledgement | undefined;
  keep(acknowledgement: DurableAcknowledgement): void;
  close(): void;
}

/** @param onRead called when there is something and it has been read */
export function rememberHeld(
  name: string,
  storage: Pick<DeviceStorage, "loadNote" | "keepNote" | "onLoss">,
  onRead: (acknowledgement: DurableAcknowledgement) => void,
): RememberedHeld {
  const keeper = createLatestKeeper(storage, name, "held");
  let before: DurableAcknowledgement | undefined;
  storage.loadNote(name, "held").then(
    (bytes) => {
      before = bytes && decodeKeptAcknowledgement(bytes);
      if (before) onRead(before);
    },
    // A storage that cannot be read is told by the document itself.
    () => {},
  );
  return {
    before: () => before,
    keep: (acknowledgement) => {
      if (acknowledgement.digest) keeper.keep(encodeKeptAcknowledgement(acknowledgement));
    },
    close: keeper.close,
  };
}
