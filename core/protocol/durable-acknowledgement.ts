import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { messageType } from "./message-type.ts";
import { decodeStateVector, type StateVector } from "./state-vector.ts";

/** What the server's log holds of this socket's document, flushed to the disk. */
export type DurableAcknowledgement = { readonly stateVector: StateVector };

/** @param stateVector in the Yjs version 1 encoding, as `Y.encodeStateVector` gives it. */
export function encodeDurableAcknowledgement(stateVector: Uint8Array): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, messageType.durableAcknowledgement);
  encoding.writeVarUint8Array(encoder, stateVector);
  return encoding.toUint8Array(encoder);
}

/**
 * Reads the message after its type number, as a `messageHandlers` entry of a y-websocket provider gets it.
 * @returns undefined when it cannot be read.
 */
export function readDurableAcknowledgement(decoder: decoding.Decoder): DurableAcknowledgement | undefined {
  try {
    const stateVector = decodeStateVector(decoding.readVarUint8Array(decoder));
    return stateVector === undefined ? undefined : { stateVector };
  } catch {
    return undefined;
  }
}
