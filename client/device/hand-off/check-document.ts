/** One document of a bundle by itself: its name, and that its update brings records and nothing else. */
import * as Y from "yjs";
import { parseDocumentName } from "#core/ledger/documents.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { inspectUpdate, type UpdateProblem } from "#core/ledger/update-guard.ts";
import {
  allowedUnpackedBytes,
  type BundleDocument,
  type BundleRefusal,
  type DocumentSummary,
  type NamedUpdate,
  refuseBundle,
} from "./bundle.ts";

/** Reads a whole document; refused when it could not be merged into an empty one. */
export function checkDocument({
  name,
  update,
}: NamedUpdate): { readonly ok: true; readonly document: BundleDocument } | BundleRefusal {
  if (parseDocumentName(name) === undefined) {
    return refuseBundle({ type: "unknown document", of: "file" });
  }
  const empty = new Y.Doc();
  const inspection = inspectUpdate(update, empty, { maximumBytes: allowedUnpackedBytes });
  empty.destroy();
  if (!inspection.ok) return refuseDocument(name, inspection.problem);
  return { ok: true, document: { name, update, records: inspection.records } };
}

/** Says which document is refused, and why. */
export function refuseDocument(document: string, { type, record }: UpdateProblem): BundleRefusal {
  const reason = record === "other version" ? record : type;
  return refuseBundle({ type: "refused document", document, reason });
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
