/** One socket of a load. It does as little as it can while the clock runs, so that the servers are measured and not it. */
import { randomBytes } from "node:crypto";
import { request } from "node:http";
import type { Duplex } from "node:stream";
import * as decoding from "lib0/decoding";
import * as Y from "yjs";
import { readDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";
import { readRefusal } from "#core/protocol/refusal.ts";
import { clientFrame, createFrameReader, opcode } from "./frames.ts";

export type LoadSocket = {
  /** Sends a whole frame as it is. */
  sendFrame(frame: Buffer): void;
  /** Clocks by Yjs client id of all updates that have come; reads the messages that it has not read before, which takes long. */
  received(): ReadonlyMap<number, number>;
  /** Clocks by Yjs client id that the server has last acknowledged; empty for a server that acknowledges nothing. */
  acknowledged(): ReadonlyMap<number, number>;
  /** Messages and their bytes that have come since the socket opened. */
  readonly traffic: { readonly messages: number; readonly bytes: number };
  close(): Promise<void>;
};

export type LoadSocketEvents = {
  /** Reads each update at once when given: the entries of one client up to a clock have come. */
  readonly onEntries?: (client: number, clock: number) => void;
  /** The server refused something, or the socket failed: the load is worth nothing. */
  readonly onFault: (error: Error) => void;
};

/** @param url of the document, `ws://host:port/path` */
export async function openLoadSocket(url: string, events: LoadSocketEvents): Promise<LoadSocket> {
  const { stream, head } = await upgrade(url);
  const unread: Buffer[] = [];
  const received = new Map<number, number>();
  let acknowledgement: Buffer | undefined;
  let isClosing = false;
  const traffic = { messages: 0, bytes: 0 };
  const onMessage = (message: Buffer): void => {
    traffic.messages += 1;
    traffic.bytes += message.length;
    // Every type number here is below 128 and so takes one byte.
    const [type, second] = message;
    if (type === messageType.durableAcknowledgement) {
      acknowledgement = message;
    } else if (type === messageType.refusal) {
      events.onFault(new Error(`The server refused: ${readRefusal(afterType(message))?.sentence}`));
    } else if (type === messageType.sync && second === syncMessageType.update) {
      unread.push(message);
      if (events.onEntries) readEntries(message, events.onEntries);
    }
  };
  const read = createFrameReader((operation, payload) => {
    if (operation === opcode.binary) onMessage(payload);
    else if (operation === opcode.ping) stream.write(clientFrame(opcode.pong, payload));
    else if (operation === opcode.close) stream.end();
  });
  const closed = new Promise<void>((resolve) => {
    stream.on("close", () => {
      resolve();
      if (!isClosing) events.onFault(new Error("The server closed a socket of the load."));
    });
  });
  stream.on("error", (error: Error) => events.onFault(error));
  stream.on("data", read);
  read(head);
  return {
    sendFrame: (frame) => void stream.write(frame),
    received: () => {
      const note = (client: number, clock: number): void => {
        received.set(client, Math.max(clock, received.get(client) ?? 0));
      };
      for (const message of unread.splice(0)) readEntries(message, note);
      return received;
    },
    acknowledged: () =>
      (acknowledgement && readDurableAcknowledgement(afterType(acknowledgement))?.stateVector) ?? new Map(),
    traffic,
    close: () => {
      isClosing = true;
      stream.destroy();
      return closed;
    },
  };
}

/** The opening handshake, without any extension. Source: RFC 6455, section 4.1. */
function upgrade(url: string): Promise<{ readonly stream: Duplex; readonly head: Buffer }> {
  return new Promise((resolve, reject) => {
    const headers = {
      connection: "Upgrade",
      upgrade: "websocket",
      "sec-websocket-version": "13",
      "sec-websocket-key": randomBytes(16).toString("base64"),
    };
    const asking = request(url.replace(/^ws/, "http"), { headers });
    asking.on("upgrade", (_response, stream, head) => resolve({ stream, head }));
    asking.on("response", ({ statusCode }) => reject(new Error(`The server refused a socket with ${statusCode}.`)));
    asking.on("error", reject);
    asking.end();
  });
}

function afterType(message: Buffer): decoding.Decoder {
  const decoder = decoding.createDecoder(message);
  decoding.readVarUint(decoder);
  return decoder;
}

function readEntries(message: Buffer, note: (client: number, clock: number) => void): void {
  const decoder = afterType(message);
  decoding.readVarUint(decoder);
  for (const { id, length } of Y.decodeUpdate(decoding.readVarUint8Array(decoder)).structs) {
    note(id.client, id.clock + length);
  }
}
