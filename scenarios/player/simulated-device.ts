/** One device of a replay: documents of its own, the ledger that they feed, and a writer for the member who uses it. */
import * as Y from "yjs";
import { connectDocument } from "#core/ledger/document.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { createWriter, type Writer } from "#core/ledger/write.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { documentForRecord } from "#core/weekend/documents.ts";
import type { Chance } from "./chance.ts";

export interface SimulatedDevice {
  readonly id: string;
  readonly member: string;
  readonly ledger: Ledger;
  readonly writer: Writer;
  /** The documents that this device holds, by name. */
  readonly documents: ReadonlyMap<string, Y.Doc>;
  newId(): string;
  close(): void;
}

export interface DeviceNeeds {
  readonly id: string;
  readonly member: string;
  readonly documentNames: readonly string[];
  /** The year whose documents a rider's records go to. */
  readonly season: number;
  readonly chance: Chance;
  /** The replay's clock, ms since 1970. */
  now(): number;
}

export function createSimulatedDevice(needs: DeviceNeeds): SimulatedDevice {
  const { id, member, season, chance, now } = needs;
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const documents = new Map(needs.documentNames.map((name) => [name, createDocument(chance)]));
  const connected = new Map([...documents].map(([name, ydoc]) => [name, connectDocument(ydoc, name, ledger)]));
  const newId = (): string => chance.recordId(now());
  const documentNamed = (name: string) => {
    const document = connected.get(name);
    if (document === undefined) throw new Error(`The device ${id} does not hold the document ${name}.`);
    return document;
  };
  const writer = createWriter({
    ledger,
    append: (record, name) => documentNamed(name).append([record]),
    appendMany: (records, name) => documentNamed(name).append(records),
    newId,
    now: () => new Date(now()).toISOString(),
    by: member,
    device: id,
    documentFor: (kind, key) => documentForRecord(kind, key, season),
  });
  return {
    id,
    member,
    ledger,
    writer,
    documents,
    newId,
    close: () => {
      for (const document of connected.values()) document.close();
      for (const ydoc of documents.values()) ydoc.destroy();
    },
  };
}

function createDocument(chance: Chance): Y.Doc {
  const ydoc = new Y.Doc();
  ydoc.clientID = 1 + chance.below(0xffff_fffe);
  return ydoc;
}
