/** Taking records back that were written here. */
import { batch } from "solid-js";
import type { WriteResult } from "#core/ledger/write.ts";
import type { Device } from "./create-device.ts";

/** Takes them back, the newest first; ends at the first that is refused. */
export function takeBack(device: Pick<Device, "revert">, ids: readonly string[]): WriteResult {
  // The screens follow once, when all of it is done.
  return batch(() => {
    let last: WriteResult = { ok: true, records: [], unchanged: true };
    for (const id of [...ids].sort().reverse()) {
      last = device.revert(id);
      if (!last.ok) return last;
    }
    return last;
  });
}
