/** One accepted update of one document. */
export type LogEntry = { readonly document: string; readonly update: Uint8Array };

/** What a device says that it holds of a document, as bytes of core/protocol/receipt.ts. */
export type ReceiptEntry = { readonly document: string; readonly device: string; readonly receipt: Uint8Array };

/** An update that was refused, kept for inspection. */
export type QuarantinedUpdate = LogEntry & { readonly reason: string };

/**
 * The durable log. Every function throws when the medium fails; after a failed `append` nothing of that batch is in the
 * log. Every function but `close` throws after `close`.
 */
export type UpdateStore = {
  /** Adds the entries in their order, all or none. They survive loss of power when it returns. */
  append(entries: readonly LogEntry[]): void;
  /** All updates of a document, oldest first; none for a document that was never written. */
  load(document: string): readonly Uint8Array[];
  /** Names of the documents with at least one update, sorted. */
  documents(): readonly string[];
  /** Keeps these receipts, each in place of an earlier one of its device and document; all or none. */
  keepReceipts(receipts: readonly ReceiptEntry[]): void;
  /** The kept receipts of a document, in no order that matters. */
  receipts(document: string): readonly Uint8Array[];
  /**
   * For every document with at least one update the number of its newest one. Numbers begin at 1 and grow from update to
   * update over all documents; one is never given twice in the life of the log, which ends when a backup takes its place.
   * It takes time by the documents, not by the updates, and later appends leave the answer as it is.
   */
  positions(): ReadonlyMap<string, number>;
  /** Keeps a refused update with the reason. */
  quarantine(document: string, update: Uint8Array, reason: string): void;
  /** All that was refused, oldest first. */
  quarantined(): readonly QuarantinedUpdate[];
  /** Bytes that it takes on its medium, refused updates included. */
  sizeBytes(): number;
  /** Ends it; a second call does nothing. */
  close(): void;
};
