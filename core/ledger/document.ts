import * as Y from "yjs";
import type { Ledger } from "./ledger.ts";
import type { LedgerRecord } from "./record.ts";

/** Name of the only root type of a document: the array of its records. */
export const recordsName = "records";

/** A document that feeds a ledger. */
export type ConnectedDocument = {
  /** Puts records at the end, in one insert. Nothing is ever removed or changed. */
  append(records: readonly LedgerRecord[]): void;
  /** Stops feeding the ledger. */
  close(): void;
};

/**
 * Feeds a ledger with what a document holds now and with all that is inserted
 * later, from here or from a peer. Connect after local storage has loaded, or
 * before: the ledger does not mind the order.
 */
export function connectDocument(ydoc: Y.Doc, documentName: string, ledger: Ledger): ConnectedDocument {
  const array = ydoc.getArray<unknown>(recordsName);
  const feed = (contents: readonly unknown[]): void => {
    if (contents.length > 0) ledger.addMany(contents.map(withoutSharedTypes), documentName);
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
    close: () => array.unobserve(observe),
  };
}

// A hostile peer may nest a shared type or a document, which lead back to the whole document: keep what they say instead.
function withoutSharedTypes(content: unknown): unknown {
  if (content instanceof Y.Doc) return { nestedDocument: content.guid };
  return content instanceof Y.AbstractType ? { nestedType: content.toJSON() } : content;
}
