/** Where an entry is proven to be, in one sentence. */
import { common } from "#client/text/common.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { memberName } from "./names.ts";

/** The server, and the devices that hold it. */
export interface EntryHolding {
  readonly server: boolean;
  readonly devices: readonly { readonly isThis: boolean; readonly member: string | undefined }[];
}

/** Names whom other devices belong to; says what is not proven. */
export function holdingInWords(ledger: Ledger, { server, devices }: EntryHolding): string {
  const others = devices.filter(({ isThis }) => !isThis);
  const names = [
    ...new Set(others.flatMap(({ member }) => (member === undefined ? [] : [memberName(ledger, member)]))),
  ];
  const unnamed = others.filter(({ member }) => member === undefined).length;
  const whom = [
    ...names.sort((a, b) => a.localeCompare(b, "en")),
    ...(unnamed > 0 ? [common.holding.unnamed(unnamed)] : []),
  ];
  return common.holding.sentence({
    here: devices.some(({ isThis }) => isThis),
    server,
    with: whom.length === 0 ? undefined : whom.join(", "),
  });
}
