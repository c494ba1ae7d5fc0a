/**
 * One document on this device: its copy in the device's storage, its connection
 * to the server, and the ledger that it feeds. The local copy is attached before
 * the network, and nothing is written before it has loaded.
 */
import * as Y from "yjs";
import { type ContentDigest, createContentDigest, reaches } from "#core/ledger/content-digest.ts";
import { connectDocument } from "#core/ledger/document.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { inspectUpdate, type UpdateInspection } from "#core/ledger/update-guard.ts";
import { connectToServer, type DocumentConnection } from "./connection/connect-document.ts";
import { rememberHeld } from "./connection/remember-held.ts";
import { shareWithTabs } from "./connection/share-with-tabs.ts";
import type { OpenSocket } from "./connection/socket.ts";
import type { Rank, SocketSlots } from "./connection/socket-slots.ts";
import { localClocks } from "./local-clocks.ts";
import { createDocumentReceipts, type Holder } from "./receipts/document-receipts.ts";
import { stateWithoutGaps } from "./state-without-gaps.ts";
import type { DeviceStorage, Timers } from "./storage/device-storage.ts";
import { keepDocument } from "./storage/keep-document.ts";
import { type DocumentFacts, waitingRecords } from "./sync-status.ts";

export interface DocumentReplica {
  readonly name: string;
  facts(): DocumentFacts;
  /** The local copy has been read, and the ledger has all of it. */
  isLoaded(): boolean;
  /** @throws Error before the local copy has loaded: a fault of the caller. */
  append(records: readonly LedgerRecord[]): void;
  /** Judges an update of at most `maximumBytes` that came by another way than the server's; changes nothing. */
  inspect(update: Uint8Array, maximumBytes: number): UpdateInspection;
  /**
   * Merges an update that {@link DocumentReplica.inspect} has let pass; it is kept and goes to the server as one written here.
   * @throws Error before the local copy has loaded: a fault of the caller.
   */
  merge(update: Uint8Array): void;
  /** The document as one update: all of it, or what it has beyond a state vector. */
  state(beyond?: Uint8Array): Uint8Array;
  /** The document's state vector. */
  vector(): Uint8Array;
  /** What stands below these clocks, as a number to compare; undefined while not all of it is here. */
  digestAt: ContentDigest["at"];
  /** Who is proven to hold a record of this document on its disk. */
  holdingOf(recordId: string): Holding;
  /** Somebody else has the device now. */
  holderChanged(): void;
  /** Tries to reach the server at once. */
  wake(): void;
  close(): void;
}

/** Records of the team that the ledger takes in one go. */
const TEAM_RECORDS_AT_ONCE = 400;

/** Entries that are hashed as soon as the local copy is read, and in each later turn of what is more than that. */
const HASHES_AT_ONCE = 50;
const HASHES_A_TURN = 200;

/** Where a record is proven to be on a disk. */
export interface Holding {
  readonly server: boolean;
  /** Devices, this one among them. */
  readonly devices: readonly Holder[];
}

/** What a device is made of; a simulation passes its own. */
export interface DeviceSurroundings {
  readonly storage: DeviceStorage;
  readonly openSocket: OpenSocket;
  readonly timers: Timers;
  /** From 0 to below 1. */
  readonly random: () => number;
  /** The id by which Yjs tells writers apart, new at each start; Yjs draws one when absent. */
  readonly clientId?: () => number;
  /** Calls back when nothing more pressing waits, for what would hold up a touch; at the next turn when absent. */
  readonly inTheBackground?: (act: () => void) => void;
  /** Begins the name by which tabs of one browser tell each other of changes; absent for none. */
  readonly tabsName?: string;
}

export interface ReplicaContext extends DeviceSurroundings {
  readonly ledger: Ledger;
  readonly deviceId: string;
  /** The sockets that all documents of this device share. */
  readonly slots: SocketSlots;
  readonly rankOf: (name: string) => Rank;
  /** Id of the member who holds this device. */
  readonly holder: () => string | undefined;
  /** Called whenever {@link DocumentReplica.facts} may have changed. */
  readonly onFacts: () => void;
}

