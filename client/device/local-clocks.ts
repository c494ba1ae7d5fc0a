import * as Y from "yjs";

/** What a document holds here, as clocks by writer. */
export function localClocks(ydoc: Y.Doc): ReadonlyMap<number, number> {
  const clocks = new Map<number, number>();
  for (const client of ydoc.store.clients.keys()) clocks.set(client, Y.getState(ydoc.store, client));
  return clocks;
}
