/**
 * The pit network of one device: messages take time, get lost with their socket,
 * are cut short, come twice or in another order; it goes away, or stays silently
 * half open.
 */
import * as decoding from "lib0/decoding";
import type { OpenSocket, Socket, SocketEvents } from "#client/device/connection/socket.ts";
import { messageType } from "#core/protocol/message-type.ts";
import type { Peer } from "#server/peer.ts";
import type { Chance } from "./chance.ts";
import type { Mutation } from "./mutation.ts";
import type { SimulatedServer } from "./simulated-server.ts";
import type { VirtualTime } from "./virtual-time.ts";

export type LinkState = "up" | "down" | "half open";

export interface SimulatedNetwork {
  readonly openSocket: OpenSocket;
  setState(state: LinkState): void;
  /** How often, from 0 to 1, a message is spoiled: cut short, doubled, or held back behind the next. */
  setTrouble(trouble: number): void;
  /** Ends every socket, as when the server or the device dies. */
  dropAll(): void;
}

/** ms after which the server gives up a socket that says nothing. */
const SERVER_PATIENCE_MS = 5000;

interface Line {
  readonly events: SocketEvents;
  readonly peer: Peer;
  ended: boolean;
  /** Messages and ends arrive in the order in which they were sent, unless there is trouble. */
  lastArrival: number;
}

export function createSimulatedNetwork(context: {
  readonly time: VirtualTime;
  readonly chance: Chance;
  readonly server: SimulatedServer;
  readonly mutation: Mutation | undefined;
}): SimulatedNetwork {
  const { time, chance, server, mutation } = context;
  const lines = new Set<Line>();
  let state: LinkState = "up";
  let trouble = 0;

  const delay = (): number => chance.whole(1, 40);

  /** Delivers in order; with trouble, sometimes twice, late or cut. What is sent into a half-open link is gone. */
  const carry = (line: Line, message: Uint8Array, deliver: (message: Uint8Array) => void): void => {
    if (line.ended || state !== "up") return;
    const arrival = Math.max(line.lastArrival, time.now() + delay());
    line.lastArrival = arrival;
    const bytes = chance.happens(trouble / 3) ? message.slice(0, chance.whole(0, message.length)) : message;
    const late = chance.happens(trouble / 3) ? chance.whole(1, 80) : 0;
    const arrive = (): void => {
      if (!line.ended && state === "up") deliver(bytes);
    };
    time.after(arrival - time.now() + late, arrive);
    if (chance.happens(trouble / 3)) time.after(arrival - time.now() + chance.whole(0, 60), arrive);
  };

  const end = (line: Line, code: number): void => {
    if (line.ended) return;
    line.ended = true;
    lines.delete(line);
    server.leave(line.peer);
    line.events.onClose(code);
  };

  const openSocket: OpenSocket = (document, events): Socket => {
    let session: { receive(message: Uint8Array): void } | undefined;
    const peer: Peer = {
      send: (message) => {
        const sent = mutation === "compare clocks alone" ? withoutDigest(message) : message;
        carry(line, sent, events.onMessage);
      },
      close: (code) => {
        time.after(delay(), () => end(line, code));
      },
    };
    const line: Line = { events, peer, ended: false, lastArrival: 0 };
    lines.add(line);
    time.after(delay(), () => {
      if (line.ended) return;
      if (state === "half open") return;
      if (state === "down" || !server.isRunning()) return end(line, 1006);
      session = server.join(document, peer);
      events.onOpen();
    });
    return {
      send: (message) =>
        carry(line, message, (bytes) => {
          session?.receive(bytes);
        }),
      close: () => {
        line.ended = true;
        lines.delete(line);
        // The server hears of it at once, or, over a dead link, when its patience ends.
        time.after(state === "up" ? delay() : SERVER_PATIENCE_MS, () => server.leave(peer));
      },
    };
  };

  return {
    openSocket,
    setState: (next) => {
      state = next;
      if (next === "down") for (const line of [...lines]) end(line, 1006);
    },
    setTrouble: (next) => {
      trouble = next;
    },
    dropAll: () => {
      for (const line of [...lines]) end(line, 1006);
    },
  };
}

/** A durable acknowledgement as servers sent it before there was a digest; any other message as it is. */
function withoutDigest(message: Uint8Array): Uint8Array {
  const decoder = decoding.createDecoder(message);
  if (decoding.readVarUint(decoder) !== messageType.durableAcknowledgement) return message;
  decoding.readVarUint8Array(decoder);
  return message.slice(0, decoder.pos);
}
