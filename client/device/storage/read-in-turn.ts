/** Local copies are read one after the other, so that a screen is painted and a touch is answered in between. */
import type { DeviceStorage, Timers } from "./device-storage.ts";

/** ms between two of them: enough for a frame. */
const PAUSE_MS = 20;

/** The same storage, whose documents are read one at a time, in the order in which they are asked for. */
export function readInTurn(storage: DeviceStorage, timers: Timers): DeviceStorage {
  let last: Promise<unknown> | undefined;
  const inTurn = <Read>(read: () => Promise<Read>): Promise<Read> => {
    const before = last;
    const next = before
      ? before
          .catch(() => {})
          .then(() => new Promise<void>((resolve) => void timers.after(PAUSE_MS, resolve)))
          .then(read)
      : read();
    last = next;
    return next;
  };
  return { ...storage, load: (name) => inTurn(() => storage.load(name)) };
}
