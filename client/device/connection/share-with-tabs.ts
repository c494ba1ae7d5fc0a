/**
 * Tabs of one browser hold one device's documents: each tells the others of its
 * changes, also while the server is out of reach.
 */
import * as Y from "yjs";

/** Shares `ydoc` with the tabs that have the same `name`; returns what ends it. Does nothing where there is no BroadcastChannel. */
export function shareWithTabs(name: string, ydoc: Y.Doc): () => void {
  if (typeof BroadcastChannel === "undefined") return () => {};
  const channel = new BroadcastChannel(name);
  const own = {};
  channel.onmessage = (event: MessageEvent<unknown>) => {
    if (event.data instanceof Uint8Array) Y.applyUpdate(ydoc, event.data, own);
  };
  const tell = (update: Uint8Array, origin: unknown): void => {
    if (origin !== own) channel.postMessage(update);
  };
  ydoc.on("update", tell);
  return () => {
    ydoc.off("update", tell);
    channel.close();
  };
}
