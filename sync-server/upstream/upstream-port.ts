import type { DocumentList } from "#core/protocol/document-list.ts";
import type { SocketPurpose } from "./socket-purpose.ts";

/** One socket to the upstream. No function throws, also when the socket is gone. */
export type UpstreamSocket = {
  send(message: Uint8Array): void;
  /** Asks for a sign of life. */
  ping(): void;
  /** Ends it; no event comes afterwards. */
  close(): void;
};

/** What a socket tells; none of it comes before `openSocket` has returned. */
export type UpstreamEvents = {
  readonly onOpen: () => void;
  readonly onMessage: (message: Uint8Array) => void;
  /** A sign of life that is no message. */
  readonly onAlive: () => void;
  /** It could not be opened, or has ended; `code` as in RFC 6455, section 7.4. */
  readonly onClose: (code: number, reason: string) => void;
};

export type DocumentListing =
  | { readonly ok: true; readonly list: DocumentList }
  | { readonly ok: false; readonly problem: { readonly type: string; readonly sentence: string } };

/** The way to the upstream server. */
export type UpstreamPort = {
  openSocket(document: string, purpose: SocketPurpose, events: UpstreamEvents): UpstreamSocket;
  /** Asks for the documents that the upstream has. Never rejects. */
  listDocuments(signal: AbortSignal): Promise<DocumentListing>;
};

/** Clock and timers. */
export type Timers = {
  /** Milliseconds of a clock that never goes back. */
  now(): number;
  /** Calls back once after so many milliseconds; returns what calls it off. */
  after(ms: number, act: () => void): () => void;
};
