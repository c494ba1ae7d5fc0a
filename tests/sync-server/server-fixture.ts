import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import * as Y from "yjs";
import { parseDocumentName } from "#core/ledger/documents.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import type { Guard } from "#server/guard.ts";
import { createLogger } from "#server/logging.ts";
import { type RunningServer, type ServerOptions, startServer } from "#server/server.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import type { UpdateStore } from "#server/store/update-store.ts";

export const season = "rider/anna/2031";

/** The guard that the composition root puts in. */
export const realGuard: Guard = (update, document, maximumBytes) => inspectUpdate(update, document, { maximumBytes });

export type TestServer = RunningServer & { readonly store: UpdateStore; readonly log: string[]; readonly url: string };

/** A server on loopback with the real guard, in memory unless a store is given; it ends with the test. */
export async function serve(options: Partial<ServerOptions> = {}): Promise<TestServer> {
  const store = options.store ?? createMemoryStore();
  const log: string[] = [];
  const server = await startServer({
    host: "127.0.0.1",
    port: 0,
    guard: realGuard,
    isDocumentName: (name) => parseDocumentName(name) !== undefined,
    logger: createLogger("debug", (line) => log.push(line)),
    clientFolder: "/nonexistent",
    goodbyeMs: 200,
    ...options,
    store,
  });
  onTestFinished(async () => {
    await server.close();
    store.close();
  });
  return { ...server, store, log, url: `127.0.0.1:${server.port}` };
}

/** A folder of this test alone. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "pitslate-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** The n-th record of a document: a valid envelope around a number. */
export function numbered(n: number, value: unknown = n): LedgerRecord {
  return {
    version: 1,
    id: n.toString().padStart(26, "0"),
    subject: "paper:one",
    value,
    supersedes: [],
    by: "anna",
    device: "phone",
    at: "2031-05-04T09:00:00Z",
  };
}

/** A document of a device with a client id of its own, so that failures can be replayed. */
export function deviceDocument(clientId: number): Y.Doc {
  const document = new Y.Doc();
  document.clientID = clientId;
  return document;
}

/** Adds records to a document. @returns the update that a provider would send. */
export function push(document: Y.Doc, ...records: readonly LedgerRecord[]): Uint8Array {
  let sent: Uint8Array | undefined;
  document.once("update", (update: Uint8Array) => {
    sent = update;
  });
  document.getArray("records").push([...records]);
  if (sent === undefined) throw new Error("Nothing was added.");
  return sent;
}

/** The values of the records in a document, sorted. */
export function numbersIn(document: Y.Doc): number[] {
  const records = document.getArray<LedgerRecord>("records").toArray();
  return records.map((record) => record.value as number).sort((left, right) => left - right);
}

/** The values of the records that a log holds for a document, sorted. */
export function numbersInLog(store: UpdateStore, document = season): number[] {
  const copy = new Y.Doc();
  for (const update of store.load(document)) Y.applyUpdate(copy, update);
  return numbersIn(copy);
}
