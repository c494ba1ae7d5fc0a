/**
 * What a device has, so that another one can answer with what it lacks: the state vector (yjs) of each of its documents
 * with a digest of what stands below it, and whose seasons it wants besides. Compact: it has to go into as few codes as may be.
 */
import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import * as Y from "yjs";
import { allowedDocuments } from "#client/device/hand-off/bundle.ts";
import type { Clocks } from "#core/ledger/content-digest.ts";
import { parseDocumentName } from "#core/ledger/documents.ts";
import { packContent, unpackContent } from "./packed-content.ts";

export interface Holdings {
  /** Riders whose documents are wanted, also those that the device has not heard of yet. */
  readonly riders: "all" | readonly string[];
  /** By their names. */
  readonly documents: ReadonlyMap<string, HeldDocument>;
}

export interface HeldDocument {
  readonly clocks: Clocks;
  /** Equal clocks do not say that the entries are: a client number may have been used twice. {@link digestBytes} long. */
  readonly digest: Uint8Array;
}

/** Bytes of a content's digest that are told: enough against chance, and a code is small. */
export const digestBytes = 8;

const ALL = 0;
const NAMED = 1;

/** @param documents each with its state vector as yjs encodes it, and the digest at it */
export function writeHoldings(
  riders: Holdings["riders"],
  documents: readonly { readonly name: string; readonly vector: Uint8Array; readonly digest: Uint8Array }[],
): Uint8Array {
  return packContent((encoder) => {
    encoding.writeUint8(encoder, riders === "all" ? ALL : NAMED);
    if (riders !== "all") {
      encoding.writeVarUint(encoder, riders.length);
      for (const rider of riders) encoding.writeVarString(encoder, rider);
    }
    encoding.writeVarUint(encoder, documents.length);
    for (const { name, vector, digest } of documents) {
      encoding.writeVarString(encoder, name);
      encoding.writeVarUint8Array(encoder, vector);
      encoding.writeUint8Array(encoder, digest.subarray(0, digestBytes));
    }
  });
}

/** Undefined when the content is not what {@link writeHoldings} writes. Never throws. */
export function readHoldings(content: Uint8Array): Holdings | undefined {
  return unpackContent(content, (decoder) => {
    const wish = decoding.readUint8(decoder);
    if (wish !== ALL && wish !== NAMED) return undefined;
    const riders = wish === ALL ? "all" : readMany(decoder, () => decoding.readVarString(decoder));
    const documents = new Map<string, HeldDocument>();
    const names = readMany(decoder, () => {
      const name = decoding.readVarString(decoder);
      const clocks = Y.decodeStateVector(decoding.readVarUint8Array(decoder));
      documents.set(name, { clocks, digest: decoding.readUint8Array(decoder, digestBytes).slice() });
      return name;
    });
    const isWhole = names?.length === documents.size && names.every((name) => parseDocumentName(name) !== undefined);
    return riders !== undefined && isWhole ? { riders, documents } : undefined;
  });
}

function readMany<Value>(decoder: decoding.Decoder, read: () => Value): readonly Value[] | undefined {
  const count = decoding.readVarUint(decoder);
  return count > allowedDocuments ? undefined : Array.from({ length: count }, read);
}
