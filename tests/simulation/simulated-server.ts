/**
 * A server of the simulation: the real rooms and the real link to its upstream on a simulated disk and network. It can be
 * killed and started again. Dying in the middle of a write leaves all of it on the disk or nothing: a torn last write is
 * what SQLite's journal undoes, and IndexedDB's transactions do the same for a device.
 */
import * as Y from "yjs";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import type { DocumentList } from "#core/protocol/document-list.ts";
import type { Guard } from "#server/guard.ts";
import { createLogger } from "#server/logging.ts";
import type { Peer } from "#server/peer.ts";
import { createRooms, type Rooms, type RoomsStatus } from "#server/rooms.ts";
import type { Session } from "#server/session.ts";
import { defaultSnapshotLimits } from "#server/snapshot/snapshot-keeper.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import type { LogEntry, UpdateStore } from "#server/store/update-store.ts";
import { defaultSilence } from "#server/upstream/document-link.ts";
import { createServerId, type SocketPurpose } from "#server/upstream/socket-purpose.ts";
import { createUpstream, type Upstream, type UpstreamStatus } from "#server/upstream/upstream.ts";
import type { UpstreamPort } from "#server/upstream/upstream-port.ts";
import type { Chance } from "./chance.ts";
import type { Mutation } from "./mutation.ts";
import type { SimulatedNetwork } from "./simulated-network.ts";
import type { VirtualTime } from "./virtual-time.ts";

export interface SimulatedServer {
  readonly name: string;
  /** The way to its upstream; absent for the home server. */
  readonly network: SimulatedNetwork | undefined;
  /** Everything that its disk holds. */
  readonly disk: UpdateStore;
  /** Grows with every write to its disk. */
  diskVersion(): number;
  isRunning(): boolean;
  join(document: string, peer: Peer, purpose: SocketPurpose): { readonly session: Session | undefined; leave(): void };
  list(): DocumentList;
  /** Absent while it is dead. */
  status(): RoomsStatus | undefined;
  upstreamStatus(): UpstreamStatus | undefined;
  /** The power goes: what was not flushed is gone, and every socket with it. */
  kill(): void;
  start(): void;
  /** From now on nothing fails any more. */
  calm(): void;
  /** While true, every write to the disk fails. */
  setFull(full: boolean): void;
}

export interface ServerContext {
  readonly name: string;
  readonly time: VirtualTime;
  readonly chance: Chance;
  readonly mutation: Mutation | undefined;
  readonly network?: SimulatedNetwork;
  /** Called when the server dies, to end the sockets. */
  readonly onKilled: () => void;
}

/** ms between two looks at the upstream: more often than in a pit, as everything here. */
const LIST_EVERY_MS = 1500;

/** Low, so that many snapshots are taken on a simulated weekend, while devices write. */
const snapshotLimits = { ...defaultSnapshotLimits, rows: 3, quietMs: 300, mostTimes: 2, retryMs: 1000 };

/** What a disk gives back of a part that it has lost. */
const emptyUpdate = new Uint8Array([0, 0]);

