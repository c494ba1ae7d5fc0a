/**
 * Why the server closed a socket. y-websocket 3 takes 4400 to 4499 for "do not come back" and every other code for
 * "try again later"; 1001 and 1003 are those of RFC 6455, section 7.4.1.
 */
export const closeCode = {
  /** The server stops; the device reconnects by itself when it is back. */
  goingAway: 1001,
  /** A text frame: the protocol is binary. */
  binaryOnly: 1003,
  /** A message that cannot be read. */
  malformedMessage: 4400,
  /** The path names no document. */
  unknownDocument: 4404,
  /** The log could not be written or read: nothing was lost on the device, it sends again. */
  notStored: 4500,
  /** Too many connections or open documents, or this socket sends too much; the device comes back later. */
  overloaded: 4503,
} as const;

export type CloseCode = (typeof closeCode)[keyof typeof closeCode];
