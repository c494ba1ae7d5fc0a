/**
 * Where a device keeps its documents. A promise that is kept means that the
 * bytes are on the device's disk, as far as the device itself can tell; one that
 * is broken means that they may not be, and the caller has to try again.
 */
export interface DeviceStorage {
  /** Names of the documents that may be kept here; as many as the device can tell. */
  documents(): Promise<readonly string[]>;
  /** Every update of a document, oldest first, a large one perhaps in parts; none for a document that was never kept. */
  load(document: string): Promise<readonly Uint8Array[]>;
  /** Keeps one more update. */
  append(document: string, update: Uint8Array): Promise<void>;
  /**
   * Puts `state`, joined with everything that is kept of the document, in the place of it, in one step. Joined, because
   * another tab may have kept what this one has not seen.
   */
  compact(document: string, state: Uint8Array): Promise<void>;
  /** What is known of a document beside its entries; undefined when nothing is kept. */
  loadNote(document: string, note: Note): Promise<Uint8Array | undefined>;
  /** Keeps that, in place of what was kept before. */
  keepNote(document: string, note: Note, bytes: Uint8Array): Promise<void>;
  /** Keeps what `change` makes of what was kept before, in one step: another tab may have kept something meanwhile. */
  changeNote(document: string, note: Note, change: (before: Uint8Array | undefined) => Uint8Array): Promise<void>;
  /**
   * Calls `listener` when what is kept of a document may be gone though no call failed: the browser has closed its
   * database, as it does when it deletes what a site keeps. Returns what ends it. Absent where that cannot happen.
   */
  onLoss?(document: string, listener: () => void): () => void;
}

/** What devices said that they hold, what the server proved last, and (of the team's document) which documents it lacks. */
export type Note = "receipts" | "held" | "owing";

/** Timers, passed in so that a simulation has its own time. */
export interface Timers {
  now(): number;
  /** Calls back once after `ms`; returns what calls it off. */
  after(ms: number, act: () => void): () => void;
}
