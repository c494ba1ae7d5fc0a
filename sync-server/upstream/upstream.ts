import { waitBeforeRetry } from "#core/protocol/reconnection.ts";
import type { ByteBudget } from "../byte-budget.ts";
import type { Guard } from "../guard.ts";
import { type Logger, reasonOf } from "../logging.ts";
import type { Rooms } from "../rooms.ts";
import type { UpdateStore } from "../store/update-store.ts";
import { type DocumentLink, defaultSilence, type LinkEnd, openDocumentLink, type Silence } from "./document-link.ts";
import { openThrough, type SocketPurpose } from "./socket-purpose.ts";
import type { Timers, UpstreamPort } from "./upstream-port.ts";
import { defaultListEveryMs, type Positions, watchList } from "./watch-list.ts";

/**
 * Keeps this server equal with another one: documents that are open here are linked all the time, the others whenever
 * one side has something new, a few at a time. It is on no device's way: what it cannot do now it does later.
 */
export type Upstream = {
  /** Somebody has come into a document. @returns what to call when he has left. */
  arrived(document: string, purpose: SocketPurpose): () => void;
  /** The log here has more of these documents. */
  wrote(documents: Iterable<string>): void;
  readonly status: UpstreamStatus;
  close(): void;
};

export type UpstreamStatus = {
  readonly isConnected: boolean;
  /** Documents that are not known to be the same on both sides. */
  readonly documentsWaiting: number;
  /** Sockets to the upstream. */
  readonly links: number;
  /** Seconds since the upstream gave a sign of life; undefined before the first. */
  readonly secondsSinceContact: number | undefined;
  /** Changes that one side refused to take from the other. */
  readonly refusals: number;
};

export type UpstreamNeeds = {
  /** This server's id. */
  readonly id: string;
  readonly port: UpstreamPort;
  readonly rooms: Pick<Rooms, "join" | "leave">;
  readonly store: Pick<UpdateStore, "documents">;
  readonly guard: Guard;
  readonly isDocumentName: (name: string) => boolean;
  readonly createBudget: () => ByteBudget;
  readonly timers: Timers;
  /** From 0 to below 1. */
  readonly random: () => number;
  readonly logger: Logger;
  readonly listEveryMs?: number;
  readonly silence?: Silence;
};

/** Links of documents that are not open here, at one time. */
export const maximumCatchUps = 8;

/** How often, in one run of the server, entries of one document are added again because the two sides are at odds. */
const maximumSettlements = 32;
/** Milliseconds in which what happens is gathered before the links are looked after. */
const gatherMs = 20;
/** Milliseconds until a document that cannot become equal is tried again although nothing of it has changed. */
const stuckMs = 300_000;
/** Milliseconds below which the wait is drawn when the upstream says "do not come back". */
const sentAwayMs = 30_000;

type Entry = {
  readonly visitors: Set<SocketPurpose>;
  link: { readonly pipe: DocumentLink; readonly through: string } | undefined;
  /** The log here has changed since the two were equal. */
  isDirty: boolean;
  /** The upstream's position that the two were equal at; undefined when that is not known. */
  equalAt: number | undefined;
  settlements: number;
  failures: number;
  notBefore: number;
  isStuck: boolean;
};

