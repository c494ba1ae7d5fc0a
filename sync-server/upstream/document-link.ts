import * as Y from "yjs";
import { closeCode } from "#core/protocol/close-code.ts";
import type { DurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { maximumCatchUpBytes } from "#core/protocol/limits.ts";
import { askAfterMs, deadAfterMs } from "#core/protocol/reconnection.ts";
import type { ByteBudget } from "../byte-budget.ts";
import type { Guard } from "../guard.ts";
import type { Logger } from "../logging.ts";
import type { Peer } from "../peer.ts";
import type { Rooms } from "../rooms.ts";
import type { Session } from "../session.ts";
import { presenceMessage, syncStep1, syncStep2 } from "../sync-message.ts";
import { type LinkMessage, readLinkMessage } from "./link-message.ts";
import { createLinkPresence } from "./link-presence.ts";
import { areAtOdds, holdTheSame } from "./same-content.ts";
import { type Holding, settleOdds } from "./settle-odds.ts";
import type { SocketPurpose } from "./socket-purpose.ts";
import type { Timers, UpstreamPort } from "./upstream-port.ts";

/**
 * One document on one socket to the upstream, from its opening to its end. It is a pipe: to the rooms here it is one more
 * peer, to the upstream one more device, so that on both sides every update passes the guard and the order of append,
 * flush, acknowledge, and each side asks the other for what it lacks. It only listens for what the two acknowledge.
 */
export type DocumentLink = {
  /** Whether the newest acknowledgements of both sides say the same. */
  readonly isEqual: boolean;
  /** Ends it; nothing is called afterwards. */
  close(): void;
};

/** How a link ended; `code` as in RFC 6455, section 7.4. A link that is stuck found its two ends unable to become equal. */
export type LinkEnd = { readonly code: number; readonly reason: string; readonly isStuck: boolean };

export type DocumentLinkNeeds = {
  readonly document: string;
  readonly purpose: SocketPurpose;
  readonly port: UpstreamPort;
  readonly rooms: Pick<Rooms, "join" | "leave">;
  /** What the upstream may send on this socket. */
  readonly budget: ByteBudget;
  readonly guard: Guard;
  readonly timers: Timers;
  /** From 0 to below 1. */
  readonly random: () => number;
  readonly logger: Logger;
  readonly silence: Silence;
  /** Whether nobody here waits for this document, so that a link which gets nowhere has to make room. */
  readonly mayGiveUp: () => boolean;
  /** Asked before something is added to both sides because they are at odds: a hostile upstream could be so for ever. */
  readonly maySettle: () => boolean;
  readonly onAlive: () => void;
  /** Both sides hold the same; told again after each change. */
  readonly onEqual: () => void;
  /** One side has refused what the other holds. */
  readonly onRefused: () => void;
  readonly onEnd: (end: LinkEnd) => void;
};

/** Milliseconds of silence after which the upstream is asked for a sign of life, and after which the socket is given up. */
export type Silence = { readonly askAfterMs: number; readonly deadAfterMs: number };

export const defaultSilence: Silence = { askAfterMs, deadAfterMs };

/** How long a link that nobody waits for may get nowhere: long enough for a full catch-up over a slow line. */
const patienceMs = 60_000;
/** The same after a refusal, which explains it. */
const patienceAfterRefusalMs = 2000;

export function openDocumentLink(needs: DocumentLinkNeeds): DocumentLink {
  const { document, purpose, rooms, timers, logger, silence, budget } = needs;
  const presence = createLinkPresence();
  let session: Session | undefined;
  let isOver = false;
  let ours: DurableAcknowledgement | undefined;
  let theirs: DurableAcknowledgement | undefined;
  let isRefused = false;
  /** The two sides are at odds: what each of them holds is being asked for. */
  let odds: { readonly ours: DurableAcknowledgement; readonly theirs: DurableAcknowledgement } | undefined;
  let oursWhole: Uint8Array | undefined;
  let heardAt = timers.now();
  let movedAt = heardAt;
  let callOffWatch: (() => void) | undefined;

  const isEqual = (): boolean => ours !== undefined && theirs !== undefined && holdTheSame(ours, theirs);

  function finish(): void {
    isOver = true;
    callOffWatch?.();
    socket.close();
    rooms.leave(peer);
  }

  function end(code: number, reason: string, isStuck = false): void {
    if (isOver) return;
    finish();
    needs.onEnd({ code, reason, isStuck });
  }

  function acknowledged(): void {
    movedAt = timers.now();
    if (isEqual()) needs.onEqual();
    else if (ours !== undefined && theirs !== undefined && areAtOdds(ours, theirs)) atOdds({ ours, theirs });
  }

  function atOdds(next: NonNullable<typeof odds>): void {
    if (odds !== undefined || !needs.maySettle()) return;
    logger.warn("the two servers hold different entries under the same numbers", { document });
    odds = next;
    oursWhole = undefined;
    session?.receive(syncStep1(nothing));
    socket.send(syncStep1(nothing));
  }

  /** @returns whether it was the answer that was asked for because the two sides are at odds. */
  function settles(theirsWhole: Uint8Array): boolean {
    if (odds === undefined || oursWhole === undefined) return false;
    const here: Holding = { acknowledgement: odds.ours, whole: oursWhole };
    const there: Holding = { acknowledgement: odds.theirs, whole: theirsWhole };
    const addition = settleOdds(here, there, needs.guard, needs.random);
    odds = undefined;
    oursWhole = undefined;
    if (addition === undefined) return false;
    session?.receive(syncStep2(addition));
    socket.send(syncStep2(addition));
    return true;
  }

  function refused(side: "here" | "upstream", sentence: string): void {
    isRefused = true;
    logger.warn("change refused between servers", { document, side, sentence });
    needs.onRefused();
  }

  /** What presence goes on: only where the document is open, because a device does not come and go with a catch-up. */
  function presenceToPass(payload: Uint8Array): Uint8Array | "nothing" | "malformed" {
    return purpose.type === "open" ? presence.pass(payload) : "nothing";
  }

  function toUpstream(read: LinkMessage): void {
    if (read.type === "acknowledgement") {
      ours = read.acknowledgement;
      acknowledged();
    } else if (read.type === "refusal") {
      refused("here", read.refusal.sentence);
    } else if (read.type === "presence") {
      const news = presenceToPass(read.payload);
      if (typeof news !== "string") socket.send(presenceMessage(news));
    } else if (read.type === "too large") {
      const sentence = `What is new here takes ${read.bytes} bytes; the upstream takes ${maximumCatchUpBytes} at once.`;
      refused("upstream", sentence);
      end(messageTooLarge, sentence, true);
    } else if (read.type === "answer" && odds !== undefined && oursWhole === undefined) {
      oursWhole = read.update;
    } else {
      socket.send(read.message);
    }
  }

  function fromUpstream(read: LinkMessage, message: Uint8Array): void {
    if (read.type === "acknowledgement") {
      theirs = read.acknowledgement;
      acknowledged();
    } else if (read.type === "refusal") {
      refused("upstream", read.refusal.sentence);
    } else if (read.type === "presence") {
      const news = presenceToPass(read.payload);
      // What is malformed is left to the session, which ends the socket of whoever sends it.
      if (news === "malformed") session?.receive(message);
      else if (news !== "nothing") session?.receive(presenceMessage(news));
    } else if (read.type !== "too large" && !(read.type === "answer" && settles(read.update))) {
      session?.receive(read.message);
    }
  }

  function receive(message: Uint8Array): void {
    if (isOver) return;
    alive();
    const read = readLinkMessage(message);
    if (!budget.spend(message.length)) end(closeCode.overloaded, "The upstream sends too much.");
    else if (read === undefined) end(closeCode.malformedMessage, "The upstream sent a message that cannot be read.");
    else if (read.type === "too large") end(messageTooLarge, "The upstream sent too large a message.", true);
    else fromUpstream(read, message);
  }

  function alive(): void {
    if (isOver) return;
    heardAt = timers.now();
    needs.onAlive();
  }

  /** The answer ends with a fresh acknowledgement. Not before the first, which may stand behind much that is on its way. */
  function askAgain(): void {
    if (ours !== undefined && theirs !== undefined)
      socket.send(syncStep1(Y.encodeStateVector(new Map(ours.stateVector))));
  }

  function watch(): void {
    callOffWatch = timers.after(silence.askAfterMs, () => {
      const silentMs = timers.now() - heardAt;
      const stillMs = timers.now() - movedAt;
      if (silentMs >= silence.deadAfterMs) {
        end(lostConnection, "The upstream is silent.");
      } else if (needs.mayGiveUp() && !isEqual() && stillMs >= (isRefused ? patienceAfterRefusalMs : patienceMs)) {
        end(lostConnection, "The two servers do not become equal.", true);
      } else {
        if (stillMs >= silence.askAfterMs && !isEqual()) askAgain();
        else if (silentMs >= silence.askAfterMs && session !== undefined) socket.ping();
        watch();
      }
    });
  }

  const peer: Peer = {
    send(message) {
      if (isOver) return;
      const read = readLinkMessage(message);
      // A message of the rooms here that the link cannot read is passed on as it is: the upstream judges it.
      toUpstream(read ?? { type: "other", message });
    },
    close: (code, reason) => end(code, reason),
  };
  const socket = needs.port.openSocket(document, purpose, {
    onOpen() {
      if (isOver) return;
      alive();
      session = rooms.join(document, peer);
    },
    onMessage: receive,
    onAlive: alive,
    onClose: (code, reason) => end(code, reason),
  });
  watch();
  return {
    get isEqual() {
      return isEqual();
    },
    close() {
      if (!isOver) finish();
    },
  };
}

/** The state vector of a document in which nothing is. */
const nothing = new Uint8Array([0]);

/** No close frame came, and a message above the limit. Source: RFC 6455, section 7.4.1. */
const lostConnection = 1006;
const messageTooLarge = 1009;
