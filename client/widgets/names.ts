/** What people and things are called; the id while they are not known here. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { bikeKind, memberKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { sessionKind } from "#core/weekend/record-kinds.ts";

export function memberName(ledger: Ledger, memberId: string): string {
  return knownValue(ledger, memberKind, memberId)?.name ?? memberId;
}

export function riderName(ledger: Ledger, riderId: string): string {
  return knownValue(ledger, riderKind, riderId)?.name ?? riderId;
}

export function bikeName(ledger: Ledger, bikeId: string): string {
  return knownValue(ledger, bikeKind, bikeId)?.name ?? bikeId;
}

export function partName(ledger: Ledger, partId: string): string {
  return knownValue(ledger, partKind, partId)?.name ?? partId;
}

/** The session of a weekend. */
export function sessionName(ledger: Ledger, { weekend, session }: { weekend: string; session: string }): string {
  return knownValue(ledger, sessionKind, `${weekend}/${session}`)?.name ?? session;
}
