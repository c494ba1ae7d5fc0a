/** Inflating (RFC 1951) what somebody else has packed: never more than was announced. */
import { Inflate } from "fflate";

/** Bytes that are inflated at a time, so that a small file that swells is noticed before it fills the memory. */
const PIECE = 16 * 1024;
/** Deflate makes at most 1032 bytes out of one (two bits for 258 bytes, zlib.net/zlib_tech.html). */
const LARGEST_RATIO = 1032;

/**
 * The unpacked bytes; undefined when there are not exactly `bytes` of them. The caller bounds `bytes`.
 * @throws Error of fflate on what is not deflated
 */
export function inflate(packed: Uint8Array, bytes: number): Uint8Array | undefined {
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
