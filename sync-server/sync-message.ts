import * as encoding from "lib0/encoding";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";

/** Asks for what the given state vector lacks. */
export function syncStep1(stateVector: Uint8Array): Uint8Array {
  return message([messageType.sync, syncMessageType.step1], stateVector);
}

/** The answer to a sync step 1. */
export function syncStep2(update: Uint8Array): Uint8Array {
  return message([messageType.sync, syncMessageType.step2], update);
}

/** One update that the other end has not seen. */
export function syncUpdate(update: Uint8Array): Uint8Array {
  return message([messageType.sync, syncMessageType.update], update);
}

/** Presence states in the encoding of y-protocols' awareness. */
export function presenceMessage(states: Uint8Array): Uint8Array {
  return message([messageType.awareness], states);
}

function message(numbers: readonly number[], payload: Uint8Array): Uint8Array {
  const encoder = encoding.createEncoder();
  for (const number of numbers) encoding.writeVarUint(encoder, number);
  encoding.writeVarUint8Array(encoder, payload);
  return encoding.toUint8Array(encoder);
}
