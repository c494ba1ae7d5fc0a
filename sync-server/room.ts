import * as Y from "yjs";
import { type ContentDigest, createContentDigest } from "#core/ledger/content-digest.ts";
import { placeablePart } from "#core/ledger/update-guard.ts";
import { encodeDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { maximumCatchUpBytes, maximumUpdateBytes } from "#core/protocol/limits.ts";
import type { Receipt } from "#core/protocol/receipt.ts";
import { encodeManyReceipts } from "#core/protocol/receipt.ts";
import { createReceiptBook } from "#core/protocol/receipt-book.ts";
import { applyTo, documentFrom } from "./document-change.ts";
import { type Guard, type GuardProblem, gapProblem } from "./guard.ts";
import type { Peer } from "./peer.ts";
import { createPresence, type Presence } from "./presence.ts";
import { presenceMessage, syncStep1, syncStep2, syncUpdate } from "./sync-message.ts";

/**
 * What became of an update. `news` is what the log has to hold before anybody hears of it, undefined when all of it was
 * known; `rest` says that a part was left out because something before it is missing. `gap` is that for the whole.
 */
export type Staged =
  | { readonly outcome: "taken"; readonly news: Uint8Array | undefined; readonly rest: GuardProblem | undefined }
  | { readonly outcome: "gap"; readonly problem: GuardProblem }
  | { readonly outcome: "refused"; readonly problem: GuardProblem };

/** An update: a single one, or the answer to a sync step 1, which is all that the device has and the room lacks. */
export type Offer = { readonly from: Peer; readonly update: Uint8Array; readonly isCatchUp: boolean };

/**
 * One document in memory with the sockets that are in it. Staged changes are in the document but unheard of until
 * `publish`; the caller stages, writes the log and publishes in one go, so that nobody can read in between, and
 * abandons the room when the log cannot be written.
 */
export type Room = {
  readonly name: string;
  readonly peers: ReadonlySet<Peer>;
  enter(peer: Peer): void;
  leave(peer: Peer): void;
  /** @throws when the document has to be rebuilt and the log cannot be read; then the room has to be abandoned. */
  stage(offer: Offer): Staged;
  /** Passes on what was staged and tells up to where the log holds the document. */
  publish(): void;
  /** Asks for what this document lacks. */
  ask(peer: Peer): void;
  /** Answers a sync step 1. @throws when the state vector cannot be read. */
  answer(peer: Peer, stateVector: Uint8Array): void;
  /**
   * Takes what devices say that they hold and passes on what is new. Who sent an older one is told the newer.
   * @returns those that are new, for the log to keep, and the devices that had to make room for them.
   */
  receiveReceipts(
    from: Peer,
    receipts: readonly Receipt[],
  ): { readonly taken: readonly Receipt[]; readonly forgotten: readonly string[] };
  sendReceipts(peer: Peer): void;
  /** Takes a presence payload and echoes it to every peer. @returns false when it cannot be read. */
  receivePresence(from: Peer, payload: Uint8Array): boolean;
  sendPresence(peer: Peer): void;
  /** Ends the room for good: the document may be ahead of the log, so from now on nobody may be told anything of it. */
  abandon(): void;
  readonly isAbandoned: boolean;
};

export type RoomNeeds = {
  readonly name: string;
  /** Gives the updates that the log holds, also to begin again when an update fails half-way. */
  readonly load: () => readonly Uint8Array[];
  /** What the log holds of the devices' receipts. */
  readonly receipts: readonly Receipt[];
  readonly guard: Guard;
};

/** @throws when the log cannot be read. */
export function createRoom({ name, load, receipts, guard }: RoomNeeds): Room {
  const peers = new Set<Peer>();
  const book = createReceiptBook();
  book.take(receipts);
  const presence: Presence = createPresence();
  let staged: { from: Peer; news: Uint8Array }[] = [];
  let senders = new Set<Peer>();
  let document = documentFrom(load());
  let digest: ContentDigest = createContentDigest(document);
  let isAbandoned = false;

  function broadcast(message: Uint8Array): void {
    for (const peer of peers) peer.send(message);
  }

  function stage({ from, update, isCatchUp }: Offer): Staged {
    const judgement = guard(update, document, isCatchUp ? maximumCatchUpBytes : maximumUpdateBytes);
    if (judgement.ok) return take(from, update, judgement.isNew);
    const { problem } = judgement;
    if (problem.type !== gapProblem) return { outcome: "refused", problem };
    // A device that lost something of its own would otherwise be kept from handing in everything else.
    const part = isCatchUp ? placeablePart(update, document) : undefined;
    if (part === undefined || !guard(part, document, maximumCatchUpBytes).ok) return { outcome: "gap", problem };
    const taken = take(from, part);
    return taken.outcome === "taken" ? { ...taken, rest: problem } : taken;
  }

  function take(from: Peer, update: Uint8Array, isNew = false): Staged {
    const applied = applyTo(document, update, isNew);
    if (applied.isSpoilt) {
      document.destroy();
      document = documentFrom([...load(), ...staged.map(({ news }) => news)]);
      digest = createContentDigest(document);
      return { outcome: "refused", problem: failedHalfWay };
    }
    senders.add(from);
    if (applied.news !== undefined) staged.push({ from, news: applied.news });
    return { outcome: "taken", news: applied.news, rest: undefined };
  }

  function acknowledge(): Uint8Array {
    const held = Y.encodeStateVector(document);
    const content = digest.at(Y.decodeStateVector(held));
    if (content === undefined) throw new Error(`The document ${name} does not hold what it holds.`);
    return encodeDurableAcknowledgement(held, content);
  }

  function publish(): void {
    const acknowledgement = acknowledge();
    const parcels = staged.map(({ from, news }) => ({ from, message: syncUpdate(news) }));
    for (const peer of peers) {
      for (const { from, message } of parcels) if (from !== peer) peer.send(message);
      if (parcels.length > 0 || senders.has(peer)) peer.send(acknowledgement);
    }
    staged = [];
    senders = new Set();
  }

  return {
    name,
    peers,
    enter(peer) {
      peers.add(peer);
    },
    leave(peer) {
      peers.delete(peer);
      const gone = presence.leave(peer);
      if (gone !== undefined) broadcast(presenceMessage(gone));
    },
    stage,
    publish,
    ask(peer) {
      peer.send(syncStep1(Y.encodeStateVector(document)));
    },
    answer(peer, stateVector) {
      peer.send(syncStep2(Y.encodeStateAsUpdate(document, stateVector)));
      peer.send(acknowledge());
    },
    receiveReceipts(from, offered) {
      const { taken, newerKnown, forgotten } = book.take(offered);
      for (const message of encodeManyReceipts(newerKnown)) from.send(message);
      for (const message of encodeManyReceipts(taken)) for (const peer of peers) if (peer !== from) peer.send(message);
      return { taken, forgotten };
    },
    sendReceipts(peer) {
      for (const message of encodeManyReceipts(book.all())) peer.send(message);
    },
    receivePresence(from, payload) {
      const changed = presence.receive(from, payload);
      if (changed === "malformed") return false;
      if (changed !== "nothing") broadcast(presenceMessage(changed));
      return true;
    },
    sendPresence(peer) {
      const everybody = presence.everybody();
      if (everybody !== undefined) peer.send(presenceMessage(everybody));
    },
    abandon() {
      isAbandoned = true;
    },
    get isAbandoned() {
      return isAbandoned;
    },
  };
}

const failedHalfWay: GuardProblem = {
  type: "cannot be applied",
  sentence: "This change cannot be put into the document; it was set aside on the server.",
};
