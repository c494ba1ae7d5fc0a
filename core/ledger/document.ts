import * as Y from "yjs";
import type { Ledger } from "./ledger.ts";
import type { LedgerRecord } from "./record.ts";

/** Name of the only root type of a document: the array of its records. */
export const recordsName = "records";

/** A document that feeds a ledger. */
export type ConnectedDocument = {
  /** Puts records at the end, in one insert. Nothing is ever removed or changed. */
  append(records: readonly LedgerRecord[]): void;
  /** Whether the ledger has all that has come into the document. */
  isFed(): boolean;
  /** Stops feeding the ledger. */
  close(): void;
};

/** Records that the ledger takes in one turn: on a slow phone more of them hold up a touch. */
const RECORDS_A_TURN = 100;

/** Feeding in turns, between which others get theirs. */
export type Turns = {
  /** Does the next turn later. */
  later(turn: () => void): void;
  /** Up to so many records are taken at once where that is more than fit in one turn. */
  readonly atOnce?: number;
  /** Called when the ledger has all of it. */
  readonly onFed: () => void;
};

/**
 * Feeds a ledger with what a document holds now and with all that is inserted
 * later, from here or from a peer. Connect after local storage has loaded, or
 * before: the ledger does not mind the order. With `turns` what comes in large numbers is taken in some at a time.
 */
export function connectDocument(ydoc: Y.Doc, documentName: string, ledger: Ledger, turns?: Turns): ConnectedDocument {
  const array = ydoc.getArray<unknown>(recordsName);
  let isClosed = false;
  let waiting: readonly unknown[] = [];
  const add = (contents: readonly unknown[]): void => {
    if (contents.length > 0) ledger.addMany(contents.map(withoutSharedTypes), documentName);
  };
  const takeTurn = (): void => {
    if (isClosed) return;
    const now = waiting.slice(0, RECORDS_A_TURN);
    waiting = waiting.slice(RECORDS_A_TURN);
    add(now);
    if (waiting.length > 0) turns?.later(takeTurn);
    else turns?.onFed();
  };
  const feed = (contents: readonly unknown[]): void => {
    if (!turns || waiting.length + contents.length <= Math.max(RECORDS_A_TURN, turns.atOnce ?? 0)) {
      add(contents);
      return;
    }
    const isTaking = waiting.length > 0;
    waiting = [...waiting, ...contents];
    if (!isTaking) turns.later(takeTurn);
  };
  const observe = (event: Y.YArrayEvent<unknown>): void => {
    feed(event.changes.delta.flatMap(({ insert }) => (Array.isArray(insert) ? insert : [])));
  };
  feed(array.toArray());
  array.observe(observe);
  return {
    append: (records) => {
      if (records.length > 0) array.push([...records]);
    },
    isFed: () => waiting.length === 0,
    close: () => {
      isClosed = true;
      array.unobserve(observe);
    },
  };
}

// A hostile peer may nest a shared type or a document, which lead back to the whole document: keep what they say instead.
function withoutSharedTypes(content: unknown): unknown {
  if (content instanceof Y.Doc) return { nestedDocument: content.guid };
  return content instanceof Y.AbstractType ? { nestedType: content.toJSON() } : content;
}
