import {
  allowedDocuments,
  allowedFileBytes,
  allowedUnpackedBytes,
  type BundleDocument,
  type BundleHeader,
  type BundleRefusal,
  bundleFormat,
  bundleSchemaVersion,
  bundleVersion,
  type NamedUpdate,
  refuseBundle,
} from "./bundle.ts";
import { joinHeader } from "./bundle-header.ts";
import { checkDocument, summarize } from "./check-document.ts";
import { packDocuments } from "./packed-documents.ts";

export interface BundleContents {
  /** Whole documents, each named once. */
  readonly documents: readonly NamedUpdate[];
  readonly isIncomplete?: boolean;
  readonly team?: string;
  /** Name of the member who holds the device. */
  readonly madeBy?: string;
  readonly device: string;
  /** ISO 8601, UTC. */
  readonly at: string;
}

export type MadeBundle =
  | {
      readonly ok: true;
      readonly bytes: Uint8Array;
      readonly header: Omit<BundleHeader, "sha256">;
      /** Older documents of this device are not in it: they could not be read, or had no room. */
      readonly isIncomplete: boolean;
    }
  | BundleRefusal;

/** Makes the file that any device can read; what no device could take in is refused here already. */
export function makeBundle({ documents, isIncomplete = false, team, madeBy, device, at }: BundleContents): MadeBundle {
  const checked: BundleDocument[] = [];
  for (const document of documents) {
    const check = checkDocument(document);
    if (!check.ok) return check;
    checked.push(check.document);
  }
  const { packed, bytes } = packDocuments(documents);
  const header = {
    format: bundleFormat,
    version: bundleVersion,
    schemaVersion: bundleSchemaVersion,
    ...(team !== undefined && { team }),
    ...(madeBy !== undefined && { madeBy }),
    device,
    at,
    documents: checked.map(summarize),
    bytes,
  } as const;
  const file = joinHeader(header, packed);
  if (bytes > allowedUnpackedBytes || file.length > allowedFileBytes || documents.length > allowedDocuments) {
    return refuseBundle({ type: "too large", of: "device" });
  }
  return { ok: true, bytes: file, header, isIncomplete };
}
