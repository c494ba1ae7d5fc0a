import type { Duplex } from "node:stream";
import WebSocket from "ws";
import { maximumMessageBytes, syncPath } from "#core/protocol/limits.ts";
import { deadAfterMs } from "#core/protocol/reconnection.ts";
import { maximumBufferedBytes } from "../connection.ts";
import { requestList } from "./request-list.ts";
import { purposeQuery } from "./socket-purpose.ts";
import type { UpstreamPort } from "./upstream-port.ts";

/** How long a socket that was told to close may take, in milliseconds. */
const goodbyeMs = 500;

/**
 * The upstream at an address, by real sockets.
 * @param url http or https, as `parseUpstreamUrl` gives it; its path ends with a slash and stands before every other.
 */
export function reachUpstream(url: URL): UpstreamPort {
  return {
    openSocket(document, purpose, events) {
      const address = new URL(`.${syncPath}${document}${purposeQuery(purpose)}`, url);
      address.protocol = url.protocol === "https:" ? "wss:" : "ws:";
      const socket = new WebSocket(address, {
        maxPayload: maximumMessageBytes,
        perMessageDeflate: false,
        handshakeTimeout: deadAfterMs,
      });
      let isOver = false;
      const unlessOver = (act: () => void) => (): void => {
        if (!isOver) act();
      };
      function end(code: number, reason: string): void {
        if (isOver) return;
        isOver = true;
        events.onClose(code, reason);
      }
      function close(): void {
        socket.close();
        setTimeout(() => socket.terminate(), goodbyeMs).unref();
      }
      let stream: Duplex | undefined;
      socket.on("upgrade", (response) => {
        stream = response.socket;
      });
      socket.on("open", () => {
        // A large message on a slow line takes longer than the silence of a dead one: its bytes are signs of life.
        stream?.on("data", unlessOver(events.onAlive));
        if (!isOver) events.onOpen();
      });
      socket.on("message", (data, isBinary) => {
        if (isOver) return;
        if (isBinary && data instanceof Uint8Array) events.onMessage(data);
        else {
          end(unreadableFrame, "The upstream sent text; the protocol is binary.");
          close();
        }
      });
      let failure = "";
      socket.on("error", (error) => {
        failure = error.message;
      });
      socket.on("close", (code, reason) => end(code, failure === "" ? reason.toString() : failure));
      return {
        send(message) {
          if (socket.readyState !== WebSocket.OPEN) return;
          if (socket.bufferedAmount + message.length <= maximumBufferedBytes) socket.send(message);
          else socket.terminate();
        },
        ping() {
          if (socket.readyState === WebSocket.OPEN) socket.ping();
        },
        close() {
          if (isOver) return;
          isOver = true;
          close();
        },
      };
    },
    listDocuments: (signal) => requestList(url, signal),
  };
}

/** A frame of the wrong kind. Source: RFC 6455, section 7.4.1. */
const unreadableFrame = 1003;
