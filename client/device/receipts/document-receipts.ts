/**
 * Who is proven to hold what of one document on its disk.
 *
 * The proof: a device says so itself, after its storage has completed the write
 * (keep-document.ts), naming clocks and a digest of the content below them. What
 * it says counts here only when the content here, below the same clocks, has the
 * same digest: then both mean the same entries. While something below those
 * clocks is not here yet, only what was proven before counts.
 *
 * It claims that the device had the entries on its disk when it said so, not
 * that somebody has looked at them. A device whose storage was emptied comes
 * back under a new id; one that was set back to an old copy says less as soon as
 * it hears what it had said.
 */
import { bytesEqual } from "#client/device/bytes-equal.ts";
import type { DeviceStorage, Timers } from "#client/device/storage/device-storage.ts";
import { createLatestKeeper } from "#client/device/storage/keep-latest.ts";
import { type Clocks, type ContentDigest, reaches } from "#core/ledger/content-digest.ts";
import { decodeKeptReceipts, encodeKeptReceipts, isReceipt, type Receipt } from "#core/protocol/receipt.ts";
import { createReceiptBook } from "#core/protocol/receipt-book.ts";
import { coversStateVector } from "#core/protocol/state-vector.ts";

/** ms from a change of what is saved to saying so: changes that come together are told together. */
const SAY_AFTER_MS = 500;
/** Times that the same is said again when something less was heard in its place: two tabs must not argue for ever. */
const MOST_REPEATS = 3;

/** A device that holds a record, and who had it when it said so (ms since the epoch, by its own clock). */
export interface Holder {
  readonly device: string;
  readonly isThis: boolean;
  readonly member: string | undefined;
  readonly at: number;
}

export interface DocumentReceipts {
  /** What devices said; may come late, twice, or out of order. */
  hear(receipts: readonly Receipt[]): void;
  /** What is saved, who holds the device, or the connection may have changed. */
  consider(): void;
  holdersOf(recordId: string): readonly Holder[];
  close(): void;
}

export interface ReceiptsContext {
  readonly name: string;
  readonly digest: ContentDigest;
  readonly storage: Pick<DeviceStorage, "loadNote" | "keepNote" | "onLoss">;
  readonly timers: Timers;
  readonly deviceId: string;
  readonly holder: () => string | undefined;
  /** Clocks below which everything is on this device's disk. */
  readonly saved: () => Clocks;
  readonly isConnected: () => boolean;
  /** The server has proven what it holds on this socket: what it knows of this device has come before. */
  readonly canSay: () => boolean;
  readonly say: (receipt: Receipt) => void;
  readonly onChange: () => void;
}

export function createDocumentReceipts(context: ReceiptsContext): DocumentReceipts {
  const { name, digest, storage, timers, deviceId, holder, saved, isConnected, canSay, say, onChange } = context;
  const book = createReceiptBook();
  const judgementByDevice = new Map<string, Judgement>();
  let callOffSaying: (() => void) | undefined;
  let closed = false;
  let said: { readonly clocks: Clocks; times: number } | undefined;
  /** What the server has of this device, as far as this socket tells: what was said on another may not have arrived. */
  let told: Receipt | undefined;

  const keeper = createLatestKeeper(storage, name, "receipts");
  const keep = (): void => keeper.keep(encodeKeptReceipts(book.all()));

  const mustSay = (): boolean => {
    const clocks = saved();
    if (!told) return clocks.size > 0;
    return told.member !== holder() || !sameClocks(told.stateVector, clocks);
  };

  const sayNow = (): void => {
    if (!canSay() || !mustSay()) return;
    const clocks = saved();
    const content = digest.at(clocks);
    if (!content) throw new Error(`More of ${name} is saved than is here.`);
    const known = book.of(deviceId);
    const claimsMore = known !== undefined && !coversStateVector(clocks, known.stateVector);
    if (!said || !sameClocks(said.clocks, clocks)) said = { clocks, times: 0 };
    if (said.times >= MOST_REPEATS && !claimsMore) return;
    said.times += 1;
    const receipt: Receipt = {
      device: deviceId,
      member: holder(),
      count: (known?.count ?? 0) + 1,
      // A clock may tell parts of a millisecond; the message holds whole ones.
      at: Math.trunc(timers.now()),
      stateVector: clocks,
      digest: content,
    };
    // Somebody else may have said the highest count in this device's name: then it says no more, which claims less.
    if (!isReceipt(receipt)) return;
    book.take([receipt]);
    keep();
    told = receipt;
    say(receipt);
    onChange();
  };

  const consider = (): void => {
    if (!isConnected()) {
      told = undefined;
      said = undefined;
    }
    if (closed || callOffSaying || !canSay() || !mustSay()) return;
    callOffSaying = timers.after(SAY_AFTER_MS, () => {
      callOffSaying = undefined;
      sayNow();
    });
  };

  const take = (receipts: readonly Receipt[]): void => {
    if (book.take(receipts).taken.length === 0) return;
    keep();
    onChange();
  };

  /** Clocks below which the content of another device's disk is proven. */
  const provenFor = (receipt: Receipt): Clocks => {
    const before = judgementByDevice.get(receipt.device);
    const size = digest.size();
    if (before?.receipt === receipt && (before.isFinal || before.size === size)) return before.proven;
    const content = digest.at(receipt.stateVector);
    const isFinal = content !== undefined;
    let proven: Clocks;
    if (content) proven = bytesEqual(content, receipt.digest) ? receipt.stateVector : new Map();
    else proven = inBoth(before?.proven ?? new Map(), receipt.stateVector);
    judgementByDevice.set(receipt.device, { receipt, proven, isFinal, size });
    return proven;
  };

  storage.loadNote(name, "receipts").then(
    (bytes) => {
      if (!closed && bytes) take(decodeKeptReceipts(bytes) ?? []);
    },
    // A storage that cannot be read is told by the document itself.
    () => {},
  );

  return {
    hear: (receipts) => {
      take(receipts);
      told = receipts.findLast(({ device }) => device === deviceId) ?? told;
      consider();
    },
    consider,
    holdersOf: (recordId) => {
      const positions = digest.positionsOf(recordId);
      const own = { device: deviceId, isThis: true, member: holder(), at: timers.now() };
      const others = book.all().filter(({ device }) => device !== deviceId);
      return [
        ...(reaches(saved(), positions) ? [own] : []),
        ...others
          .filter((receipt) => reaches(provenFor(receipt), positions))
          .map(({ device, member, at }) => ({ device, isThis: false, member, at })),
      ];
    },
    close: () => {
      closed = true;
      callOffSaying?.();
      keeper.close();
    },
  };
}

/** What was found of a receipt; final when all that it names was here, since entries never change. */
interface Judgement {
  readonly receipt: Receipt;
  readonly proven: Clocks;
  readonly isFinal: boolean;
  /** Entries that were here then. */
  readonly size: number;
}

function sameClocks(one: Clocks, other: Clocks): boolean {
  return coversStateVector(one, other) && coversStateVector(other, one);
}

function inBoth(one: Clocks, other: Clocks): Clocks {
  return new Map([...one].map(([client, clock]) => [client, Math.min(clock, other.get(client) ?? 0)]));
}
