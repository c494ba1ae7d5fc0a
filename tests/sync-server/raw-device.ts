import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { onTestFinished } from "vitest";
import WebSocket from "ws";
import * as Y from "yjs";
import { type DurableAcknowledgement, readDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";
import { type Receipt, readReceipts } from "#core/protocol/receipt.ts";
import { type Refusal, readRefusal } from "#core/protocol/refusal.ts";
import { syncStep1, syncStep2, syncUpdate } from "#server/sync-message.ts";
import { season } from "./server-fixture.ts";

export type Heard =
  | { readonly kind: "step1"; readonly stateVector: Uint8Array }
  | { readonly kind: "step2"; readonly update: Uint8Array }
  | { readonly kind: "update"; readonly update: Uint8Array }
  | { readonly kind: "presence"; readonly payload: Uint8Array }
  | ({ readonly kind: "acknowledgement" } & DurableAcknowledgement)
  | { readonly kind: "receipts"; readonly receipts: readonly Receipt[] }
  | { readonly kind: "refusal"; readonly refusal: Refusal };

type HeardKind = Heard["kind"];
export type Closed = { readonly code: number; readonly reason: string };

const patienceMs = 10_000;

/** A device that says only what the test says, and shows every message that it hears, in order. */
export class RawDevice {
  readonly heard: Heard[] = [];
  readonly socket: WebSocket;
  readonly closed: Promise<Closed>;
  private readonly opened: Promise<void>;
  private read = 0;
  private wake: () => void = () => {};

  constructor(url: string, options: WebSocket.ClientOptions = {}) {
    this.socket = new WebSocket(url, options);
    this.opened = new Promise((resolve, reject) => {
      this.socket.on("open", resolve);
      this.socket.on("error", reject);
    });
    this.opened.catch(() => {});
    this.closed = new Promise((resolve) => {
      this.socket.on("close", (code, reason) => {
        resolve({ code, reason: reason.toString() });
        this.wake();
      });
    });
    this.socket.on("message", (data: Buffer) => {
      this.heard.push(parse(data));
      this.wake();
    });
    onTestFinished(() => this.socket.terminate());
  }

  /** @throws when the socket is refused. */
  async open(): Promise<this> {
    await this.opened;
    return this;
  }

  send(message: Uint8Array): void {
    this.socket.send(message);
  }

  sendUpdate(update: Uint8Array): void {
    this.send(syncUpdate(update));
  }

  sendCatchUp(update: Uint8Array): void {
    this.send(syncStep2(update));
  }

  /** The next unread message of a kind; those of other kinds before it count as read. */
  async next<Kind extends HeardKind>(kind: Kind): Promise<Extract<Heard, { kind: Kind }>> {
    let isLate = false;
    const timer = setTimeout(() => {
      isLate = true;
      this.wake();
    }, patienceMs);
    try {
      for (;;) {
        while (this.read < this.heard.length) {
          const message = this.heard[this.read++];
          if (message?.kind === kind) return message as Extract<Heard, { kind: Kind }>;
        }
        if (this.socket.readyState === WebSocket.CLOSED) throw new Error(`The socket closed before a ${kind} came.`);
        if (isLate) throw new Error(`No ${kind} came.`);
        await new Promise<void>((resolve) => {
          this.wake = resolve;
        });
      }
    } finally {
      clearTimeout(timer);
    }
  }

  /** Asks for everything; whatever the server had sent before is heard by then. @returns what the server holds. */
  async everything(): Promise<Y.Doc> {
    this.send(syncStep1(Y.encodeStateVector(new Y.Doc())));
    const document = new Y.Doc();
    Y.applyUpdate(document, (await this.next("step2")).update);
    await this.next("acknowledgement");
    return document;
  }

  kinds(): HeardKind[] {
    return this.heard.map(({ kind }) => kind);
  }
}

/** A raw device in a document, after the server's greeting. */
export async function join(server: { readonly url: string }, document = season): Promise<RawDevice> {
  const device = await new RawDevice(`ws://${server.url}/sync/${document}`).open();
  await device.next("step1");
  return device;
}

/** A presence message of one device. */
export function presenceOf(client: number, clock: number, state: unknown): Uint8Array {
  const payload = encoding.createEncoder();
  encoding.writeVarUint(payload, 1);
  encoding.writeVarUint(payload, client);
  encoding.writeVarUint(payload, clock);
  encoding.writeVarString(payload, JSON.stringify(state));
  return presence(encoding.toUint8Array(payload));
}

export function presence(payload: Uint8Array): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, messageType.awareness);
  encoding.writeVarUint8Array(encoder, payload);
  return encoding.toUint8Array(encoder);
}

/** What a presence payload says: state by client. */
export function statesIn(payload: Uint8Array): Record<number, unknown> {
  const decoder = decoding.createDecoder(payload);
  const states: Record<number, unknown> = {};
  for (let count = decoding.readVarUint(decoder); count > 0; count--) {
    const client = decoding.readVarUint(decoder);
    decoding.readVarUint(decoder);
    states[client] = JSON.parse(decoding.readVarString(decoder));
  }
  return states;
}

function parse(data: Buffer): Heard {
  const decoder = decoding.createDecoder(Uint8Array.from(data));
  const type = decoding.readVarUint(decoder);
  if (type === messageType.sync) {
    const sync = decoding.readVarUint(decoder);
    const bytes = decoding.readVarUint8Array(decoder);
    if (sync === syncMessageType.step1) return { kind: "step1", stateVector: bytes };
    return { kind: sync === syncMessageType.step2 ? "step2" : "update", update: bytes };
  }
  if (type === messageType.awareness) return { kind: "presence", payload: decoding.readVarUint8Array(decoder) };
  if (type === messageType.durableAcknowledgement) {
    const acknowledgement = readDurableAcknowledgement(decoder);
    if (acknowledgement !== undefined) return { kind: "acknowledgement", ...acknowledgement };
  }
  if (type === messageType.receipts) {
    const receipts = readReceipts(decoder);
    if (receipts !== undefined) return { kind: "receipts", receipts };
  }
  if (type === messageType.refusal) {
    const refusal = readRefusal(decoder);
    if (refusal !== undefined) return { kind: "refusal", refusal };
  }
  throw new Error(`The server sent a message of type ${type} that cannot be read.`);
}
