/** Reads record ids off a simulated disk; what was read before is read again only when it has changed. */
import * as Y from "yjs";

export interface DiskReader {
  /** Ids of all records in these documents. */
  ids(documents: readonly string[]): ReadonlySet<string>;
  /** The disk was emptied or set back. */
  forget(): void;
}

export function createDiskReader(load: (document: string) => readonly Uint8Array[]): DiskReader {
  const known = new Map<
    string,
    { readonly length: number; readonly last: Uint8Array | undefined; ids: readonly string[] }
  >();
  let all: ReadonlySet<string> = new Set();
  return {
    ids: (documents) => {
      let changed = false;
      for (const document of documents) {
        const updates = load(document);
        const before = known.get(document);
        const last = updates.at(-1);
        if (before && before.length === updates.length && sameBytes(before.last, last)) continue;
        changed = true;
        known.set(document, { length: updates.length, last, ids: recordIds(updates) });
      }
      if (changed) all = new Set([...known.values()].flatMap(({ ids }) => ids));
      return all;
    },
    forget: () => {
      known.clear();
      all = new Set();
    },
  };
}

function recordIds(updates: readonly Uint8Array[]): readonly string[] {
  const ydoc = new Y.Doc();
  for (const update of updates) Y.applyUpdate(ydoc, update);
  const ids = ydoc
    .getArray<{ readonly id: string }>("records")
    .toArray()
    .map(({ id }) => id);
  ydoc.destroy();
  return ids;
}

function sameBytes(one: Uint8Array | undefined, other: Uint8Array | undefined): boolean {
  if (one === other) return true;
  return (
    one !== undefined &&
    other !== undefined &&
    one.length === other.length &&
    one.every((byte, at) => byte === other[at])
  );
}
