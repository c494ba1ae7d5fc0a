/** What the sockets of a load send, made once and sent to every server: so all do the same work on the same bytes. */
import * as Y from "yjs";
import { documentNameFor } from "#core/ledger/documents.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { syncUpdate } from "#server/sync-message.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { clientFrame, opcode } from "./frames.ts";
import { createRiderHistory } from "./rider-history.ts";

/** One socket: the Yjs client id that it writes under, and its messages with one record each, in order, as frames. */
export type PlannedSender = { readonly client: number; readonly frames: readonly Buffer[] };

/** One document: what it holds before the load, and who writes to it at once. */
export type PlannedDocument = {
  readonly name: string;
  /** One message with the history, as a frame. */
  readonly history: Buffer;
  /** Entries of the history by Yjs client id. */
  readonly historyClocks: ReadonlyMap<number, number>;
  readonly senders: readonly PlannedSender[];
};

export type LoadSize = {
  readonly documents: number;
  readonly sendersPerDocument: number;
  readonly updatesPerSender: number;
  /** What stands in each document before: so many starts of devices, each with so many records. */
  readonly earlierWriters: number;
  readonly recordsPerEarlierWriter: number;
};

const FIRST_DAY = Date.UTC(2031, 4, 3, 9);

/** @param team begins the names of the documents, so that two loads on one server do not meet */
export function planLoad(team: string, size: LoadSize, seed: number): readonly PlannedDocument[] {
  return Array.from({ length: size.documents }, (_, index) => planDocument(`${team}-${index}`, size, seed + index));
}

function planDocument(rider: string, size: LoadSize, seed: number): PlannedDocument {
  const history = createRiderHistory(rider, createChance(seed));
  const write = (count: number): LedgerRecord[] => {
    const runs = Math.floor(count / 4);
    return history.write(FIRST_DAY, runs, count - runs);
  };
  const before = new Y.Doc();
  const historyClocks = new Map<number, number>();
  for (let writer = 0; writer < size.earlierWriters; writer += 1) {
    before.clientID = 1_000_000 + writer;
    before.getArray("records").push(write(size.recordsPerEarlierWriter));
    historyClocks.set(before.clientID, size.recordsPerEarlierWriter);
  }
  const senders = Array.from({ length: size.sendersPerDocument }, (_, sender): PlannedSender => {
    const client = 1 + sender;
    const device = new Y.Doc();
    device.clientID = client;
    const frames: Buffer[] = [];
    device.on("update", (update: Uint8Array) => void frames.push(frameOf(update)));
    for (const record of write(size.updatesPerSender)) device.getArray("records").push([record]);
    return { client, frames };
  });
  return {
    name: documentNameFor({ scope: "rider", rider, year: 2031 }),
    history: frameOf(Y.encodeStateAsUpdate(before)),
    historyClocks,
    senders,
  };
}

function frameOf(update: Uint8Array): Buffer {
  return clientFrame(opcode.binary, syncUpdate(update));
}
