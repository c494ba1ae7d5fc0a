/**
 * The way of one device, or of one server, to a server: messages take time, get
 * lost with their socket, are cut short, come twice or in another order; the way
 * goes away, or stays silently half open.
 */
import * as decoding from "lib0/decoding";
import type { OpenSocket } from "#client/device/connection/socket.ts";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";
import type { Peer } from "#server/peer.ts";
import type { Session } from "#server/session.ts";
import type { SocketPurpose } from "#server/upstream/socket-purpose.ts";
import type { UpstreamEvents, UpstreamPort, UpstreamSocket } from "#server/upstream/upstream-port.ts";
import type { Chance } from "./chance.ts";
import type { Mutation } from "./mutation.ts";
import type { SimulatedServer } from "./simulated-server.ts";
import type { VirtualTime } from "./virtual-time.ts";

export const linkStates = ["up", "down", "half open"] as const;
export type LinkState = (typeof linkStates)[number];

export interface SimulatedNetwork {
  /** The way as a device uses it. */
  readonly openSocket: OpenSocket;
  /** The way as a server uses it. */
  readonly port: UpstreamPort;
  /** The server at its end. */
  server(): SimulatedServer;
  /** All servers to which it has led. */
  visited(): ReadonlySet<SimulatedServer>;
  /** From now on it leads to another server; every socket ends. */
  moveTo(server: SimulatedServer): void;
  /** "half open": what is open now stays so and never carries anything again, as over a Wi-Fi that was left. */
  setState(state: LinkState): void;
  /** Whether a server has sent this end away for good, as it does with one that says what cannot be read. */
  wasSentAway(): boolean;
  /** A device starts afresh at this end. */
  startAfresh(): void;
  /** How often, from 0 to 1, a message is spoiled: doubled, held back behind the next, or, where `cuts`, cut short. */
  setTrouble(trouble: number, cuts: boolean): void;
  /** Ends every socket, as when the server or the device dies. */
  dropAll(): void;
  /** How many sockets are open at this end. */
  sockets(): number;
}

/** ms after which the server gives up a socket that says nothing. */
const SERVER_PATIENCE_MS = 5000;

interface Line {
  readonly events: UpstreamEvents;
  readonly peer: Peer;
  readonly server: SimulatedServer;
  ended: boolean;
  isDead: boolean;
  leave: () => void;
  /** Messages and ends arrive in the order in which they were sent, unless there is trouble. */
  lastArrival: number;
}

