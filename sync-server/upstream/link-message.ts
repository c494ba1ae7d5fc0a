import * as decoding from "lib0/decoding";
import { type DurableAcknowledgement, readDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { maximumCatchUpBytes, maximumUpdateBytes } from "#core/protocol/limits.ts";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";
import { type Refusal, readRefusal } from "#core/protocol/refusal.ts";
import { syncStep2 } from "../sync-message.ts";

/** A message between two servers, as the link between them looks at it. */
export type LinkMessage =
  | { readonly type: "acknowledgement"; readonly acknowledgement: DurableAcknowledgement }
  | { readonly type: "refusal"; readonly refusal: Refusal }
  | { readonly type: "presence"; readonly payload: Uint8Array }
  /** More than the other server takes in any form. */
  | { readonly type: "too large"; readonly bytes: number }
  /** An answer to a sync step 1, to be handed on as it is. */
  | { readonly type: "answer"; readonly update: Uint8Array; readonly message: Uint8Array }
  /** To be handed on as it is here, whatever it is. */
  | { readonly type: "other"; readonly message: Uint8Array };

/**
 * Reads what a link has to know and leaves the rest to the two servers. An update that one server took in the form of a
 * catch-up comes from it as a single one, which may be larger than a single one may be: it goes on as a catch-up.
 * @returns undefined when it cannot be read.
 */
export function readLinkMessage(message: Uint8Array): LinkMessage | undefined {
  try {
    const decoder = decoding.createDecoder(message);
    const type = decoding.readVarUint(decoder);
    if (type === messageType.durableAcknowledgement) {
      const acknowledgement = readDurableAcknowledgement(decoder);
      return acknowledgement && { type: "acknowledgement", acknowledgement };
    }
    if (type === messageType.refusal) {
      const refusal = readRefusal(decoder);
      return refusal && { type: "refusal", refusal };
    }
    if (type === messageType.awareness) return { type: "presence", payload: decoding.readVarUint8Array(decoder) };
    return type === messageType.sync ? readSync(decoder, message) : { type: "other", message };
  } catch {
    return undefined;
  }
}

function readSync(decoder: decoding.Decoder, message: Uint8Array): LinkMessage {
  const type = decoding.readVarUint(decoder);
  if (type !== syncMessageType.update && type !== syncMessageType.step2) return { type: "other", message };
  const update = decoding.readVarUint8Array(decoder);
  if (update.length > maximumCatchUpBytes) return { type: "too large", bytes: update.length };
  if (type === syncMessageType.step2) return { type: "answer", update, message };
  return { type: "other", message: update.length > maximumUpdateBytes ? syncStep2(update) : message };
}
