/** One document of a bundle by itself: its name, and that its update brings records and nothing else. */
import * as Y from "yjs";
import { parseDocumentName } from "#core/ledger/documents.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import {
  allowedUnpackedBytes,
  type BundleDocument,
  type BundleRefusal,
  type DocumentSummary,
  type NamedUpdate,
  refuseBundle,
} from "./bundle.ts";

/** Reads a whole document; refused in a sentence when it could not be merged into an empty one. */
export function checkDocument({
  name,
  update,
}: NamedUpdate): { readonly ok: true; readonly document: BundleDocument } | BundleRefusal {
  if (parseDocumentName(name) === undefined) {
    return refuseBundle("refused document", "The file holds something that is neither the team's nor a rider's.");
  }
  const empty = new Y.Doc();
  const inspection = inspectUpdate(update, empty, { maximumBytes: allowedUnpackedBytes });
  empty.destroy();
  if (!inspection.ok) return refuseDocument(name, inspection.problem.sentence);
  return { ok: true, document: { name, update, records: inspection.records } };
}

/** Says which document is refused, before the reason. */
export function refuseDocument(name: string, reason: string): BundleRefusal {
  return refuseBundle("refused document", `Part of it (${name}) cannot be taken in. ${reason}`);
}

export function summarize({ name, records }: BundleDocument): DocumentSummary {
  return { name, records: records.length, ...spanOf(records) };
}

/** The earliest and the latest time of records, as they were written; nothing when there is none. */
export function spanOf(records: readonly LedgerRecord[]): { readonly first?: string; readonly last?: string } {
  let first: string | undefined;
  let last: string | undefined;
  for (const { at } of records) {
    if (first === undefined || Date.parse(at) < Date.parse(first)) first = at;
    if (last === undefined || Date.parse(at) > Date.parse(last)) last = at;
  }
  return { ...(first !== undefined && { first }), ...(last !== undefined && { last }) };
}
