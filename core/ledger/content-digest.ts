import { digest as sha256 } from "lib0/hash/sha256";
import { encodeUtf8 } from "lib0/string";
import * as Y from "yjs";
import { examineJson, isJsonObject } from "./plain-json.ts";
import type { Position } from "./update-order.ts";

/** How much of a document is meant: for each client the clock below which its entries count. */
export type Clocks = ReadonlyMap<number, number>;

/**
 * What a document holds, as a number that two replicas can compare. Clocks alone cannot tell: two devices that used one
 * client number have equal clocks and different entries.
 *
 * Each distinct content is hashed with SHA-256, and the digest is the sum of the hashes modulo 2^256, so that neither
 * order nor repetition changes it and an entry more costs one addition. Source of the construction: M. Bellare and
 * D. Micciancio, "A new paradigm for collision-free hashing: incrementality at reduced cost", EUROCRYPT 1997 (AdHash).
 */
export type ContentDigest = {
  /** 32 bytes for what stands below `clocks`; undefined while the document does not hold all of that. */
  at(clocks: Clocks): Uint8Array | undefined;
  /** Hashes at most so many entries of those that the next question would have to; true when none is left. */
  workAhead(most: number): boolean;
  /** How many entries are here: while it stays, so do the answers. */
  size(): number;
  /** Where the record of that id stands, more than once when it was added again; empty when it is not here. */
  positionsOf(recordId: string): readonly Position[];
};

/** Follows `ydoc`; what was added since the last question is hashed at the next one. */
export function createContentDigest(ydoc: Y.Doc): ContentDigest {
  const lanes = new Map<number, (Content | undefined)[]>();
  const contents = new Map<string, Content>();
  const positionsById = new Map<string, Position[]>();
  const total = new Uint32Array(words);
  let size = 0;

  const enter = (raw: unknown, position: Position): Content => {
    const hash = wordsOf(sha256(encodeUtf8(examineJson(raw).text)));
    const key = hash.join();
    let content = contents.get(key);
    if (content === undefined) {
      content = { hash, count: 0 };
      contents.set(key, content);
      add(total, hash);
    }
    content.count++;
    size++;
    if (isJsonObject(raw) && typeof raw.id === "string") {
      const positions = positionsById.get(raw.id);
      if (positions === undefined) positionsById.set(raw.id, [position]);
      else positions.push(position);
    }
    return content;
  };

  const catchUp = (most = Number.POSITIVE_INFINITY): boolean => {
    let left = most;
    for (const [client, structs] of ydoc.store.clients) {
      const lane = lanes.get(client) ?? [];
      if (lane.length === Y.getState(ydoc.store, client)) continue;
      lanes.set(client, lane);
      for (let index = Y.findIndexSS(structs, lane.length); index < structs.length; index++) {
        const struct = structs[index];
        if (struct === undefined) break;
        const entries = struct instanceof Y.Item && struct.content instanceof Y.ContentAny ? struct.content.arr : [];
        for (let offset = lane.length - struct.id.clock; offset < struct.length; offset++) {
          if (left === 0) return false;
          left--;
          // What is no entry (a hostile server may send it) has a clock and no content.
          lane.push(offset < entries.length ? enter(entries[offset], { client, clock: lane.length }) : undefined);
        }
      }
    }
    return true;
  };

  return {
    workAhead: catchUp,
    at: (clocks) => {
      catchUp();
      for (const [client, clock] of clocks) if (clock > (lanes.get(client)?.length ?? 0)) return undefined;
      const above = new Map<Content, number>();
      for (const [client, lane] of lanes) {
        for (let clock = clocks.get(client) ?? 0; clock < lane.length; clock++) {
          const content = lane[clock];
          if (content !== undefined) above.set(content, (above.get(content) ?? 0) + 1);
        }
      }
      const sum = total.slice();
      for (const [content, count] of above) if (count === content.count) subtract(sum, content.hash);
      return bytesOf(sum);
    },
    size: () => {
      catchUp();
      return size;
    },
    positionsOf: (recordId) => {
      catchUp();
      return positionsById.get(recordId) ?? [];
    },
  };
}

/** Whether one of these positions lies below the clocks. */
export function reaches(clocks: Clocks, positions: readonly Position[]): boolean {
  return positions.some(({ client, clock }) => clock < (clocks.get(client) ?? 0));
}

/** A content that stands in the document, and how often. */
type Content = { readonly hash: Uint32Array; count: number };

/** A digest as numbers of 32 bits, the lowest first. */
const words = 8;

function wordsOf(bytes: Uint8Array): Uint32Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return Uint32Array.from({ length: words }, (_, index) => view.getUint32((words - 1 - index) * 4));
}

function bytesOf(numbers: Uint32Array): Uint8Array {
  const bytes = new Uint8Array(words * 4);
  const view = new DataView(bytes.buffer);
  for (const [index, number] of numbers.entries()) view.setUint32((words - 1 - index) * 4, number);
  return bytes;
}

function add(sum: Uint32Array, term: Uint32Array): void {
  let carry = 0;
  for (const [index, number] of term.entries()) {
    const next = (sum[index] ?? 0) + number + carry;
    sum[index] = next;
    carry = next > 0xffff_ffff ? 1 : 0;
  }
}

function subtract(sum: Uint32Array, term: Uint32Array): void {
  let borrow = 0;
  for (const [index, number] of term.entries()) {
    const next = (sum[index] ?? 0) - number - borrow;
    sum[index] = next;
    borrow = next < 0 ? 1 : 0;
  }
}
