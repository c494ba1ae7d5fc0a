import * as Y from "yjs";
import { reasonOf } from "../logging.ts";
import type { SnapshotDraft } from "../store/update-store.ts";
import { documentDifference } from "./document-difference.ts";

/** A part is written when the updates that go into it have so many bytes. */
const partBytes = 256 * 1024;

export type SnapshotOutcome =
  | { readonly ok: true; readonly parts: number; readonly bytes: number }
  /** The parts do not make the document that the updates make; they were thrown away, and the updates stay. */
  | { readonly ok: false; readonly reason: string };

/**
 * Writes what a document's updates make together as few parts, reads them back from the medium into a document of its
 * own, compares that with the updates' document entry for entry, and only then puts the parts into the place of the
 * updates. Yields after each bounded piece of work, so that others can have their turn; updates that come meanwhile are
 * none of its business. However it ends, the draft has ended.
 * @throws when the medium fails; then the updates stay.
 */
export function* takeSnapshot(draft: SnapshotDraft): Generator<void, SnapshotOutcome> {
  const original = new Y.Doc({ gc: false });
  const copy = new Y.Doc({ gc: false });
  try {
    const written = yield* writeParts(draft, original);
    const reason = (yield* readParts(draft, copy)) ?? (yield* documentDifference(original, copy));
    if (reason !== undefined) return { ok: false, reason };
    draft.adopt();
    return { ok: true, ...written };
  } finally {
    draft.discard();
    original.destroy();
    copy.destroy();
  }
}

function* writeParts(draft: SnapshotDraft, original: Y.Doc): Generator<void, { parts: number; bytes: number }> {
  let written = Y.encodeStateVector(original);
  let [parts, bytes, unwritten] = [0, 0, 0];
  for (;;) {
    const updates = draft.read();
    applyAll(original, updates);
    unwritten += updates.reduce((sum, { length }) => sum + length, 0);
    if (unwritten >= partBytes || (updates.length === 0 && unwritten > 0)) {
      yield;
      const part = Y.encodeStateAsUpdate(original, written);
      draft.write(part);
      written = Y.encodeStateVector(original);
      [parts, bytes, unwritten] = [parts + 1, bytes + part.length, 0];
    }
    yield;
    if (updates.length === 0) return { parts, bytes };
  }
}

/** @returns why the parts cannot be read; undefined when they can. */
function* readParts(draft: SnapshotDraft, copy: Y.Doc): Generator<void, string | undefined> {
  for (let part = draft.readBack(); part !== undefined; part = draft.readBack()) {
    try {
      applyAll(copy, [part]);
    } catch (error) {
      return `a part cannot be read: ${reasonOf(error)}`;
    }
    yield;
  }
  return undefined;
}

function applyAll(document: Y.Doc, updates: readonly Uint8Array[]): void {
  document.transact(() => {
    for (const update of updates) Y.applyUpdate(document, update);
  });
}
