import type { CloseCode } from "#core/protocol/close-code.ts";

/** The other end of one socket, as the rooms see it. Neither function throws, also when the socket is gone. */
export type Peer = {
  send(message: Uint8Array): void;
  close(code: CloseCode, reason: string): void;
};
