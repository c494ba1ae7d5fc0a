/**
 * One document on this device: its copy in the browser's storage, its socket to
 * the server, and the ledger that it feeds. The local copy is attached before
 * the network, and nothing is written before it has loaded.
 */
import { IndexeddbPersistence } from "y-indexeddb";
import { WebsocketProvider } from "y-websocket";
import * as Y from "yjs";
import { type ConnectedDocument, connectDocument } from "#core/ledger/document.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { readDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { readRefusal } from "#core/protocol/refusal.ts";
import { type DocumentFacts, waitingRecords } from "./sync-status.ts";

export interface DocumentReplica {
  readonly name: string;
  facts(): DocumentFacts;
  /** @throws Error before the local copy has loaded: a fault of the caller. */
  append(records: readonly LedgerRecord[]): void;
  close(): void;
}

export interface ReplicaContext {
  /** Such as `ws://127.0.0.1:4680/sync`. */
  readonly serverUrl: string;
  /** Begins the names of the databases in the browser's storage. */
  readonly storageName: string;
  /** Tabs of one browser tell each other of changes without the server. */
  readonly sharesWithTabs: boolean;
  readonly ledger: Ledger;
  /** Called whenever {@link DocumentReplica.facts} may have changed. */
  readonly onFacts: () => void;
}

/** Opens `name` on this device; it connects by itself once its local copy has loaded. */
export function openReplica(name: string, context: ReplicaContext): DocumentReplica {
  const { serverUrl, ledger, onFacts } = context;
  const ydoc = new Y.Doc();
  const connected: ConnectedDocument = connectDocument(ydoc, name, ledger);
  const provider = new WebsocketProvider(serverUrl, name, ydoc, {
    connect: false,
    disableBc: !context.sharesWithTabs,
  });
  let loaded = false;
  let storedLocally = true;
  let held: ReadonlyMap<number, number> | undefined;
  let acknowledged = false;
  let refusal: string | undefined;

  provider.messageHandlers[messageType.durableAcknowledgement] = (_encoder, decoder) => {
    const acknowledgement = readDurableAcknowledgement(decoder);
    if (!acknowledgement) return;
    held = acknowledgement.stateVector;
    acknowledged = true;
    onFacts();
  };
  provider.messageHandlers[messageType.refusal] = (_encoder, decoder) => {
    refusal = readRefusal(decoder)?.sentence ?? refusal;
    onFacts();
  };
  provider.on("status", ({ status }) => {
    if (status !== "connected") acknowledged = false;
    onFacts();
  });
  ydoc.on("update", onFacts);

  const storage = attachStorage(`${context.storageName}/${name}`, ydoc, () => {
    storedLocally = false;
    onFacts();
  });
  void storage.whenLoaded.then(() => {
    loaded = true;
    onFacts();
    provider.connect();
  });

  return {
    name,
    facts: () => ({
      loaded,
      storedLocally,
      connected: provider.wsconnected,
      acknowledged,
      waiting: waitingRecords(Y.decodeStateVector(Y.encodeStateVector(ydoc)), held ?? new Map()),
      ...(refusal !== undefined && { refusal }),
    }),
    append: (records) => {
      if (!loaded) throw new Error(`The document ${name} was written to before its local copy had loaded.`);
      connected.append(records);
    },
    close: () => {
      connected.close();
      provider.destroy();
      ydoc.destroy();
    },
  };
}

/**
 * The browser's storage for one document. Where it cannot be opened (private mode, storage blocked, no room) the
 * document goes on in memory, and the failure is told.
 */
function attachStorage(name: string, ydoc: Y.Doc, onFailure: () => void): { readonly whenLoaded: Promise<void> } {
  if (typeof indexedDB === "undefined") {
    onFailure();
    return { whenLoaded: Promise.resolve() };
  }
  const persistence = new IndexeddbPersistence(name, ydoc);
  const opened: Promise<IDBDatabase> = persistence._db;
  const failed = opened.then(
    (database) => {
      database.addEventListener("close", onFailure);
      return new Promise<never>(() => {});
    },
    () => onFailure(),
  );
  return { whenLoaded: Promise.race([persistence.whenSynced.then(() => {}), failed]) };
}
