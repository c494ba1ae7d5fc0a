/** One accepted update of one document. */
export type LogEntry = { readonly document: string; readonly update: Uint8Array };

/** What a device says that it holds of a document, as bytes of core/protocol/receipt.ts; undefined to forget what it said. */
export type ReceiptEntry = {
  readonly document: string;
  readonly device: string;
  readonly receipt: Uint8Array | undefined;
};

/** An update that was refused, kept for inspection. */
export type QuarantinedUpdate = LogEntry & { readonly reason: string };

/** How much the log holds of one document. */
export type LogExtent = {
  /** Updates that stand beside the snapshot, and their bytes. */
  readonly rows: number;
  readonly rowBytes: number;
  /** Bytes of the snapshot; 0 when there is none. */
  readonly snapshotBytes: number;
};

/**
 * A snapshot on its way: all updates of a document up to `position`, written as few large ones. It is no part of the log
 * until it is adopted; what a draft has written and was not adopted, a later one or the next opening of the log removes.
 */
export type SnapshotDraft = {
  /** Number of the newest update that it takes in; later ones stay as they are. */
  readonly position: number;
  /** The next of the document's updates up to `position`, oldest first, a bounded piece at a time; empty after the last. */
  read(): readonly Uint8Array[];
  /** Adds a part, an update; it survives loss of power when this returns. */
  write(part: Uint8Array): void;
  /** The next part as the medium holds it, in the order of writing; undefined after the last. */
  readBack(): Uint8Array | undefined;
  /**
   * Puts the parts into the place of all updates up to `position`, in one transaction: when it throws, and after a loss
   * of power in the middle, either all of it is done or nothing.
   */
  adopt(): void;
  /** Ends the draft; after `adopt`, or a second time, it does nothing. Never throws. */
  discard(): void;
};

/**
 * The durable log. Every function throws when the medium fails; after a failed `append` nothing of that batch is in the
 * log. Every function but `close` throws after `close`.
 */
export type UpdateStore = {
  /** Adds the entries in their order, all or none. They survive loss of power when it returns. */
  append(entries: readonly LogEntry[]): void;
  /**
   * What together makes a document: the parts of its snapshot, then all later updates, oldest first; none for a document
   * that was never written.
   */
  load(document: string): readonly Uint8Array[];
  /** Names of the documents with at least one update, sorted. */
  documents(): readonly string[];
  /** Keeps these receipts, each in place of an earlier one of its device and document, or forgets that; all or none. */
  keepReceipts(receipts: readonly ReceiptEntry[]): void;
  /** The kept receipts of a document, in no order that matters. */
  receipts(document: string): readonly Uint8Array[];
  /**
   * For every document with at least one update the number of its newest one. Numbers begin at 1 and grow from update to
   * update over all documents; one is never given twice in the life of the log, which ends when a backup takes its place.
   * It takes time by the documents, not by the updates, and later appends leave the answer as it is.
   */
  positions(): ReadonlyMap<string, number>;
  /** How much it holds of a document; all zero for one that was never written. Costs nothing that grows with the log. */
  extent(document: string): LogExtent;
  /** Begins a snapshot of a document, in the place of any that was begun before and is not adopted. */
  draftSnapshot(document: string): SnapshotDraft;
  /** Gives a bounded piece of what snapshots have freed back to the medium. @returns whether there was any; ask again then. */
  giveBackSpace(): boolean;
  /** Keeps a refused update with the reason. */
  quarantine(document: string, update: Uint8Array, reason: string): void;
  /** All that was refused, oldest first. */
  quarantined(): readonly QuarantinedUpdate[];
  /** Bytes that it takes on its medium, refused updates included. */
  sizeBytes(): number;
  /** Ends it; a second call does nothing. */
  close(): void;
};
