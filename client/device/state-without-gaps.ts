import * as Y from "yjs";

/**
 * A document as one update, without what Yjs keeps waiting for entries that are missing: another device could not place it.
 * @param beyond a state vector (yjs, format 1) of what is not wanted; all when absent
 */
export function stateWithoutGaps(ydoc: Y.Doc, beyond?: Uint8Array): Uint8Array {
  const { store } = ydoc;
  const pending = store.pendingStructs;
  store.pendingStructs = null;
  try {
    return Y.encodeStateAsUpdate(ydoc, beyond);
  } finally {
    store.pendingStructs = pending;
  }
}
