import * as decoding from "lib0/decoding";
import { closeCode } from "#core/protocol/close-code.ts";
import { maximumPresenceBytes } from "#core/protocol/limits.ts";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";
import { readReceipts } from "#core/protocol/receipt.ts";
import { encodeRefusal } from "#core/protocol/refusal.ts";
import { decodeStateVector } from "#core/protocol/state-vector.ts";
import type { CommitQueue } from "./commit-queue.ts";
import type { GuardProblem } from "./guard.ts";
import { type Logger, reasonOf } from "./logging.ts";
import type { Peer } from "./peer.ts";
import type { Quarantine } from "./quarantine.ts";
import type { ReceiptKeeper } from "./receipt-keeper.ts";
import type { Offer, Room, Staged } from "./room.ts";

/** One socket in one room. */
export type Session = {
  /** Takes one message. Never throws: what cannot be read closes the socket. */
  receive(message: Uint8Array): void;
};

export type SessionNeeds = {
  readonly room: Room;
  readonly peer: Peer;
  readonly queue: CommitQueue;
  readonly quarantine: Quarantine;
  readonly receiptKeeper: ReceiptKeeper;
  readonly logger: Logger;
};

/** Greets the peer: asks for what the room lacks and tells who is here. */
export function openSession({ room, peer, queue, quarantine, receiptKeeper, logger }: SessionNeeds): Session {
  // Whether an answer to a sync step 1 is still to come; asking twice for one hole would send everything twice.
  let isAsked = true;
  room.ask(peer);
  room.sendPresence(peer);
  room.sendReceipts(peer);

  function refuse(update: Uint8Array, problem: GuardProblem): void {
    quarantine.keep(room.name, update, problem);
    peer.send(encodeRefusal(problem));
  }

  function settle({ update, isCatchUp }: Offer, staged: Staged): void {
    if (staged.outcome === "refused") {
      refuse(update, staged.problem);
      return;
    }
    const gap = staged.outcome === "gap" ? staged.problem : staged.rest;
    if (gap === undefined) return;
    if (isCatchUp) {
      // It was all that the device has, so asking again would bring the same.
      refuse(update, gap);
    } else if (!isAsked) {
      isAsked = true;
      room.ask(peer);
    }
  }

  function receiveUpdate(decoder: decoding.Decoder, isCatchUp: boolean): void {
    const update = decoding.readVarUint8Array(decoder);
    if (isCatchUp) isAsked = false;
    const offer: Offer = { from: peer, update, isCatchUp };
    queue.push({ room, stage: () => room.stage(offer), settled: (staged) => settle(offer, staged) });
  }

  function receiveSync(decoder: decoding.Decoder): void {
    const type = decoding.readVarUint(decoder);
    if (type === syncMessageType.step1) {
      const stateVector = decoding.readVarUint8Array(decoder);
      if (decodeStateVector(stateVector) === undefined) throw new Error("The state vector cannot be read.");
      room.answer(peer, stateVector);
    } else if (type === syncMessageType.step2 || type === syncMessageType.update) {
      receiveUpdate(decoder, type === syncMessageType.step2);
    } else {
      throw new Error("There is no such sync message.");
    }
  }

  function receivePresence(decoder: decoding.Decoder): void {
    const payload = decoding.readVarUint8Array(decoder);
    if (payload.length > maximumPresenceBytes || !room.receivePresence(peer, payload)) {
      throw new Error("The presence message cannot be read or is too large.");
    }
  }

  function receiveReceipts(decoder: decoding.Decoder): void {
    const receipts = readReceipts(decoder);
    if (receipts === undefined) throw new Error("The receipts cannot be read or are too many.");
    const { taken, forgotten } = room.receiveReceipts(peer, receipts);
    receiptKeeper.keep(room.name, taken, forgotten);
  }

  function dispatch(message: Uint8Array): void {
    const decoder = decoding.createDecoder(message);
    const type = decoding.readVarUint(decoder);
    if (type === messageType.sync) receiveSync(decoder);
    else if (type === messageType.receipts) receiveReceipts(decoder);
    else if (type === messageType.awareness) receivePresence(decoder);
    else if (type === messageType.queryAwareness) room.sendPresence(peer);
    else logger.debug("message of another type ignored", { document: room.name, type });
  }

  return {
    receive(message) {
      if (room.isAbandoned) return;
      try {
        dispatch(message);
      } catch (error) {
        logger.warn("message cannot be read", { document: room.name, reason: reasonOf(error) });
        peer.close(closeCode.malformedMessage, "This message cannot be read.");
      }
    },
  };
}
