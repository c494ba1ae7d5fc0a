/** A server of the simulation: the real rooms on a simulated disk, which can be killed and started again. */
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import { createLogger } from "#server/logging.ts";
import type { Peer } from "#server/peer.ts";
import { createRooms, type Rooms } from "#server/rooms.ts";
import type { Session } from "#server/session.ts";
import { defaultSnapshotLimits } from "#server/snapshot/snapshot-keeper.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import type { LogEntry, UpdateStore } from "#server/store/update-store.ts";
import type { Chance } from "./chance.ts";
import type { Mutation } from "./mutation.ts";
import type { VirtualTime } from "./virtual-time.ts";

export interface SimulatedServer {
  /** Everything that its disk holds. */
  readonly disk: UpdateStore;
  /** Grows with every write to its disk. */
  diskVersion(): number;
  isRunning(): boolean;
  join(document: string, peer: Peer): Session | undefined;
  leave(peer: Peer): void;
  /** The power goes: what was not flushed is gone, and every socket with it. */
  kill(): void;
  start(): void;
  /** From now on nothing fails any more. */
  calm(): void;
  /** While true, every write to the disk fails. */
  setFull(full: boolean): void;
}

export interface ServerContext {
  readonly time: VirtualTime;
  readonly chance: Chance;
  readonly mutation: Mutation | undefined;
  /** Called when the server dies, to end the sockets. */
  readonly onKilled: () => void;
}

/** Low, so that many snapshots are taken on a simulated weekend, while devices write. */
const snapshotLimits = { ...defaultSnapshotLimits, rows: 3, quietMs: 300, mostTimes: 2, retryMs: 1000 };

/** What a disk gives back of a part that it has lost. */
const emptyUpdate = new Uint8Array([0, 0]);

export function createSimulatedServer({ time, chance, mutation, onKilled }: ServerContext): SimulatedServer {
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
  let generation = 0;

  /** The log as the rooms see it. Dying in the middle of a write leaves all of it on the disk or nothing, as SQLite does. */
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

  const start = (): void => {
    generation += 1;
    const own = generation;
    const whileAlive = (ms: number, act: () => void) =>
      time.after(ms, () => {
        if (generation === own && rooms) act();
      });
    rooms = createRooms({
      store: store(),
      guard: (update, document, maximumBytes) => inspectUpdate(update, document, { maximumBytes }),
      logger: createLogger("silent", () => {}),
      snapshots: { limits: snapshotLimits, now: time.now, after: whileAlive },
      schedule: (flush) => whileAlive(1, flush),
    });
  };

  const kill = (): void => {
    if (!rooms) return;
    generation += 1;
    rooms = undefined;
    onKilled();
  };

  start();
  return {
    disk,
    diskVersion: () => diskVersion,
    isRunning: () => rooms !== undefined,
    join: (document, peer) => rooms?.join(document, peer),
    leave: (peer) => rooms?.leave(peer),
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
