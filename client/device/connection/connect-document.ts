/**
 * One document's connection to the server, in the wire protocol of y-websocket
 * (core/protocol/PROTOCOL.md).
 *
 * It opens by itself and comes back by itself, after a time with full jitter so
 * that a pit full of devices does not come back at once. A socket that says
 * nothing is asked, and given up when it does not answer: a Wi-Fi that was left
 * keeps its sockets open for minutes.
 */
import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import * as syncProtocol from "y-protocols/sync";
import * as Y from "yjs";
import { localClocks } from "#client/device/local-clocks.ts";
import type { Timers } from "#client/device/storage/device-storage.ts";
import type { ContentDigest } from "#core/ledger/content-digest.ts";
import { inspectForm } from "#core/ledger/update-guard.ts";
import { type DurableAcknowledgement, readDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { maximumUpdateBytes } from "#core/protocol/limits.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { encodeReceipts, type Receipt, readReceipts } from "#core/protocol/receipt.ts";
import { askAfterMs, deadAfterMs, waitBeforeRetry } from "#core/protocol/reconnection.ts";
import { readRefusal } from "#core/protocol/refusal.ts";
import { coversStateVector } from "#core/protocol/state-vector.ts";
import { createServerHolding } from "./server-holding.ts";
import { createDifferenceSettler } from "./settle-difference.ts";
import type { OpenSocket, Socket } from "./socket.ts";
import type { Rank, SocketSlots } from "./socket-slots.ts";

/** ms after which a document that rests looks for news, drawn between this and twice this. */
const REST_MS = 30_000;
/** Close codes of the range that y-websocket takes for "do not come back". */
const FINAL_CODES = { from: 4400, to: 4499 } as const;

/** Shown when adding again what either side lacks has not made them equal. */
const UNSETTLED =
  "The server and this device hold different entries and cannot settle it. Save everything to a file on this device, so that nothing is lost.";

export interface ConnectionFacts {
  readonly connected: boolean;
  /**
   * Why there is no socket though nothing is wrong: it waits for a place among the device's sockets for the first time,
   * its very first one is being opened and has not failed, or it has given its place to another document after all was
   * proven to be on the server.
   */
  readonly turn: "waiting" | "opening" | "resting" | undefined;
  /** What the server's log is proven to hold, as it said on this socket; absent until it has. */
  readonly held: ReadonlyMap<number, number> | undefined;
  /** The same from the last socket that proved it. */
  readonly lastHeld: ReadonlyMap<number, number> | undefined;
  /** The server's latest refusal, as a sentence. */
  readonly refusal: string | undefined;
  /** The server has sent this device away for good with this code. */
  readonly sentAway: number | undefined;
}

export interface DocumentConnection {
  facts(): ConnectionFacts;
  /** Tells what the server was proven to hold before this start; it counts until the server is heard. */
  recall(acknowledgement: DurableAcknowledgement): void;
  /** Says what this device holds; goes nowhere while there is no connection. */
  sendReceipt(receipt: Receipt): void;
  /** Tries at once: the network is back, or the page is. */
  wake(): void;
  close(): void;
}

export interface ConnectionContext {
  readonly name: string;
  readonly ydoc: Y.Doc;
  /** Of `ydoc`. */
  readonly digest: ContentDigest;
  /** A client number that nobody else uses. */
  readonly clientId: () => number;
  readonly openSocket: OpenSocket;
  readonly slots: SocketSlots;
  readonly rank: () => Rank;
  readonly timers: Timers;
  /** From 0 to below 1. */
  readonly random: () => number;
  readonly onChange: () => void;
  /** The server is proven to hold this. */
  readonly onProven: (acknowledgement: DurableAcknowledgement) => void;
  /** What devices say that they hold. */
  readonly onReceipts: (receipts: readonly Receipt[]) => void;
}

/** Connects `ydoc`, whose local copy has been read, and keeps it connected until it is closed. */
export function connectToServer(context: ConnectionContext): DocumentConnection {
  const { name, ydoc, openSocket, slots, rank, timers, random, onChange, onReceipts } = context;
  const holding = createServerHolding(context.digest);
  const difference = createDifferenceSettler(ydoc, context.clientId);
  let socket: Socket | undefined;
  let connected = false;
  let closed = false;
  let turn: ConnectionFacts["turn"];
  let leavePlace: (() => void) | undefined;
  let isFirst = true;
  let failures = 0;
  let refusal: string | undefined;
  let sentAway: number | undefined;
  let lastHeard = 0;
  let callOffWait: (() => void) | undefined;
  let callOffWatch: (() => void) | undefined;

  const send = (write: (encoder: encoding.Encoder) => void): void => {
    const encoder = encoding.createEncoder();
    encoding.writeVarUint(encoder, messageType.sync);
    write(encoder);
    socket?.send(encoding.toUint8Array(encoder));
  };
  const ask = (): void => send((encoder) => syncProtocol.writeSyncStep1(encoder, ydoc));

  const open = (): void => {
    callOffWait?.();
    callOffWait = undefined;
    if (closed || leavePlace) return;
    let isPlaced = false;
    leavePlace = slots.take(rank(), () => {
      isPlaced = true;
      if (turn !== "resting") turn = isFirst ? "opening" : undefined;
      isFirst = false;
      lastHeard = timers.now();
      socket = openSocket(name, { onOpen, onMessage, onClose: lost });
      watch();
    });
    if (!isPlaced) turn ??= "waiting";
  };

  const endSocket = (): void => {
    callOffWatch?.();
    socket = undefined;
    connected = false;
    holding.socketEnded();
    difference.socketEnded();
    const leave = leavePlace;
    leavePlace = undefined;
    leave?.();
  };

  /** All is proven to be on the server, and another document waits for a place. */
  const rest = (): void => {
    socket?.close();
    turn = "resting";
    endSocket();
    callOffWait = timers.after((1 + random()) * REST_MS, open);
    onChange();
  };

  const isSettled = (): boolean => {
    const held = holding.held();
    return held !== undefined && coversStateVector(held, localClocks(ydoc));
  };

  const onOpen = (): void => {
    connected = true;
    if (turn === "opening") turn = undefined;
    lastHeard = timers.now();
    ask();
    onChange();
  };

  /** A socket that could not be opened, has ended, or was given up. */
  const lost = (code: number): void => {
    turn = undefined;
    failures += 1;
    endSocket();
    if (code >= FINAL_CODES.from && code <= FINAL_CODES.to) sentAway = code;
    else if (!closed) {
      callOffWait = timers.after(waitBeforeRetry(failures, random), open);
    }
    onChange();
  };

  const giveUp = (): void => {
    socket?.close();
    lost(1006);
  };

  const watch = (): void => {
    callOffWatch = timers.after(askAfterMs, () => {
      const silence = timers.now() - lastHeard;
      if (silence >= deadAfterMs) {
        giveUp();
        return;
      }
      if (connected && isSettled() && slots.shouldMakeRoom(rank())) {
        rest();
        return;
      }
      if (connected && silence >= askAfterMs) ask();
      watch();
    });
  };

  /** A message that cannot be read was spoiled on its way: what it held is asked for again on a new socket. */
  const onMessage = (message: Uint8Array): void => {
    lastHeard = timers.now();
    try {
      receive(decoding.createDecoder(message));
    } catch {
      giveUp();
    }
  };

  const receive = (decoder: decoding.Decoder): void => {
    const type = decoding.readVarUint(decoder);
    if (type === messageType.sync) receiveSync(decoder);
    else if (type === messageType.durableAcknowledgement) receiveAcknowledgement(decoder);
    else if (type === messageType.receipts) onReceipts(readable(readReceipts(decoder)));
    else if (type === messageType.refusal) {
      refusal = readRefusal(decoder)?.sentence ?? refusal;
      onChange();
    }
  };

  const receiveAcknowledgement = (decoder: decoding.Decoder): void => {
    const acknowledgement = readable(readDurableAcknowledgement(decoder));
    failures = 0;
    const verdict = holding.acknowledge(acknowledgement);
    if (verdict === "proven") {
      turn = undefined;
      context.onProven(acknowledgement);
    } else if (verdict === "differs") {
      const next = difference.differs(acknowledgement);
      if (next === "ask for everything") send((encoder) => syncProtocol.writeSyncStep1(encoder, new Y.Doc()));
      else if (next === "tell") refusal = UNSETTLED;
    }
    onChange();
  };

  const receiveSync = (decoder: decoding.Decoder): void => {
    if (decoding.readVarUint(decoder) === syncProtocol.messageYjsSyncStep1) {
      send((encoder) => syncProtocol.readSyncStep1(decoder, encoder, ydoc));
      return;
    }
    const update = decoding.readVarUint8Array(decoder);
    // Judged before it is applied: an update that fails half way would leave half of itself in the document, and no
    // server may remove anything.
    const form = inspectForm(update, ydoc);
    if (!form.ok) {
      if (form.problem.type === "undecodable") throw new Error(form.problem.sentence);
      refusal = `What the server sent was left out. ${form.problem.sentence}`;
      onChange();
      return;
    }
    difference.receive(update);
    Y.applyUpdate(ydoc, update, own);
    // One missing update holds back all later ones: ask at once for what is missing.
    if (ydoc.store.pendingStructs !== null) ask();
  };

  const own = {};
  const tell = (update: Uint8Array, origin: unknown): void => {
    if (origin === own) return;
    if (turn === "resting") open();
    if (!connected) return;
    // What is too large for one update, as a file that was taken in, goes in the form of a catch-up, which may be larger.
    if (update.length <= maximumUpdateBytes) send((encoder) => syncProtocol.writeUpdate(encoder, update));
    else {
      send((encoder) => {
        encoding.writeVarUint(encoder, syncProtocol.messageYjsSyncStep2);
        encoding.writeVarUint8Array(encoder, update);
      });
    }
  };
  ydoc.on("update", tell);
  open();
  return {
    facts: () => ({ connected, turn, held: holding.held(), lastHeld: holding.lastHeld(), refusal, sentAway }),
    recall: (acknowledgement) => {
      holding.recall(acknowledgement);
      onChange();
    },
    sendReceipt: (receipt) => {
      if (connected) socket?.send(encodeReceipts([receipt]));
    },
    wake: () => {
      if (sentAway !== undefined) return;
      failures = 0;
      if (socket && connected) ask();
      else open();
    },
    close: () => {
      closed = true;
      ydoc.off("update", tell);
      callOffWait?.();
      callOffWatch?.();
      socket?.close();
      endSocket();
    },
  };
}

/** @throws what ends the socket when a message could not be read: what was in it comes again on the next one. */
function readable<Content>(content: Content | undefined): Content {
  if (content === undefined) throw new Error("The message cannot be read.");
  return content;
}
