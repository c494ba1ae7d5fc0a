import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import * as Y from "yjs";
import { recordsName } from "./document.ts";
import { allowedSteps, type Insertion, type KnownEntries, placingSteps } from "./placing-steps.ts";
import { sameJson } from "./plain-json.ts";
import { describeLedgerProblem, type LedgerProblem } from "./problem.ts";
import { type LedgerRecord, parseRecord } from "./record.ts";
import { findUnplaceable, type Position, placeableRuns, type Run } from "./update-order.ts";

/** Why an update is refused, and a sentence for the person whose device sent it. */
export type UpdateProblem = {
  readonly type:
    | "too large"
    | "undecodable"
    | "removes"
    | "not records"
    | "elsewhere"
    /** Builds on entries that are not here: ask the sender for them; nothing need be wrong with it. */
    | "gap"
    /** Puts more entries into the same places than could be sorted in reasonable time. */
    | "tangled"
    /** Says something else under numbers that are taken: two devices share a client number. */
    | "contradicts"
    | "bad record";
  readonly sentence: string;
  /** What is wrong with the record, where one is bad. */
  readonly record?: LedgerProblem["type"];
};

/**
 * The outcome of inspecting an update; `records` are those that the document does not hold yet. `isNew` when the document
 * holds nothing of the update, which goes on where the document ends: applying it adds exactly what it says.
 */
export type UpdateInspection =
  | { readonly ok: true; readonly records: readonly LedgerRecord[]; readonly isNew: boolean }
  | { readonly ok: false; readonly problem: UpdateProblem };

/** Largest update, bytes, when nothing else is said. */
export const allowedUpdateBytes = 1024 * 1024;

/**
 * Judges an update (yjs, format 1) before it is applied to a document; changes
 * nothing. It may only add records to the array `records`. Never throws, and
 * takes time in proportion to the bytes, whatever counts the update claims: an
 * update that passes is one that applies at once and as a whole.
 */
export function inspectUpdate(
  update: Uint8Array,
  ydoc: Y.Doc,
  options: { readonly maximumBytes?: number } = {},
): UpdateInspection {
  const maximumBytes = options.maximumBytes ?? allowedUpdateBytes;
  if (update.length > maximumBytes) {
    return refuse("too large", `The change takes ${update.length} bytes; at most ${maximumBytes} are allowed.`);
  }
  const form = inspectForm(update, ydoc);
  if (!form.ok) return form;
  const { items } = form;
  const knownClock = (client: number): number => Y.getState(ydoc.store, client);
  if (findUnplaceable(items.map(runOf), knownClock) !== undefined) {
    return refuse("gap", "The change builds on earlier entries that have not arrived; they have to be sent first.");
  }
  if (stepsToPlace(items, ydoc) > allowedSteps) {
    return refuse(
      "tangled",
      "The change puts too many entries into the same places; that would take too long to sort.",
    );
  }
  return inspectRecords(items, ydoc, form.hasHoles);
}

/** What {@link inspectForm} finds. */
type Form =
  | { readonly ok: true; readonly items: readonly RecordItem[]; readonly hasHoles: boolean }
  | { readonly ok: false; readonly problem: UpdateProblem };

/**
 * Whether an update can only add entries to the array `records`, whatever they say, and removes nothing. Less than
 * {@link inspectUpdate} asks for, so that it also holds for what lacks predecessors and for records of a newer version.
 */
