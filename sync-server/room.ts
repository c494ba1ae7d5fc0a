import * as Y from "yjs";
import { encodeDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import type { Guard, GuardProblem } from "./guard.ts";
import type { Peer } from "./peer.ts";
import { createPresence, type Presence } from "./presence.ts";
import { presenceMessage, syncStep1, syncStep2, syncUpdate } from "./sync-message.ts";

/** Most bytes that may wait in one document for an update that is missing, before more of them are refused. */
export const maximumWaitingBytes = 4 * 1024 * 1024;

/**
 * What became of an update. `news` is what the log has to hold before anybody hears of it.
 * `hole`: something before it is missing, so the sender has to be asked.
 */
export type Staged =
  | { readonly outcome: "news"; readonly news: Uint8Array; readonly hole: boolean }
  | { readonly outcome: "known"; readonly hole: boolean }
  | { readonly outcome: "refused"; readonly problem: GuardProblem };

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
  stage(from: Peer, update: Uint8Array, maximumBytes: number): Staged;
  /** Passes on what was staged and tells up to where the log holds the document. */
  publish(): void;
  /** Asks for what this document lacks. */
  ask(peer: Peer): void;
  /** Answers a sync step 1. @throws when the state vector cannot be read. */
  answer(peer: Peer, stateVector: Uint8Array): void;
  /** Takes a presence payload and echoes it to every peer. @returns false when it cannot be read. */
  receivePresence(from: Peer, payload: Uint8Array): boolean;
  sendPresence(peer: Peer): void;
  /** Ends the room for good: the document may be ahead of the log, so from now on nobody may be told anything of it. */
  abandon(): void;
  readonly isAbandoned: boolean;
};

type Parcel = { readonly from: Peer; readonly message: Uint8Array | undefined };

/**
 * @param load gives the updates that the log holds, also to begin again when an update fails half-way.
 * @throws when the log cannot be read.
 */
export function createRoom(name: string, load: () => readonly Uint8Array[], guard: Guard): Room {
  const peers = new Set<Peer>();
  const presence: Presence = createPresence();
  let staged: { parcel: Parcel; news: Uint8Array }[] = [];
  let senders = new Set<Peer>();
  let document = documentFrom(load());
  let isAbandoned = false;

  function broadcast(message: Uint8Array): void {
    for (const peer of peers) peer.send(message);
  }

  function stage(from: Peer, update: Uint8Array, maximumBytes: number): Staged {
    const judgement = guard(update, document, maximumBytes);
    if (!judgement.ok) return { outcome: "refused", problem: judgement.problem };
    if (waitsBeyondLimit(document, update)) return { outcome: "refused", problem: tooMuchWaiting };
    const waitingBefore = document.store.pendingStructs?.update;
    const applied = apply(document, update);
    if (!applied.ok) {
      document.destroy();
      document = documentFrom([...load(), ...staged.map((item) => item.news)]);
      return { outcome: "refused", problem: failedHalfWay };
    }
    senders.add(from);
    const waiting = document.store.pendingStructs?.update;
    const hole = waiting !== undefined;
    // What waits is not in what Yjs reports as changed, so then the log takes the update as it came.
    const news = hole && !isSame(waiting, waitingBefore) ? update : applied.change;
    if (news === undefined) return { outcome: "known", hole };
    const message = applied.change === undefined ? undefined : syncUpdate(applied.change);
    staged.push({ parcel: { from, message }, news });
    return { outcome: "news", news, hole };
  }

  function publish(): void {
    const parcels = staged.map((item) => item.parcel);
    const hasChanged = parcels.some((parcel) => parcel.message !== undefined);
    const acknowledgement = encodeDurableAcknowledgement(Y.encodeStateVector(document));
    for (const peer of peers) {
      for (const parcel of parcels) {
        if (parcel.from !== peer && parcel.message !== undefined) peer.send(parcel.message);
      }
      if (hasChanged || senders.has(peer)) peer.send(acknowledgement);
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
      peer.send(encodeDurableAcknowledgement(Y.encodeStateVector(document)));
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

const tooMuchWaiting: GuardProblem = {
  type: "waits for missing records",
  sentence: "Earlier records of this device never arrived, and too many later ones are waiting for them already.",
};

const failedHalfWay: GuardProblem = {
  type: "cannot be applied",
  sentence: "This change cannot be put into the document; it was set aside on the server.",
};

function documentFrom(updates: readonly Uint8Array[]): Y.Doc {
  const document = new Y.Doc({ gc: false });
  document.transact(() => {
    for (const update of updates) Y.applyUpdate(document, update);
  });
  return document;
}

/** Applies an update. @returns what it changed in the document, undefined when all of it was known or has to wait. */
function apply(document: Y.Doc, update: Uint8Array): { ok: true; change: Uint8Array | undefined } | { ok: false } {
  let change: Uint8Array | undefined;
  const keep = (bytes: Uint8Array): void => {
    change = change === undefined ? bytes : Y.mergeUpdates([change, bytes]);
  };
  document.on("update", keep);
  try {
    Y.applyUpdate(document, update);
    return { ok: true, change };
  } catch {
    return { ok: false };
  } finally {
    document.off("update", keep);
  }
}

/** Each update behind a hole makes Yjs sort all that waits there again, so what waits is bounded. */
function waitsBeyondLimit(document: Y.Doc, update: Uint8Array): boolean {
  const waiting = document.store.pendingStructs;
  if (waiting === null || waiting.update.length + update.length <= maximumWaitingBytes) return false;
  for (const [client, from] of Y.parseUpdateMeta(update).from) {
    if (from > Y.getState(document.store, client)) return true;
  }
  return false;
}

function isSame(left: Uint8Array, right: Uint8Array | undefined): boolean {
  return right !== undefined && left.length === right.length && left.every((byte, index) => byte === right[index]);
}
