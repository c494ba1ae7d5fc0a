/** A storage that lasts as long as this object: for tests and simulations. */
import * as Y from "yjs";
import type { DeviceStorage } from "./device-storage.ts";

/** A storage without documents. */
export function createMemoryStorage(): DeviceStorage {
  const documents = new Map<string, readonly Uint8Array[]>();
  const notes = new Map<string, Uint8Array>();
  return {
    documents: async () => [...documents.keys()],
    load: async (document) => documents.get(document) ?? [],
    append: async (document, update) => {
      documents.set(document, [...(documents.get(document) ?? []), update]);
    },
    compact: async (document, state) => {
      documents.set(document, [Y.mergeUpdates([...(documents.get(document) ?? []), state])]);
    },
    loadNote: async (document, note) => notes.get(`${note} ${document}`),
    keepNote: async (document, note, bytes) => void notes.set(`${note} ${document}`, bytes),
    changeNote: async (document, note, change) => {
      notes.set(`${note} ${document}`, change(notes.get(`${note} ${document}`)));
    },
  };
}