export function createUpstream(needs: UpstreamNeeds): Upstream {
  const { id, port, store, timers, random, logger, silence = defaultSilence } = needs;
  const entries = new Map<string, Entry>();
  let positions: Positions = new Map();
  let refusals = 0;
  let contactAt: number | undefined;
  let isClosed = false;
  let callOffTending: (() => void) | undefined;
  let tendingAt = Number.POSITIVE_INFINITY;

  const list = watchList({
    port,
    timers,
    random,
    logger,
    everyMs: needs.listEveryMs ?? defaultListEveryMs,
    isDocumentName: needs.isDocumentName,
    onList,
    onLost: () => tendIn(0),
  });

  function entryOf(document: string): Entry {
    const known = entries.get(document);
    if (known !== undefined) return known;
    const entry: Entry = {
      visitors: new Set(),
      link: undefined,
      isDirty: false,
      equalAt: undefined,
      settlements: 0,
      failures: 0,
      notBefore: 0,
      isStuck: false,
    };
    entries.set(document, entry);
    return entry;
  }

  function rememberLog(): void {
    try {
      for (const document of store.documents()) entryOf(document).isDirty = true;
    } catch (error) {
      logger.error("documents could not be listed", { reason: reasonOf(error) });
    }
  }

  function onList(listed: Positions, isNew: boolean): void {
    contact();
    const before = positions;
    positions = listed;
    if (isNew) rememberLog();
    for (const document of before.keys()) if (!listed.has(document)) forgetUnlisted(document);
    for (const document of listed.keys()) entryOf(document);
    for (const [document, entry] of entries) {
      // An upstream that comes back may be another than before: newer, or restored from an old copy.
      if (isNew) Object.assign(entry, { failures: 0, notBefore: 0, isStuck: false });
      else if (before.get(document) !== listed.get(document)) tryAgain(entry);
    }
    tendIn(0);
  }

  /** A document that only the upstream ever named: one that names others each time must not fill the memory. */
  function forgetUnlisted(document: string): void {
    const entry = entries.get(document);
    if (entry === undefined || entry.isDirty || entry.visitors.size > 0 || entry.link !== undefined) return;
    if (entry.equalAt === undefined) entries.delete(document);
  }

  /** Something of the document has changed, so that what did not go may go now. */
  function tryAgain(entry: Entry): void {
    if (!entry.isStuck) return;
    entry.isStuck = false;
    entry.notBefore = timers.now() + waitBeforeRetry(entry.failures, random);
  }

  function contact(): void {
    contactAt = timers.now();
  }

  function tendIn(ms: number): void {
    const at = timers.now() + Math.max(ms, gatherMs);
    if (isClosed || at >= tendingAt) return;
    callOffTending?.();
    tendingAt = at;
    callOffTending = timers.after(at - timers.now(), tend);
  }

  /** Opens, keeps and closes links as they are wanted now. */
  function tend(): void {
    tendingAt = Number.POSITIVE_INFINITY;
    let catchUps = [...entries.values()].filter((entry) => entry.link !== undefined && !isOpen(entry)).length;
    let nextTry = Number.POSITIVE_INFINITY;
    for (const [document, entry] of entries) {
      const through = openThrough(id, entry.visitors);
      const { link } = entry;
      if (link !== undefined) {
        const isStale = list.isConnected && link.through !== through?.join(",");
        if (through === undefined ? !link.pipe.isEqual : !isStale) continue;
        link.pipe.close();
        entry.link = undefined;
        if (through === undefined) catchUps -= 1;
      }
      if (isForgettable(document, entry)) {
        entries.delete(document);
      } else if (!list.isConnected || (through === undefined && isSettled(document, entry))) {
        // Nothing to be done, or not now.
      } else if (entry.notBefore > timers.now()) {
        nextTry = Math.min(nextTry, entry.notBefore);
      } else if (through !== undefined) {
        open(document, entry, { type: "open", through });
      } else if (catchUps < maximumCatchUps) {
        catchUps += 1;
        open(document, entry, { type: "catch-up" });
      }
    }
    if (nextTry < Number.POSITIVE_INFINITY) tendIn(nextTry - timers.now());
  }

  function isOpen(entry: Entry): boolean {
    return openThrough(id, entry.visitors) !== undefined;
  }

  /** Whether nothing is to be done for a document that is not open. */
  function isSettled(document: string, entry: Entry): boolean {
    return !entry.isDirty && entry.equalAt === (positions.get(document) ?? 0);
  }

  /** As far as is known neither side has anything of it, and a list after a new connection tells when that is not so. */
  function isForgettable(document: string, entry: Entry): boolean {
    const isEmpty = !entry.isDirty && !positions.has(document);
    return entry.visitors.size === 0 && isEmpty && (entry.equalAt === 0 || !list.isConnected);
  }

  function open(document: string, entry: Entry, purpose: SocketPurpose): void {
    const listed = positions.get(document) ?? 0;
    const pipe = openDocumentLink({
      document,
      purpose,
      port,
      rooms: needs.rooms,
      budget: needs.createBudget(),
      guard: needs.guard,
      timers,
      random,
      logger,
      silence,
      mayGiveUp: () => !isOpen(entry),
      maySettle() {
        entry.settlements += 1;
        return entry.settlements <= maximumSettlements;
      },
      onAlive: contact,
      onEqual() {
        Object.assign(entry, { isDirty: false, equalAt: listed, failures: 0, isStuck: false });
        if (!isOpen(entry)) tendIn(0);
      },
      onRefused() {
        refusals += 1;
      },
      onEnd: (end) => ended(document, entry, end),
    });
    entry.link = { pipe, through: purpose.type === "open" ? purpose.through.join(",") : "" };
  }

  function ended(document: string, entry: Entry, { code, reason, isStuck }: LinkEnd): void {
    entry.link = undefined;
    entry.equalAt = undefined;
    entry.failures += 1;
    entry.isStuck = isStuck;
    const isSentAway = code >= 4400 && code < 4500;
    const wait = isSentAway ? random() * sentAwayMs : waitBeforeRetry(entry.failures, random);
    entry.notBefore = timers.now() + (isStuck ? stuckMs : wait);
    logger.info("link to the upstream ended", { document, code, reason, isStuck });
    if (!isStuck && !isSentAway) list.hurry();
    tendIn(0);
  }

  rememberLog();
  return {
    arrived(document, purpose) {
      const visit = { ...purpose };
      entryOf(document).visitors.add(visit);
      tendIn(0);
      return () => {
        entries.get(document)?.visitors.delete(visit);
        tendIn(0);
      };
    },
    wrote(documents) {
      for (const document of documents) {
        const entry = entryOf(document);
        entry.isDirty = true;
        tryAgain(entry);
        if (entry.link === undefined) tendIn(0);
      }
    },
    get status() {
      let documentsWaiting = 0;
      let links = 0;
      for (const [document, { link, ...entry }] of entries) {
        if (link !== undefined) links += 1;
        if (link === undefined ? !isSettled(document, { link, ...entry }) : !link.pipe.isEqual) documentsWaiting += 1;
      }
      const secondsSinceContact = contactAt === undefined ? undefined : (timers.now() - contactAt) / 1000;
      return { isConnected: list.isConnected, documentsWaiting, links, secondsSinceContact, refusals };
    },
    close() {
      isClosed = true;
      callOffTending?.();
      list.close();
      for (const { link } of entries.values()) link?.pipe.close();
    },
  };
}
