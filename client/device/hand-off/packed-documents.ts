/**
 * The documents of a bundle in one piece: their number, then each one's name and
 * update, as lib0 encodes them, deflated (RFC 1951).
 */
import { deflateSync } from "fflate";
import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { inflate } from "./bounded-inflate.ts";
import { allowedDocuments, type NamedUpdate } from "./bundle.ts";

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
