import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { messageType } from "./message-type.ts";
import { decodeStateVector, encodeStateVector, type StateVector } from "./state-vector.ts";

/** Bytes of a digest of content. */
export const digestBytes = 32;

/** What the server's log holds of this socket's document, flushed to the disk. */
export type DurableAcknowledgement = {
  readonly stateVector: StateVector;
  /** Of the content below that state vector (content-digest.ts), 32 bytes; absent from servers before version 3. */
  readonly digest: Uint8Array | undefined;
};

/**
 * @param stateVector in the Yjs version 1 encoding, as `Y.encodeStateVector` gives it.
 * @param digest 32 bytes
 */
export function encodeDurableAcknowledgement(stateVector: Uint8Array, digest: Uint8Array): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, messageType.durableAcknowledgement);
  encoding.writeVarUint8Array(encoder, stateVector);
  encoding.writeVarUint8Array(encoder, digest);
  return encoding.toUint8Array(encoder);
}

/**
 * Reads the message after its type number, as a `messageHandlers` entry of a y-websocket provider gets it.
 * @returns undefined when it cannot be read.
 */
export function readDurableAcknowledgement(decoder: decoding.Decoder): DurableAcknowledgement | undefined {
  try {
    const stateVector = decodeStateVector(decoding.readVarUint8Array(decoder));
    if (stateVector === undefined) return undefined;
    if (!decoding.hasContent(decoder)) return { stateVector, digest: undefined };
    const digest = decoding.readVarUint8Array(decoder);
    return digest.length === digestBytes ? { stateVector, digest } : undefined;
  } catch {
    return undefined;
  }
}

/** The acknowledgement alone, as a device keeps it. A broken invariant, one without a digest, throws. */
export function encodeKeptAcknowledgement({ stateVector, digest }: DurableAcknowledgement): Uint8Array {
  if (digest === undefined) throw new Error("An acknowledgement without a digest proves nothing later.");
  const encoder = encoding.createEncoder();
  encoding.writeVarUint8Array(encoder, encodeStateVector(stateVector));
  encoding.writeVarUint8Array(encoder, digest);
  return encoding.toUint8Array(encoder);
}

/** Reads what {@link encodeKeptAcknowledgement} wrote; undefined when it is damaged. */
export function decodeKeptAcknowledgement(bytes: Uint8Array): DurableAcknowledgement | undefined {
  return readDurableAcknowledgement(decoding.createDecoder(bytes));
}
