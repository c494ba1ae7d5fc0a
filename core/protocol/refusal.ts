import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import * as z from "zod/mini";
import { maximumRefusalSentence } from "./limits.ts";
import { messageType } from "./message-type.ts";

export const refusalSchema = z.object({
  /** Word for programs: the guard's own, or one of the server's. */
  type: z.string().check(z.minLength(1), z.maxLength(64)),
  /** One sentence that a screen can show. */
  sentence: z.string().check(z.minLength(1), z.maxLength(maximumRefusalSentence)),
});

/** An update of this socket was not taken: nothing of it was stored in the document or passed on. */
export type Refusal = z.infer<typeof refusalSchema>;

/** A sentence above the limit is cut; an empty type or sentence is a broken invariant and throws. */
export function encodeRefusal(refusal: Refusal): Uint8Array {
  const sentence = refusal.sentence.slice(0, maximumRefusalSentence);
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, messageType.refusal);
  encoding.writeVarString(encoder, JSON.stringify(refusalSchema.parse({ type: refusal.type, sentence })));
  return encoding.toUint8Array(encoder);
}

/**
 * Reads the message after its type number, as a `messageHandlers` entry of a y-websocket provider gets it.
 * @returns undefined when it cannot be read.
 */
export function readRefusal(decoder: decoding.Decoder): Refusal | undefined {
  try {
    const parsed = refusalSchema.safeParse(JSON.parse(decoding.readVarString(decoder)));
    return parsed.success ? parsed.data : undefined;
  } catch {
    return undefined;
  }
}
