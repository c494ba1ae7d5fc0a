/** Documents that are on this device's disk and not open: older seasons, and what was taken in for others. */
import * as Y from "yjs";
import { stateWithoutGaps } from "#client/device/state-without-gaps.ts";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { parseDocumentName } from "#core/ledger/documents.ts";
import type { NamedUpdate } from "./bundle.ts";

export interface KeptDocuments {
  readonly documents: readonly NamedUpdate[];
  /** Some could not be read, or had no room. */
  readonly isIncomplete: boolean;
}

/**
 * Reads them one after the other, the newest seasons first.
 * @param isOpen whether a document is open, and so not meant
 * @param roomBytes how much all of them may take together
 */
export async function readKeptDocuments(
  storage: DeviceStorage,
  isOpen: (name: string) => boolean,
  roomBytes: number,
): Promise<KeptDocuments> {
  const documents: NamedUpdate[] = [];
  let room = roomBytes;
  let isIncomplete = false;
  const names = await storage.documents().catch(() => {
    isIncomplete = true;
    return [];
  });
  const closed = names.filter((name) => parseDocumentName(name) !== undefined && !isOpen(name));
  for (const name of closed.sort((one, other) => yearOf(other) - yearOf(one) || (one < other ? -1 : 1))) {
    try {
      const update = stateOf(await storage.load(name));
      if (update.length > room) isIncomplete = true;
      else if (update.length > EMPTY_STATE_BYTES) {
        documents.push({ name, update });
        room -= update.length;
      }
    } catch {
      isIncomplete = true;
    }
  }
  return { documents, isIncomplete };
}

/** A document without entries: no clients, no deletions. */
const EMPTY_STATE_BYTES = 2;

function stateOf(updates: readonly Uint8Array[]): Uint8Array {
  const ydoc = new Y.Doc();
  try {
    for (const update of updates) Y.applyUpdate(ydoc, update);
    return stateWithoutGaps(ydoc);
  } finally {
    ydoc.destroy();
  }
}

function yearOf(name: string): number {
  const scope = parseDocumentName(name);
  return scope?.scope === "rider" ? scope.year : 0;
}
