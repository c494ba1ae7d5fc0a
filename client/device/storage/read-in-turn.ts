/** Local copies are read one after the other, so that a screen is painted and a touch is answered in between. */
import type { DeviceStorage } from "./device-storage.ts";

/**
 * The same storage, whose documents are read one at a time, in the order in which they are asked for. The first is handed
 * over at once, since nothing can be shown without it; each later one when nothing more pressing waits.
 * @param inTheBackground calls back then
 */
export function readInTurn(storage: DeviceStorage, inTheBackground: (act: () => void) => void): DeviceStorage {
  let last: Promise<unknown> | undefined;
  const load = (name: string): Promise<readonly Uint8Array[]> => {
    const next =
      last === undefined
        ? storage.load(name)
        : last.then(async () => {
            const updates = await storage.load(name);
            await new Promise<void>((resolve) => inTheBackground(resolve));
            return updates;
          });
    last = next.catch(() => {});
    return next;
  };
  return { ...storage, load };
}
