import type { Writable } from "node:stream";
import type { WebSocket } from "ws";
import { closeCode } from "#core/protocol/close-code.ts";
import type { ByteBudget } from "./byte-budget.ts";
import type { Heartbeat, Pulse } from "./heartbeat.ts";
import { type Logger, reasonOf } from "./logging.ts";
import type { Peer } from "./peer.ts";
import type { Rooms } from "./rooms.ts";

/** Most bytes that may wait in one socket for a slow reader; it is cut off and gets the rest when it comes back. */
export const maximumBufferedBytes = 64 * 1024 * 1024;

type ConnectionNeeds = {
  readonly socket: WebSocket;
  /** The stream below the socket. */
  readonly stream: Writable;
  readonly document: string;
  readonly rooms: Rooms;
  readonly heartbeat: Heartbeat;
  readonly budget: ByteBudget;
  readonly logger: Logger;
};

/** Puts a socket into the room of a document and keeps it there until it closes. Nothing in its callbacks throws. */
export function connect({ socket, stream, document, rooms, heartbeat, budget, logger }: ConnectionNeeds): void {
  const guarded =
    <Arguments extends unknown[]>(callback: (...given: Arguments) => void) =>
    (...given: Arguments): void => {
      try {
        callback(...given);
      } catch (error) {
        logger.error("socket callback failed", { document, reason: reasonOf(error) });
        socket.terminate();
      }
    };
  const gather = gatherWrites(stream);
  const peer: Peer = {
    send: guarded((message: Uint8Array) => {
      if (socket.readyState !== socket.OPEN) return;
      if (socket.bufferedAmount + message.length > maximumBufferedBytes) {
        logger.warn("socket reads too slowly", { document });
        socket.terminate();
      } else {
        gather();
        socket.send(message);
      }
    }),
    close: guarded((code: number, reason: string) => socket.close(code, shortReason(reason))),
  };
  const pulse: Pulse = {
    ping: guarded(() => {
      if (socket.readyState === socket.OPEN) socket.ping();
    }),
    terminate: guarded(() => {
      logger.info("socket is silent", { document });
      socket.terminate();
    }),
  };
  const heard = heartbeat.watch(pulse);
  // A socket that was told to close and goes on sending is ended as if it were silent.
  const alive = (): void => {
    if (socket.readyState === socket.OPEN) heard();
  };
  socket.on("error", (error) => logger.info("socket failed", { document, reason: error.message }));
  socket.on(
    "close",
    guarded(() => {
      heartbeat.forget(pulse);
      rooms.leave(peer);
    }),
  );
  socket.on("pong", alive);
  function exceed(): void {
    logger.warn("socket sends too much", { document });
    peer.close(closeCode.overloaded, "This device sends more than the server takes at a time.");
  }
  guarded(() => {
    const session = rooms.join(document, peer);
    socket.on(
      "message",
      guarded((data: unknown, isBinary: boolean) => {
        alive();
        if (socket.readyState !== socket.OPEN) return;
        if (!isBinary || !(data instanceof Uint8Array)) peer.close(closeCode.binaryOnly, "The protocol is binary.");
        else if (budget.spend(data.length)) session?.receive(data);
        else exceed();
      }),
    );
  })();
}

/**
 * What is sent in one go is written in one call of the system, which costs more than everything else about a message: after
 * a commit each peer gets the updates of all others.
 * @returns what is called before a message is sent
 */
function gatherWrites(stream: Writable): () => void {
  let isGathering = false;
  return () => {
    if (isGathering) return;
    isGathering = true;
    stream.cork();
    process.nextTick(() => {
      isGathering = false;
      stream.uncork();
    });
  };
}

/** A close frame holds 123 bytes of reason (RFC 6455, section 5.5); our reasons are plain ASCII. */
function shortReason(reason: string): string {
  return reason.slice(0, 123);
}
