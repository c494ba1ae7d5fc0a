/** Who wrote something, by name. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { memberKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";

/** The name of a member, or the id while the member is not known here. */
export function memberName(ledger: Ledger, memberId: string): string {
  return knownValue(ledger, memberKind, memberId)?.name ?? memberId;
}