export function inspectForm(update: Uint8Array, ydoc: Y.Doc): Form {
  const decoded = decode(update);
  if (decoded === undefined) return refuse("undecodable", "The change is damaged and cannot be read.");
  if (decoded.ds.clients.size > 0) {
    return refuse("removes", "The change removes entries; entries can only be added.");
  }
  const clients = new Set(decoded.structs.map(({ id }) => id.client));
  // Applying keeps only the last block of a client, so that a repeated one would be accepted and lost.
  if (clients.size !== declaredBlocks(update)) {
    return refuse("undecodable", "The change names one sender twice, or one without entries, and cannot be read.");
  }
  const items: RecordItem[] = [];
  for (const struct of decoded.structs) {
    if (struct instanceof Y.Skip) continue;
    if (!isRecordItem(struct)) {
      return refuse(
        "not records",
        "The change holds something that is not a list of records; only those can be added.",
      );
    }
    if (!standsInRecords(struct, ydoc)) {
      return refuse("elsewhere", `The change adds outside the list "${recordsName}"; records belong there alone.`);
    }
    items.push(struct);
  }
  return { ok: true, items, hasHoles: items.length < decoded.structs.length };
}

/**
 * What of an update that lacks predecessors (a "gap") has all of them, in the document or in the update, as an update of
 * its own; undefined when that is nothing. Takes time in proportion to the update, not to the document.
 */
export function placeablePart(update: Uint8Array, ydoc: Y.Doc): Uint8Array | undefined {
  const knownClock = (client: number): number => Y.getState(ydoc.store, client);
  const items = decode(update)?.structs.filter(isRecordItem) ?? [];
  const placeable = placeableRuns(
    items.map((item) => ({ ...runOf(item), item })),
    knownClock,
  );
  const byClient = new Map<number, RecordItem[]>();
  for (const { client, clock, length, item } of placeable) {
    // Without what is known already there are no holes: the format numbers the items of a client by their lengths.
    if (clock + length <= knownClock(client)) continue;
    const known = byClient.get(client);
    if (known === undefined) byClient.set(client, [item]);
    else known.push(item);
  }
  return byClient.size === 0 ? undefined : updateOf(byClient);
}

/** An update (yjs, format 1) with these items, which follow each other, and nothing removed. */
export function updateOf(byClient: ReadonlyMap<number, readonly RecordItem[]>): Uint8Array {
  const encoder = new Y.UpdateEncoderV1();
  encoding.writeVarUint(encoder.restEncoder, byClient.size);
  for (const [client, items] of byClient) {
    encoding.writeVarUint(encoder.restEncoder, items.length);
    encoder.writeClient(client);
    encoding.writeVarUint(encoder.restEncoder, items[0]?.id.clock ?? 0);
    for (const item of items) item.write(encoder, 0);
  }
  encoding.writeVarUint(encoder.restEncoder, 0);
  return encoder.toUint8Array();
}

/** Entries of one client that follow each other, as Yjs keeps them. */
export type RecordItem = Y.Item & { readonly content: Y.ContentAny };

function decode(update: Uint8Array): ReturnType<typeof Y.decodeUpdate> | undefined {
  let source: decoding.Decoder | undefined;
  class Decoder extends Y.UpdateDecoderV1 {
    constructor(decoder: decoding.Decoder) {
      super(decoder);
      source = decoder;
    }
  }
  try {
    const decoded = Y.decodeUpdateV2(update, Decoder);
    // What is new is kept and passed on as it came, so that nothing may stand behind it.
    return source === undefined || decoding.hasContent(source) ? undefined : decoded;
  } catch {
    return undefined;
  }
}

/** The count of blocks, one a client, that opens an update: a number in groups of 7 bits, the lowest first. */
function declaredBlocks(update: Uint8Array): number {
  let count = 0;
  let factor = 1;
  for (const byte of update) {
    count += (byte & 0x7f) * factor;
    if (byte < 0x80) break;
    factor *= 0x80;
  }
  return count;
}

/** An item without length would break the search by clock in the document. */
export function isRecordItem(struct: Y.AbstractStruct): struct is RecordItem {
  return struct instanceof Y.Item && struct.content instanceof Y.ContentAny && struct.length > 0;
}

/**
 * True when an item goes into the root array of records. One without a parent
 * of its own goes where its neighbours are: those in the document are looked at
 * here, those in the same update pass this check themselves.
 */
