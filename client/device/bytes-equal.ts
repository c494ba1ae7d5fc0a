/** Whether two runs of bytes are the same. */
export function bytesEqual(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, at) => byte === other[at]);
}
