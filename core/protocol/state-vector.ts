import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";

/**
 * How much of a document somebody holds: for each writer (Yjs client id) the clock below which everything is there.
 */
export type StateVector = ReadonlyMap<number, number>;

/**
 * Reads a state vector in the Yjs version 1 encoding: a count, then pairs of client id and clock.
 * @returns undefined when the bytes are no state vector.
 */
export function decodeStateVector(bytes: Uint8Array): StateVector | undefined {
  const decoder = decoding.createDecoder(bytes);
  const clocks = new Map<number, number>();
  try {
    const count = decoding.readVarUint(decoder);
    // A pair takes two bytes or more, so a larger count is a lie that must not cost a long loop.
    if (count > bytes.length / 2) return undefined;
    for (let index = 0; index < count; index++) {
      clocks.set(decoding.readVarUint(decoder), decoding.readVarUint(decoder));
    }
  } catch {
    return undefined;
  }
  return decoding.hasContent(decoder) ? undefined : clocks;
}

/** Writes a state vector in the Yjs version 1 encoding. */
export function encodeStateVector(clocks: StateVector): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, clocks.size);
  for (const [client, clock] of clocks) {
    encoding.writeVarUint(encoder, client);
    encoding.writeVarUint(encoder, clock);
  }
  return encoding.toUint8Array(encoder);
}

/** Whether `held` contains everything that `wanted` names. */
export function coversStateVector(held: StateVector, wanted: StateVector): boolean {
  for (const [client, clock] of wanted) {
    if (clock > (held.get(client) ?? 0)) return false;
  }
  return true;
}
