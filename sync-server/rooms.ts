import { closeCode } from "#core/protocol/close-code.ts";
import { encodeRefusal } from "#core/protocol/refusal.ts";
import { createCommitQueue } from "./commit-queue.ts";
import type { Guard } from "./guard.ts";
import { type Logger, reasonOf } from "./logging.ts";
import type { Peer } from "./peer.ts";
import { createQuarantine } from "./quarantine.ts";
import { createReceiptKeeper } from "./receipt-keeper.ts";
import { createRoom, type Room } from "./room.ts";
import { openSession, type Session } from "./session.ts";
import {
  createSnapshotKeeper,
  defaultSnapshotLimits,
  type SnapshotKeeperNeeds,
  type SnapshotReport,
} from "./snapshot/snapshot-keeper.ts";
import type { UpdateStore } from "./store/update-store.ts";

/** All open documents of one server. It knows no socket, clock or disk: they come in as peers, scheduler and store. */
export type Rooms = {
  /** Brings a peer into a document; undefined when there is no room for it or the log cannot be read, and then the peer has been closed. */
  join(document: string, peer: Peer): Session | undefined;
  /** The peer's socket is gone. */
  leave(peer: Peer): void;
  /** Commits what has arrived. */
  flush(): void;
  /** Begins nothing of its own any more. */
  stop(): void;
  readonly status: RoomsStatus;
};

export type RoomsStatus = {
  readonly documents: number;
  readonly refusedUpdates: number;
  readonly isStoring: boolean;
  readonly snapshots: SnapshotReport;
};

export type RoomsNeeds = {
  readonly store: UpdateStore;
  readonly guard: Guard;
  readonly logger: Logger;
  readonly schedule: (flush: () => void) => void;
  /** Documents open at one time, each of which is in memory as a whole; as many as come when left out. */
  readonly maximumDocuments?: number;
  /** When the log of a document is put together, by which clock and scheduler; never when left out. */
  readonly snapshots?: Pick<SnapshotKeeperNeeds, "limits" | "now" | "after">;
};

export function createRooms(needs: RoomsNeeds): Rooms {
  const { store, guard, logger, schedule, maximumDocuments = Number.POSITIVE_INFINITY } = needs;
  const roomsByDocument = new Map<string, Room>();
  const roomsByPeer = new Map<Peer, Room>();
  const quarantine = createQuarantine(store, logger);
  const receiptKeeper = createReceiptKeeper({ store, logger, schedule });
  const queue = createCommitQueue({ store, logger, schedule, abandon, afterFlush });
  const snapshots = createSnapshotKeeper({
    ...(needs.snapshots ?? noSnapshots),
    store,
    logger,
    isOpen: (document) => roomsByDocument.has(document),
    isFlushDue: () => queue.isWaiting,
  });

  /** The device is told and cut off, so that it comes back and sends again into a document read from the log. */
  function abandon(room: Room): void {
    room.abandon();
    forget(room);
    for (const peer of [...room.peers]) {
      peer.send(encodeRefusal(notStored));
      peer.close(closeCode.notStored, notStored.sentence);
    }
  }

  function forget(room: Room): void {
    if (roomsByDocument.get(room.name) !== room) return;
    roomsByDocument.delete(room.name);
    snapshots.closed(room.name);
  }

  function afterFlush(room: Room): void {
    snapshots.written(room.name);
    closeWhenEmpty(room);
  }

  function closeWhenEmpty(room: Room): void {
    if (room.peers.size === 0 && !queue.holds(room)) forget(room);
  }

  function roomOf(document: string): Room {
    const open = roomsByDocument.get(document);
    if (open !== undefined) return open;
    const room = createRoom({
      name: document,
      load: () => store.load(document),
      receipts: receiptKeeper.load(document),
      guard,
    });
    roomsByDocument.set(document, room);
    return room;
  }

  return {
    join(document, peer) {
      if (!roomsByDocument.has(document) && roomsByDocument.size >= maximumDocuments) {
        logger.warn("too many documents", { document, open: roomsByDocument.size });
        peer.close(closeCode.overloaded, "Too many documents are open.");
        return undefined;
      }
      try {
        const room = roomOf(document);
        room.enter(peer);
        roomsByPeer.set(peer, room);
        return openSession({ room, peer, queue, quarantine, receiptKeeper, logger });
      } catch (error) {
        logger.error("document could not be opened", { document, reason: reasonOf(error) });
        peer.close(closeCode.notStored, "The server cannot read this document from its disk.");
        return undefined;
      }
    },
    leave(peer) {
      const room = roomsByPeer.get(peer);
      if (room === undefined) return;
      roomsByPeer.delete(peer);
      room.leave(peer);
      closeWhenEmpty(room);
    },
    flush: () => {
      queue.flush();
      receiptKeeper.flush();
    },
    stop: snapshots.stop,
    get status() {
      return {
        documents: roomsByDocument.size,
        refusedUpdates: quarantine.refused,
        isStoring: queue.isStoring,
        snapshots: snapshots.report(),
      };
    },
  };
}

const noSnapshots = { limits: defaultSnapshotLimits, now: () => 0, after: () => () => {} };

const notStored = {
  type: "not stored",
  sentence: "The server could not write to its disk. Your changes stay on this device and will be sent again.",
} as const;