function standsInRecords(item: RecordItem, ydoc: Y.Doc): boolean {
  if (item.parentSub !== null) return false;
  const neighbours = neighboursOf(item);
  if (neighbours.length === 0) return (item.parent as unknown) === recordsName;
  return neighbours.every(({ client, clock }) => {
    if (clock >= Y.getState(ydoc.store, client)) return true;
    const known = itemAt(ydoc, { client, clock });
    return known !== undefined && known.parent === ydoc.share.get(recordsName) && known.parentSub === null;
  });
}

function neighboursOf({ origin, rightOrigin }: Y.Item): Position[] {
  return [origin, rightOrigin].filter((id) => id !== null);
}

function runOf(item: RecordItem): Run {
  const { client, clock } = item.id;
  return { client, clock, length: item.length, needs: neighboursOf(item) };
}

/** At most how many steps yjs takes to put items, as decoded and all of them placeable, into the records. */
export function stepsToPlace(items: readonly Y.Item[], ydoc: Y.Doc): number {
  const insertions = items.map((item): Insertion => {
    const { client, clock } = item.id;
    return { client, clock, length: item.length, behind: item.origin, isBetween: item.rightOrigin !== null };
  });
  return placingSteps(insertions, knownEntries(ydoc));
}

function knownEntries(ydoc: Y.Doc): KnownEntries {
  return {
    clock: (client) => Y.getState(ydoc.store, client),
    followers: (entry, limit) => {
      const behind = entry === null ? undefined : itemAt(ydoc, entry);
      // What follows in the middle of an item is the rest of that item.
      const hasRest = entry !== null && behind !== undefined && entry.clock < behind.id.clock + behind.length - 1;
      const passed = new Set<Y.Item | undefined>(hasRest ? [behind] : []);
      const start = entry === null ? ydoc.share.get(recordsName)?._start : behind?.right;
      for (let item = start ?? null; item !== null && passed.size < limit; item = item.right) {
        const { origin } = item;
        const isDirect = origin?.client === entry?.client && origin?.clock === entry?.clock;
        if (!isDirect && (origin === null || !passed.has(itemAt(ydoc, origin)))) break;
        passed.add(item);
      }
      return passed.size;
    },
  };
}

function itemAt(ydoc: Y.Doc, { client, clock }: Position): Y.Item | undefined {
  const struct: unknown = Y.getItem(ydoc.store, Y.createID(client, clock));
  return struct instanceof Y.Item ? struct : undefined;
}

function inspectRecords(items: readonly RecordItem[], ydoc: Y.Doc, hasHoles: boolean): UpdateInspection {
  const records: LedgerRecord[] = [];
  const ends = new Map<number, number>();
  let isNew = items.length > 0 && !hasHoles;
  for (const { id, length, content } of items) {
    const known = Y.getState(ydoc.store, id.client);
    // Two runs of one client may overlap each other, as one may overlap what is known.
    isNew &&= id.clock === (ends.get(id.client) ?? known);
    ends.set(id.client, id.clock + length);
    for (const [offset, raw] of content.arr.entries()) {
      const position = { client: id.client, clock: id.clock + offset };
      if (position.clock < known) {
        if (!sameJson(raw, contentAt(ydoc, position))) {
          return refuse("contradicts", "The change contradicts entries that are here under the same numbers.");
        }
        continue;
      }
      const parsed = parseRecord(raw);
      if (!parsed.ok) {
        const { problem } = refuse("bad record", describeLedgerProblem(parsed.problem));
        return { ok: false, problem: { ...problem, record: parsed.problem.type } };
      }
      records.push(parsed.record);
    }
  }
  return { ok: true, records, isNew };
}

function contentAt(ydoc: Y.Doc, position: Position): unknown {
  const item = itemAt(ydoc, position);
  return item?.content.getContent()[position.clock - item.id.clock];
}

function refuse(
  type: UpdateProblem["type"],
  sentence: string,
): { readonly ok: false; readonly problem: UpdateProblem } {
  return { ok: false, problem: { type, sentence } };
}