export function createSimulatedNetwork(context: {
  readonly time: VirtualTime;
  readonly chance: Chance;
  readonly server: SimulatedServer;
  readonly mutation: Mutation | undefined;
}): SimulatedNetwork {
  const { time, chance, mutation } = context;
  const lines = new Set<Line>();
  let server = context.server;
  const visited = new Set([server]);
  let state: LinkState = "up";
  let trouble = 0;
  let cuts = false;
  let wasSentAway = false;

  const delay = (): number => chance.whole(1, 40);
  const carries = (line: Line): boolean => !line.ended && !line.isDead && state === "up";

  /** Delivers in order; with trouble, sometimes twice, late or cut. What is sent into a half-open line is gone. */
  const carry = (line: Line, message: Uint8Array, deliver: (message: Uint8Array) => void): void => {
    if (!carries(line)) return;
    const arrival = Math.max(line.lastArrival, time.now() + delay());
    line.lastArrival = arrival;
    const bytes = chance.happens(cuts ? trouble / 3 : 0) ? message.slice(0, chance.whole(0, message.length)) : message;
    const late = chance.happens(trouble / 3) ? chance.whole(1, 400) : 0;
    const arrive = (): void => {
      if (carries(line)) deliver(bytes);
    };
    time.after(arrival - time.now() + late, arrive);
    if (chance.happens(trouble / 3)) time.after(arrival - time.now() + chance.whole(0, 60), arrive);
  };

  const end = (line: Line, code: number): void => {
    if (line.ended) return;
    line.ended = true;
    wasSentAway ||= code >= 4400 && code < 4500;
    lines.delete(line);
    line.leave();
    line.events.onClose(code, "");
  };

  /** The client is gone and the server has not heard of it. */
  const abandon = (line: Line, afterMs: number): void => void time.after(afterMs, () => line.leave());

  const open = (document: string, purpose: SocketPurpose, events: UpstreamEvents): UpstreamSocket => {
    let session: Session | undefined;
    let questions = 0;
    const peer: Peer = {
      send: (message) => {
        if (isQuestion(message)) {
          questions += 1;
          if (mutation === "never ask for a hole" && questions > 1) return;
        }
        carry(line, mutation === "compare clocks alone" ? withoutDigest(message) : message, events.onMessage);
      },
      close: (code) => void time.after(delay(), () => end(line, code)),
    };
    const line: Line = {
      events,
      peer,
      server,
      ended: false,
      isDead: state === "half open",
      leave: () => {},
      lastArrival: 0,
    };
    lines.add(line);
    time.after(delay(), () => {
      if (line.ended || line.isDead || state === "half open") return;
      if (state === "down" || !line.server.isRunning()) return end(line, 1006);
      const visit = line.server.join(document, peer, purpose);
      session = visit.session;
      line.leave = visit.leave;
      events.onOpen();
    });
    return {
      send: (message) => carry(line, message, (bytes) => session?.receive(bytes)),
      ping: () => {
        const pong = (): void => {
          if (carries(line)) events.onAlive();
        };
        if (carries(line)) time.after(delay() + delay(), pong);
      },
      close: () => {
        if (line.ended) return;
        line.ended = true;
        lines.delete(line);
        // The server hears of it at once, or, over a dead line, when its patience ends.
        abandon(line, state === "up" && !line.isDead ? delay() : SERVER_PATIENCE_MS);
      },
    };
  };

  const listDocuments: UpstreamPort["listDocuments"] = (signal) =>
    new Promise((resolve) => {
      const failed = { ok: false, problem: { type: "no list", sentence: "There is no way." } } as const;
      signal.addEventListener("abort", () => resolve(failed));
      time.after(delay(), () => {
        if (state === "half open") return;
        if (state === "down" || !server.isRunning()) return resolve(failed);
        const list = server.list();
        time.after(delay(), () => resolve({ ok: true, list }));
      });
    });

  const dropAll = (): void => {
    for (const line of [...lines]) end(line, 1006);
  };
  return {
    openSocket: (document, { onOpen, onMessage, onClose }) =>
      open(document, { type: "device" }, { onOpen, onMessage, onClose, onAlive: () => {} }),
    port: { openSocket: open, listDocuments },
    server: () => server,
    visited: () => visited,
    moveTo: (next) => {
      visited.add(next);
      server = next;
      dropAll();
    },
    setState: (next) => {
      state = next;
      if (next === "down") dropAll();
      if (next !== "half open") return;
      for (const line of lines) {
        line.isDead = true;
        abandon(line, SERVER_PATIENCE_MS);
      }
    },
    startAfresh: () => {
      wasSentAway = false;
    },
    setTrouble: (next, withCuts) => {
      cuts = withCuts;
      trouble = next;
    },
    wasSentAway: () => wasSentAway,
    dropAll,
    sockets: () => lines.size,
  };
}

function isQuestion(message: Uint8Array): boolean {
  return message[0] === messageType.sync && message[1] === syncMessageType.step1;
}

/** A durable acknowledgement as servers sent it before there was a digest; any other message as it is. */
function withoutDigest(message: Uint8Array): Uint8Array {
  const decoder = decoding.createDecoder(message);
  if (decoding.readVarUint(decoder) !== messageType.durableAcknowledgement) return message;
  decoding.readVarUint8Array(decoder);
  return message.slice(0, decoder.pos);
}
