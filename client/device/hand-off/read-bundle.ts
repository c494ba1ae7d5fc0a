import { allowedFileBytes, type Bundle, type BundleDocument, type BundleRefusal, refuseBundle } from "./bundle.ts";
import { splitHeader } from "./bundle-header.ts";
import { checkDocument, summarize } from "./check-document.ts";
import { unpackDocuments } from "./packed-documents.ts";

export type BundleReading = { readonly ok: true; readonly bundle: Bundle } | BundleRefusal;

/** The one gate for files from elsewhere. Changes nothing, and never throws, whatever the bytes. */
export function readBundle(file: Uint8Array): BundleReading {
  if (file.length > allowedFileBytes) {
    return refuseBundle({ type: "too large", of: "file" });
  }
  const split = splitHeader(file);
  if (!split.ok) return split;
  const { header, packed } = split;
  const unpacked = unpackDocuments({ packed, bytes: header.bytes });
  if (unpacked === undefined) return untrue();
  const documents: BundleDocument[] = [];
  for (const document of unpacked) {
    const check = checkDocument(document);
    if (!check.ok) return check;
    documents.push(check.document);
  }
  const names = new Set(documents.map(({ name }) => name));
  const told = header.documents.map(({ name, records, first, last }) => [name, records, first, last]);
  const found = documents.map(summarize).map(({ name, records, first, last }) => [name, records, first, last]);
  if (names.size !== documents.length || JSON.stringify(told) !== JSON.stringify(found)) return untrue();
  return { ok: true, bundle: { header, documents } };
}

function untrue(): BundleRefusal {
  return refuseBundle({ type: "damaged", of: "contents" });
}
