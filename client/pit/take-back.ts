/** Taking records back that were written here. */
import type { Device } from "#client/device/create-device.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { splitSubject } from "#core/ledger/record.ts";
import type { WriteResult } from "#core/ledger/write.ts";

/**
 * Whether a record can be taken back: it is still what is current, so that nothing is touched that somebody has done since,
 * and there was one state before it. What settled a dispute has none.
 */
export function canTakeBack(ledger: Ledger, id: string): boolean {
  const record = ledger.record(id);
  const before = ledger.before(id);
  if (!record || !before || before.missing.length > 0 || before.current.state === "disputed") return false;
  const { kind, key } = splitSubject(record.subject);
  const known = ledger.registry.find(kind);
  return known !== undefined && ledger.heads(known, key).some((head) => head.id === id);
}

/** Takes them back, the newest first; ends at the first that is refused. */
export function takeBack(device: Pick<Device, "revert">, ids: readonly string[]): WriteResult {
  let last: WriteResult = { ok: true, records: [], unchanged: true };
  for (const id of [...ids].sort().reverse()) {
    last = device.revert(id);
    if (!last.ok) return last;
  }
  return last;
}