export function createSimulatedServer(context: ServerContext): SimulatedServer {
  const { name, time, chance, mutation, network, onKilled } = context;
  const memory = createMemoryStore();
  let diskVersion = 0;
  const disk: UpdateStore = {
    ...memory,
    append: (entries) => {
      diskVersion += 1;
      memory.append(entries);
    },
  };
  let full = false;
  let isCalm = false;
  let rooms: Rooms | undefined;
  let upstream: Upstream | undefined;
  let generation = 0;

  /** The log as the rooms see it. */
  const store = (): UpdateStore => {
    const cache: LogEntry[] = [];
    return {
      ...disk,
      append: (entries) => {
        if (full) throw new Error("The disk is full.");
        if (!isCalm && chance.happens(0.01)) {
          if (chance.happens(0.5)) disk.append(entries);
          time.after(0, () => kill());
          throw new Error("The power went in the middle of the write.");
        }
        if (mutation === "acknowledge before the flush") {
          cache.push(...entries);
          time.after(400, () => disk.append(cache.splice(0)));
        } else disk.append(entries);
        upstream?.wrote(new Set(entries.map(({ document }) => document)));
      },
      draftSnapshot: (document) => {
        const draft = disk.draftSnapshot(document);
        const written: Uint8Array[] = [];
        return {
          ...draft,
          write: (part) => {
            if (full) throw new Error("The disk is full.");
            if (!isCalm && chance.happens(0.05)) time.after(0, () => kill());
            written.push(part);
            draft.write(!isCalm && chance.happens(0.1) ? emptyUpdate : part);
          },
          readBack: () => (mutation === "believe a snapshot unread" ? written.shift() : draft.readBack()),
          adopt: () => {
            draft.adopt();
            diskVersion += 1;
          },
        };
      },
      load: (document) => [
        ...disk.load(document),
        ...cache.filter((entry) => entry.document === document).map((entry) => entry.update),
      ],
    };
  };

  const guard: Guard = (update, document, maximumBytes) => {
    if (mutation === "apply before the guard") applyAnyway(update, document);
    return inspectUpdate(update, document, { maximumBytes });
  };

  const start = (): void => {
    generation += 1;
    const own = generation;
    const whileAlive = (ms: number, act: () => void) =>
      time.after(ms, () => {
        if (generation === own && rooms) act();
      });
    const log = store();
    const logger = createLogger("silent", () => {});
    rooms = createRooms({
      store: log,
      guard,
      logger,
      snapshots: { limits: snapshotLimits, now: time.now, after: whileAlive },
      schedule: (flush) => whileAlive(1, flush),
    });
    if (network === undefined) return;
    const neverGivesUp = mutation === "never give up a silent link";
    upstream = createUpstream({
      id: createServerId(chance.next),
      port: portOf(network.port),
      rooms,
      store: log,
      guard,
      isDocumentName: () => true,
      createBudget: () => ({ spend: () => true }),
      timers: { now: time.now, after: whileAlive },
      random: chance.next,
      logger,
      listEveryMs: LIST_EVERY_MS,
      silence: neverGivesUp ? { ...defaultSilence, deadAfterMs: Number.POSITIVE_INFINITY } : defaultSilence,
    });
  };

  /** The way to the upstream, with what a mutation does to it. */
  const portOf = (port: UpstreamPort): UpstreamPort => {
    let first: ReturnType<UpstreamPort["listDocuments"]> | undefined;
    return {
      ...port,
      listDocuments: (signal) => {
        if (mutation !== "look at the upstream once") return port.listDocuments(signal);
        first ??= port.listDocuments(signal);
        return first;
      },
    };
  };

  const kill = (): void => {
    if (!rooms) return;
    generation += 1;
    rooms = undefined;
    const link = upstream;
    upstream = undefined;
    onKilled();
    link?.close();
    network?.dropAll();
  };

  start();
  return {
    name,
    network,
    disk,
    diskVersion: () => diskVersion,
    isRunning: () => rooms !== undefined,
    join: (document, peer, purpose) => {
      const ownRooms = rooms;
      const left = upstream?.arrived(document, purpose);
      let isGone = false;
      return {
        session: ownRooms?.join(document, peer),
        leave: () => {
          if (isGone) return;
          isGone = true;
          ownRooms?.leave(peer);
          left?.();
        },
      };
    },
    list: () => ({ documents: [...disk.positions()].map(([document, position]) => ({ name: document, position })) }),
    status: () => rooms?.status,
    upstreamStatus: () => upstream?.status,
    kill,
    start: () => {
      if (!rooms) start();
    },
    calm: () => {
      isCalm = true;
      full = false;
      if (!rooms) start();
    },
    setFull: (value) => {
      full = value;
    },
  };
}

function applyAnyway(update: Uint8Array, document: Y.Doc): void {
  try {
    Y.applyUpdate(document, update);
  } catch {
    // What could be applied of it is in the document now.
  }
}
