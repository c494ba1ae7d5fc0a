/**
 * Splits what is kept of a document into parts that are read in turns: a season is one update of 2,600 entries, and Yjs
 * reads an update in one go, during which no touch is answered.
 */
import * as Y from "yjs";
import { isRecordItem, type RecordItem, updateOf } from "#core/ledger/update-guard.ts";

/** Entries of a part. */
const ENTRIES_A_PART = 400;
/** No more parts than that, or a long document would look like one whose log has to be put together. */
const MOST_PARTS = 60;

/** Entries of one client that follow each other. */
interface Lane {
  readonly items: readonly RecordItem[];
  /** The item that comes next, and the clock up to which entries are in parts. */
  next: number;
  clock: number;
}

/**
 * The same entries in parts, each of which finds what it stands beside in those before it. One that holds anything but
 * entries, or that has not all of their predecessors, stays whole.
 */
export function splitUpdate(update: Uint8Array): readonly Uint8Array[] {
  const { structs, ds } = Y.decodeUpdate(update);
  const items = structs.filter(isRecordItem).filter(({ parentSub }) => parentSub === null);
  const total = items.reduce((sum, { length }) => sum + length, 0);
  const size = Math.max(ENTRIES_A_PART, Math.ceil(total / MOST_PARTS));
  if (total <= size || items.length < structs.length || ds.clients.size > 0) return [update];
  const lanes = lanesOf(items);
  if (!lanes) return [update];
  const parts: Uint8Array[] = [];
  for (let left = total; left > 0; ) {
    const part = takePart(lanes, size);
    const taken = part.reduce((sum, { length }) => sum + length, 0);
    if (taken === 0) return [update];
    parts.push(encode(part));
    left -= taken;
  }
  return parts;
}

/** Undefined where a client's entries do not begin with its first one, or do not follow each other. */
function lanesOf(items: readonly RecordItem[]): ReadonlyMap<number, Lane> | undefined {
  const byClient = new Map<number, RecordItem[]>();
  for (const item of items) {
    const known = byClient.get(item.id.client);
    if (known) known.push(item);
    else byClient.set(item.id.client, [item]);
  }
  for (const lane of byClient.values()) {
    let clock = 0;
    for (const { id, length } of lane) {
      if (id.clock !== clock) return undefined;
      clock += length;
    }
  }
  return new Map([...byClient].map(([client, lane]) => [client, { items: lane, next: 0, clock: 0 }]));
}

/** At most `size` entries whose predecessors are in this part or in earlier ones. */
function takePart(lanes: ReadonlyMap<number, Lane>, size: number): readonly RecordItem[] {
  const part: RecordItem[] = [];
  let left = size;
  const isThere = (id: Y.ID | null): boolean => id === null || id.clock < (lanes.get(id.client)?.clock ?? 0);
  for (let hasMoved = true; hasMoved && left > 0; ) {
    hasMoved = false;
    for (const lane of lanes.values()) {
      for (let item = lane.items[lane.next]; item && left > 0; item = lane.items[lane.next]) {
        const from = lane.clock - item.id.clock;
        if (!isThere(item.rightOrigin) || (from === 0 && !isThere(item.origin))) break;
        const to = Math.min(item.length, from + left);
        part.push(slice(item, from, to));
        lane.clock += to - from;
        left -= to - from;
        if (to === item.length) lane.next++;
        hasMoved = true;
      }
    }
  }
  return part;
}

/** Entries of an item as an item of their own, as Yjs itself cuts one. */
function slice(item: RecordItem, from: number, to: number): RecordItem {
  const { client, clock } = item.id;
  const { arr } = item.content;
  return new Y.Item(
    Y.createID(client, clock + from),
    null,
    from === 0 ? item.origin : Y.createID(client, clock + from - 1),
    null,
    item.rightOrigin,
    item.parent,
    null,
    new Y.ContentAny(arr.slice(from, to)),
  ) as RecordItem;
}

/** As Yjs writes an update: its clients by number, the highest first. */
function encode(part: readonly RecordItem[]): Uint8Array {
  const clients = [...new Set(part.map(({ id }) => id.client))].sort((a, b) => b - a);
  return updateOf(new Map(clients.map((client) => [client, part.filter(({ id }) => id.client === client)])));
}
