/**
 * Tabs of one browser hold one device's documents: each tells the others of its
 * changes, also while the server is out of reach.
 */
import * as Y from "yjs";

export interface SharedWithTabs {
  /** From here on the others are told what is written here. */
  tell(): void;
  close(): void;
}

/** Takes from the tabs that have the same `name` what they write. Does nothing where there is no BroadcastChannel. */
export function shareWithTabs(name: string, ydoc: Y.Doc): SharedWithTabs {
  if (typeof BroadcastChannel === "undefined") return { tell: () => {}, close: () => {} };
  const channel = new BroadcastChannel(name);
  const own = {};
  channel.onmessage = (event: MessageEvent<unknown>) => {
    if (event.data instanceof Uint8Array) Y.applyUpdate(ydoc, event.data, own);
  };
  const tell = (update: Uint8Array, origin: unknown): void => {
    if (origin !== own) channel.postMessage(update);
  };
  return {
    tell: () => ydoc.on("update", tell),
    close: () => {
      ydoc.off("update", tell);
      channel.close();
    },
  };
}
