import * as Y from "yjs";

/** A document with the given updates. @throws when one of them cannot be read. */
export function documentFrom(updates: readonly Uint8Array[]): Y.Doc {
  const document = new Y.Doc({ gc: false });
  document.transact(() => {
    for (const update of updates) Y.applyUpdate(document, update);
  });
  return document;
}

/** `news` is what was not in the document before; undefined when nothing. */
export type Applied = { readonly news: Uint8Array | undefined; readonly isSpoilt: boolean };

/**
 * Applies an update. `isNew` says that nothing of it is in the document; then the news is the update itself, which spares
 * Yjs to encode it again. The document is spoilt when that fails, perhaps half-way, or leaves something waiting in it: each
 * later update would then be sorted together with what waits, which grows without bound.
 */
export function applyTo(document: Y.Doc, update: Uint8Array, isNew = false): Applied {
  let news = isNew ? update : undefined;
  const keep = (change: Uint8Array): void => {
    news = change;
  };
  const waitedBefore = document.store.pendingStructs !== null;
  if (!isNew) document.on("update", keep);
  try {
    Y.applyUpdate(document, update);
    return { news, isSpoilt: !waitedBefore && document.store.pendingStructs !== null };
  } catch {
    return { news, isSpoilt: true };
  } finally {
    document.off("update", keep);
  }
}
