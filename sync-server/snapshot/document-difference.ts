import { isDeepStrictEqual } from "node:util";
import * as Y from "yjs";
import { recordsName } from "#core/ledger/document.ts";

/** So many entries are compared before others get a turn. */
const entriesAtOnce = 500;

/**
 * In what two documents differ, as the end of a sentence; undefined when they hold the same records: each entry in its
 * place, under its number, with its neighbours at the time and its content, nothing beside the records, and nothing that
 * waits for something else. How entries are packed together does not matter. Yields after each bounded piece of work.
 */
export function* documentDifference(one: Y.Doc, other: Y.Doc): Generator<void, string | undefined> {
  if (isWaiting(one) || isWaiting(other)) return "something before its updates is missing";
  if (!Buffer.from(Y.encodeStateVector(one)).equals(Y.encodeStateVector(other))) return "the state vectors differ";
  const [ones, others] = [entriesIn(one), entriesIn(other)];
  let count = 0;
  for (;;) {
    const [left, right] = [ones.next().value, others.next().value];
    if (left === undefined && right === undefined) break;
    if (left === undefined || right === undefined) return "the numbers of entries differ";
    if (!isSameEntry(left, right)) return `the entries at place ${count} differ`;
    count += 1;
    if (count % entriesAtOnce === 0) yield;
  }
  const numbered = [...Y.decodeStateVector(Y.encodeStateVector(one)).values()].reduce((sum, clock) => sum + clock, 0);
  return count === numbered ? undefined : "there is something beside the records";
}

type Entry = { readonly item: Y.Item; readonly offset: number; readonly content: unknown };

function* entriesIn(document: Y.Doc): Generator<Entry, undefined> {
  for (let item = document.getArray(recordsName)._start; item !== null; item = item.right) {
    const contents = item.content.getContent();
    for (let offset = 0; offset < item.length; offset++) yield { item, offset, content: contents[offset] };
  }
  return undefined;
}

function isSameEntry(one: Entry, other: Entry): boolean {
  return (
    one.item.id.client === other.item.id.client &&
    one.item.id.clock + one.offset === other.item.id.clock + other.offset &&
    one.item.deleted === other.item.deleted &&
    Y.compareIDs(leftOf(one), leftOf(other)) &&
    Y.compareIDs(one.item.rightOrigin, other.item.rightOrigin) &&
    isDeepStrictEqual(one.content, other.content)
  );
}

/** What stood before the entry when it was made: inside an item that is the entry before it. */
function leftOf({ item, offset }: Entry): Y.ID | null {
  return offset === 0 ? item.origin : Y.createID(item.id.client, item.id.clock + offset - 1);
}

function isWaiting({ store }: Y.Doc): boolean {
  return store.pendingStructs !== null || store.pendingDs !== null;
}
