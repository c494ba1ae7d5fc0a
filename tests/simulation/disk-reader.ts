/** Reads record ids off a simulated disk; what was read before is read again only when it has changed. */
import * as Y from "yjs";

export interface DiskReader {
  /** Ids of all records in these documents. */
  ids(documents: readonly string[]): ReadonlySet<string>;
  /** Whether something in these documents waits for what is missing. */
  hasGaps(documents: readonly string[]): boolean;
  /** The disk was emptied or set back. */
  forget(): void;
}

export function createDiskReader(load: (document: string) => readonly Uint8Array[]): DiskReader {
  const known = new Map<string, { readonly length: number; readonly last: Uint8Array | undefined } & Content>();
  let all: ReadonlySet<string> = new Set();
  const ids = (documents: readonly string[]): ReadonlySet<string> => {
    let changed = false;
    for (const document of documents) {
      const updates = load(document);
      const before = known.get(document);
      const last = updates.at(-1);
      if (before && before.length === updates.length && sameBytes(before.last, last)) continue;
      changed = true;
      known.set(document, { length: updates.length, last, ...contentOf(updates) });
    }
    if (changed) all = new Set([...known.values()].flatMap((content) => content.ids));
    return all;
  };
  return {
    ids,
    hasGaps: (documents) => {
      ids(documents);
      return [...known.values()].some((content) => content.hasGaps);
    },
    forget: () => {
      known.clear();
      all = new Set();
    },
  };
}

interface Content {
  readonly ids: readonly string[];
  readonly hasGaps: boolean;
}

function contentOf(updates: readonly Uint8Array[]): Content {
  const ydoc = new Y.Doc();
  for (const update of updates) Y.applyUpdate(ydoc, update);
  const ids = ydoc
    .getArray<{ readonly id: string }>("records")
    .toArray()
    .map(({ id }) => id);
  const hasGaps = ydoc.store.pendingStructs !== null;
  ydoc.destroy();
  return { ids, hasGaps };
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
