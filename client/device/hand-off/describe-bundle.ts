/** What a bundle would bring to this device, before it is merged. */

import type { Ledger } from "#core/ledger/ledger.ts";
import { isJsonObject } from "#core/ledger/plain-json.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { subjectOf } from "#core/ledger/record.ts";
import { memberKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import type { Bundle } from "./bundle.ts";
import { spanOf } from "./check-document.ts";

export interface BundleNews {
  /** Records that are not on this device. */
  readonly records: number;
  /** Whose they are, most records first. */
  readonly people: readonly { readonly name: string; readonly records: number }[];
  /** Times of the first and last of them, by their writers' clocks. */
  readonly first?: string;
  readonly last?: string;
}

/**
 * @param fresh the records that the documents here do not hold; those that the ledger has all the same (from another
 * document or under other numbers) are left out
 */
export function describeBundle(ledger: Ledger, bundle: Bundle, fresh: readonly LedgerRecord[]): BundleNews {
  const unknown = new Map(
    fresh.filter(({ id }) => ledger.record(id) === undefined).map((record) => [record.id, record]),
  );
  const counts = new Map<string, number>();
  for (const { by } of unknown.values()) counts.set(by, (counts.get(by) ?? 0) + 1);
  const people = [...counts]
    .map(([by, records]) => ({ name: nameOf(by, ledger, bundle), records }))
    .sort((a, b) => b.records - a.records || a.name.localeCompare(b.name, "en"));
  return { records: unknown.size, people, ...spanOf([...unknown.values()]) };
}

/** The member's name here, else as the file has it, else the id. */
function nameOf(memberId: string, ledger: Ledger, bundle: Bundle): string {
  const known = knownValue(ledger, memberKind, memberId)?.name;
  if (known !== undefined) return known;
  const subject = subjectOf(memberKind.kind, memberId);
  const team = bundle.documents.find(({ name }) => name === "team");
  const value = team?.records.findLast((record) => record.subject === subject)?.value;
  return isJsonObject(value) && typeof value.name === "string" ? value.name : memberId;
}

/** Both have a team, and not one record of it in common. */
export function isOfAnotherTeam(ledger: Ledger, bundle: Bundle): boolean {
  const team = bundle.documents.find(({ name }) => name === "team")?.records ?? [];
  return (
    ledger.keys(memberKind).length > 0 && team.length > 0 && team.every(({ id }) => ledger.record(id) === undefined)
  );
}
