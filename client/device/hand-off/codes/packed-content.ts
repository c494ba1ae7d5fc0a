/** The content of a code sequence as it is packed: its length as a lib0 number, then its bytes deflated (RFC 1951). */
import { deflateSync } from "fflate";
import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { inflate } from "#client/device/hand-off/bounded-inflate.ts";

/** Most bytes that an unpacked content may have: records repeat themselves, about fivefold. */
export const allowedPlainBytes = 8 * 1024 * 1024;

/** Packs what `write` writes. */
export function packContent(write: (encoder: encoding.Encoder) => void): Uint8Array {
  const plain = encoding.encode(write);
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, plain.length);
  encoding.writeUint8Array(encoder, deflateSync(plain, { level: 9 }));
  return encoding.toUint8Array(encoder);
}

/**
 * What `read` makes of the content; undefined when it cannot be unpacked, is larger than allowed, when `read` throws
 * or gives undefined, or when it leaves something unread. Never throws.
 */
export function unpackContent<Value>(
  content: Uint8Array,
  read: (decoder: decoding.Decoder) => Value | undefined,
): Value | undefined {
  try {
    const decoder = decoding.createDecoder(content);
    const bytes = decoding.readVarUint(decoder);
    if (bytes > allowedPlainBytes) return undefined;
    const plain = inflate(decoding.readTailAsUint8Array(decoder), bytes);
    if (plain === undefined) return undefined;
    const inner = decoding.createDecoder(plain);
    const value = read(inner);
    return decoding.hasContent(inner) ? undefined : value;
  } catch {
    return undefined;
  }
}
