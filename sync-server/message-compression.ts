import type { PerMessageDeflateOptions } from "ws";

/**
 * Compression of messages on the socket (RFC 7692), which browsers offer by themselves: what a device was away for, or has
 * never had, takes a tenth of its bytes.
 * - What is smaller than `threshold`, in bytes, goes as it is: a single record would be compressed anew for every device
 *   of the team.
 * - No side keeps what it has seen for the next message: that would take memory for every socket, and `threshold` would
 *   not count.
 * - A window of 8 KiB instead of 32 takes a third of the memory and a sixth more bytes.
 */
export const perMessageDeflate: PerMessageDeflateOptions = {
  threshold: 4096,
  serverNoContextTakeover: true,
  clientNoContextTakeover: true,
  serverMaxWindowBits: 13,
  zlibDeflateOptions: { memLevel: 7 },
};
