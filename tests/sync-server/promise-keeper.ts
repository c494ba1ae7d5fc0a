import * as decoding from "lib0/decoding";
import WebSocket from "ws";
import * as Y from "yjs";
import { readDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";
import { syncUpdate } from "#server/sync-message.ts";

/** How far each writer's records are promised: by client id, the count from its first. */
export type Promises = Map<number, number>;

/** One socket that remembers what the server has promised: what it acknowledged and what it passed on. */
export type PromiseKeeper = {
  send(update: Uint8Array): void;
  /** Resolves with the next acknowledgement or update, and with false when the socket is closed. */
  nextPromise(): Promise<boolean>;
  readonly closed: Promise<void>;
};

/** @param promises grows with each promise that is heard. Rejects when the socket does not open. */
export async function keepPromises(url: string, promises: Promises): Promise<PromiseKeeper> {
  const socket = new WebSocket(url);
  let isClosed = false;
  let unread = 0;
  let wake: () => void = () => {};
  const closed = new Promise<void>((resolve) => {
    socket.on("close", () => {
      isClosed = true;
      resolve();
      wake();
    });
  });
  socket.on("message", (data: Buffer) => {
    if (!note(data, promises)) return;
    unread += 1;
    wake();
  });
  await new Promise<void>((resolve, reject) => {
    socket.on("open", resolve);
    socket.on("error", reject);
  });
  return {
    closed,
    send(update) {
      if (socket.readyState === WebSocket.OPEN) socket.send(syncUpdate(update));
    },
    async nextPromise() {
      while (unread === 0 && !isClosed) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
      if (unread === 0) return false;
      unread -= 1;
      return true;
    },
  };
}

/** Reads one message. @returns whether it promises something. */
function note(data: Buffer, promises: Promises): boolean {
  const decoder = decoding.createDecoder(Uint8Array.from(data));
  const type = decoding.readVarUint(decoder);
  if (type === messageType.durableAcknowledgement) {
    const acknowledgement = readDurableAcknowledgement(decoder);
    if (acknowledgement === undefined) throw new Error("An acknowledgement cannot be read.");
    for (const [client, clock] of acknowledgement.stateVector) promise(promises, client, clock);
    return true;
  }
  if (type !== messageType.sync || decoding.readVarUint(decoder) !== syncMessageType.update) return false;
  for (const { id, length } of Y.decodeUpdate(decoding.readVarUint8Array(decoder)).structs) {
    promise(promises, id.client, id.clock + length);
  }
  return true;
}

function promise(promises: Promises, client: number, count: number): void {
  promises.set(client, Math.max(count, promises.get(client) ?? 0));
}
