/**
 * The documents of a bundle in one piece: their number, then each one's name and
 * update, as lib0 encodes them, deflated (RFC 1951).
 */
import { deflateSync, Inflate } from "fflate";
import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { allowedDocuments, type NamedUpdate } from "./bundle.ts";

/** Bytes that are inflated at a time, so that a small file that swells is noticed before it fills the memory. */
const PIECE = 16 * 1024;
/** Deflate makes at most 1032 bytes out of one (two bits for 258 bytes, zlib.net/zlib_tech.html). */
const LARGEST_RATIO = 1032;

export interface PackedDocuments {
  readonly packed: Uint8Array;
  /** Bytes before deflating. */
  readonly bytes: number;
}

export function packDocuments(documents: readonly NamedUpdate[]): PackedDocuments {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, documents.length);
  for (const { name, update } of documents) {
    encoding.writeVarString(encoder, name);
    encoding.writeVarUint8Array(encoder, update);
  }
  const plain = encoding.toUint8Array(encoder);
  return { packed: deflateSync(plain), bytes: plain.length };
}

/** The documents again; undefined when they cannot be read or are not of that size. Never throws. */
export function unpackDocuments({ packed, bytes }: PackedDocuments): readonly NamedUpdate[] | undefined {
  try {
    const plain = inflate(packed, bytes);
    return plain && decode(plain);
  } catch {
    return undefined;
  }
}

function inflate(packed: Uint8Array, bytes: number): Uint8Array | undefined {
  if (bytes > packed.length * LARGEST_RATIO) return undefined;
  const plain = new Uint8Array(bytes);
  let length = 0;
  const inflating = new Inflate((piece) => {
    if (length + piece.length <= bytes) plain.set(piece, length);
    length += piece.length;
  });
  for (let at = 0; at < packed.length && length <= bytes; at += PIECE) {
    inflating.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
  }
  return length === bytes ? plain : undefined;
}

function decode(plain: Uint8Array): readonly NamedUpdate[] | undefined {
  const decoder = decoding.createDecoder(plain);
  const count = decoding.readVarUint(decoder);
  if (count > allowedDocuments) return undefined;
  const documents: NamedUpdate[] = [];
  for (let index = 0; index < count; index++) {
    documents.push({ name: decoding.readVarString(decoder), update: decoding.readVarUint8Array(decoder) });
  }
  return decoding.hasContent(decoder) ? undefined : documents;
}
