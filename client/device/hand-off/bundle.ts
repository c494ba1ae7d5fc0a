/**
 * What one device hands to another without a network: one file.
 *
 * The first line is a header in JSON that a person can read; after its line
 * feed come the documents (packed-documents.ts). The header carries a SHA-256
 * over itself, without that field, and over all that follows the line feed.
 */
import * as z from "zod/mini";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { UpdateProblem } from "#core/ledger/update-guard.ts";

export const bundleFormat = "pitslate hand-off";
/** Version of the file, and of the records' envelope in it. */
export const bundleVersion = 1;
export const bundleSchemaVersion = 1;
/** How the file's name ends. */
export const bundleEnding = ".pitslate";

/** Limits of what is read: bytes of the file, of its first line, of the documents unpacked; documents. */
export const allowedFileBytes = 64 * 1024 * 1024;
export const allowedHeaderBytes = 1024 * 1024;
export const allowedUnpackedBytes = 128 * 1024 * 1024;
export const allowedDocuments = 2000;

const shortText = z.string().check(z.minLength(1), z.maxLength(200));
const count = z.int().check(z.minimum(0));

/** How many records a document holds, and the times of its first and last one (by their writers' clocks). */
const documentSummarySchema = z.object({
  name: shortText,
  records: count,
  first: z.exactOptional(z.iso.datetime()),
  last: z.exactOptional(z.iso.datetime()),
});
export type DocumentSummary = z.infer<typeof documentSummarySchema>;

export const bundleHeaderSchema = z.object({
  format: z.literal(bundleFormat),
  version: z.literal(bundleVersion),
  schemaVersion: z.literal(bundleSchemaVersion),
  team: z.exactOptional(shortText),
  /** Name of the member who held the device. */
  madeBy: z.exactOptional(shortText),
  device: shortText,
  /** ISO 8601, UTC, by the device's clock; informative. */
  at: z.iso.datetime(),
  documents: z.array(documentSummarySchema).check(z.maxLength(allowedDocuments)),
  /** Bytes of the documents, unpacked. */
  bytes: count.check(z.maximum(allowedUnpackedBytes)),
  sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
});
export type BundleHeader = z.infer<typeof bundleHeaderSchema>;

/** A document as it goes into a bundle: its name and its whole state (yjs, format 1). */
export interface NamedUpdate {
  readonly name: string;
  readonly update: Uint8Array;
}

/** A document of a bundle that was read and found to hold nothing but records. */
export interface BundleDocument extends NamedUpdate {
  readonly records: readonly LedgerRecord[];
}

/** Only the gates for files ({@link "./read-bundle.ts"}) and codes make one: what is in it has been checked. */
export interface Bundle {
  readonly header: Omit<BundleHeader, "sha256">;
  readonly documents: readonly BundleDocument[];
  /** Made for this device: of each document only what this device has not, so nothing in it need be known here. */
  readonly isAnswer?: true;
}

/** Why a bundle is not made, read or merged; the screens put it into words. */
export type BundleProblem =
  /** Not a hand-off file. */
  | { readonly type: "foreign" }
  | { readonly type: "newer version"; readonly of: "file" | "codes" }
  | { readonly type: "too large"; readonly of: "device" | "file" }
  /** "contents": the file holds something else than its first line says. */
  | { readonly type: "damaged"; readonly of: "file" | "contents" | "codes" }
  /** Something that is neither the team's nor a rider's. */
  | { readonly type: "unknown document"; readonly of: "file" | "codes" }
  | { readonly type: "refused document"; readonly document: string; readonly reason: DocumentReason }
  | { readonly type: "another team" }
  /** The codes answer another device. */
  | { readonly type: "another device" };

/** Why a document cannot be taken in; "other version": of the program that wrote one of its records. */
export type DocumentReason = UpdateProblem["type"] | "other version";

export interface BundleRefusal {
  readonly ok: false;
  readonly problem: BundleProblem;
}

export function refuseBundle(problem: BundleProblem): BundleRefusal {
  return { ok: false, problem };
}