/** Opens `name` on this device; it connects by itself once its local copy has loaded. */
export function openReplica(name: string, context: ReplicaContext): DocumentReplica {
  const { storage, openSocket, timers, random, tabsName, ledger, onFacts } = context;
  const later = context.inTheBackground ?? ((act: () => void) => void timers.after(0, act));
  const ydoc = new Y.Doc();
  if (context.clientId) ydoc.clientID = context.clientId();
  const clientId = context.clientId ?? (() => new Y.Doc().clientID);
  const document = connectDocument(ydoc, name, ledger, {
    later,
    onFed: () => onFacts(),
    // Nothing can be shown before the ledger has the team.
    atOnce: name === "team" ? TEAM_RECORDS_AT_ONCE : 0,
  });
  const digest = createContentDigest(ydoc);
  let connection: DocumentConnection | undefined;
  let isClosed = false;
  const held = rememberHeld(name, storage, (before) => connection?.recall(before));
  // Nothing is written before the local copy has loaded, so there is nothing to tell either.
  const tabs = tabsName === undefined ? undefined : shareWithTabs(`${tabsName}/${name}`, ydoc);
  const kept = keepDocument({
    name,
    ydoc,
    storage,
    timers,
    inTheBackground: later,
    onChange: () => {
      onFacts();
      receipts.consider();
    },
    onLoaded: () => {
      tabs?.tell();
      connectOnceHashed(HASHES_AT_ONCE);
    },
  });
  /** The first thing that the server says is compared with all that is here: by then it is hashed, a part a turn. */
  const connectOnceHashed = (most: number): void => {
    if (isClosed) return;
    if (digest.workAhead(most)) connect();
    else later(() => connectOnceHashed(HASHES_A_TURN));
  };
  const connect = (): void => {
    connection = connectToServer({
      name,
      ydoc,
      digest,
      clientId,
      openSocket,
      slots: context.slots,
      rank: () => context.rankOf(name),
      timers,
      random,
      onChange: () => {
        onFacts();
        receipts.consider();
      },
      onProven: held.keep,
      onReceipts: (heard) => receipts.hear(heard),
    });
    const before = held.before();
    if (before) connection.recall(before);
    onFacts();
  };
  const receipts = createDocumentReceipts({
    name,
    digest,
    storage,
    timers,
    deviceId: context.deviceId,
    holder: context.holder,
    saved: kept.saved,
    isConnected: () => connection?.facts().connected ?? false,
    canSay: () => connection?.facts().held !== undefined,
    say: (receipt) => connection?.sendReceipt(receipt),
    onChange: onFacts,
  });
  ydoc.on("afterTransaction", onFacts);
  const mustBeLoaded = (): void => {
    if (!kept.isLoaded()) throw new Error(`The document ${name} was written to before its local copy had loaded.`);
  };

  const isLoaded = (): boolean => kept.isLoaded() && document.isFed();

  return {
    name,
    isLoaded,
    facts: () => {
      const facts = connection?.facts();
      const refusal = facts?.refusal;
      return {
        // What the server was proven to hold before this start is known once that is hashed.
        loaded: isLoaded() && connection !== undefined,
        storageFails: kept.isFailing(),
        unsaved: kept.unsaved(),
        connected: facts !== undefined && (facts.connected || facts.turn !== undefined),
        acknowledged: facts?.held !== undefined || (facts?.turn === "resting" && facts.lastHeld !== undefined),
        // While there is no connection: the server does not lose what it held when it was last heard.
        waiting: waitingRecords(localClocks(ydoc), facts?.held ?? facts?.lastHeld ?? new Map()),
        ...(refusal !== undefined && { refusal }),
      };
    },
    append: (records) => {
      mustBeLoaded();
      document.append(records);
    },
    inspect: (update, maximumBytes) => inspectUpdate(update, ydoc, { maximumBytes }),
    merge: (update) => {
      mustBeLoaded();
      Y.applyUpdate(ydoc, update);
    },
    state: (beyond) => stateWithoutGaps(ydoc, beyond),
    vector: () => Y.encodeStateVector(ydoc),
    digestAt: digest.at,
    holdingOf: (recordId) => {
      const facts = connection?.facts();
      const held = facts?.held ?? facts?.lastHeld;
      return {
        server: held !== undefined && reaches(held, digest.positionsOf(recordId)),
        devices: receipts.holdersOf(recordId),
      };
    },
    holderChanged: receipts.consider,
    wake: () => connection?.wake(),
    close: () => {
      isClosed = true;
      receipts.close();
      held.close();
      document.close();
      connection?.close();
      kept.close();
      tabs?.close();
      ydoc.destroy();
    },
  };
}
