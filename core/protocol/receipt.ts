import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { digestBytes } from "./durable-acknowledgement.ts";
import { maximumReceiptName, maximumReceipts, maximumReceiptsBytes, maximumReceiptWriters } from "./limits.ts";
import { messageType } from "./message-type.ts";
import { decodeStateVector, encodeStateVector, type StateVector } from "./state-vector.ts";

/**
 * What a device says of one document: its own disk held all of this when it said so. Only the device itself can know
 * that; the digest lets whoever reads it check that both mean the same entries.
 */
export type Receipt = {
  /** Id of the device, 1 to 64 UTF-16 code units. */
  readonly device: string;
  /** Id of the member who held it; absent while nobody had said. */
  readonly member: string | undefined;
  /** The device's own count of what it said of this document, from 1; a higher one replaces a lower. No clock decides. */
  readonly count: number;
  /** Milliseconds since the epoch by the device's clock; for people. */
  readonly at: number;
  readonly stateVector: StateVector;
  /** Of the content below that state vector (content-digest.ts), 32 bytes. */
  readonly digest: Uint8Array;
};

/**
 * The receipts in as few messages as each holds at most {@link maximumReceipts} and as many writers as the largest receipt.
 * None for no receipts.
 */
export function encodeManyReceipts(receipts: readonly Receipt[]): readonly Uint8Array[] {
  const parcels: Receipt[][] = [];
  let writers = 0;
  for (const receipt of receipts) {
    const parcel = parcels.at(-1);
    writers += receipt.stateVector.size;
    if (parcel !== undefined && parcel.length < maximumReceipts && writers <= maximumReceiptWriters) {
      parcel.push(receipt);
    } else {
      parcels.push([receipt]);
      writers = receipt.stateVector.size;
    }
  }
  return parcels.map(encodeReceipts);
}

/** One message (type 102) with receipts of one document. A receipt out of its range is a broken invariant and throws. */
export function encodeReceipts(receipts: readonly Receipt[]): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, messageType.receipts);
  writeReceipts(encoder, receipts);
  return encoding.toUint8Array(encoder);
}

/** The receipts alone, as they are kept on a disk. */
export function encodeKeptReceipts(receipts: readonly Receipt[]): Uint8Array {
  const encoder = encoding.createEncoder();
  writeReceipts(encoder, receipts);
  return encoding.toUint8Array(encoder);
}

/**
 * Reads the message after its type number.
 * @returns undefined when it cannot be read, holds more than {@link maximumReceipts}, or is larger than
 * {@link maximumReceiptsBytes}.
 */
export function readReceipts(decoder: decoding.Decoder): readonly Receipt[] | undefined {
  return decoder.arr.length > maximumReceiptsBytes ? undefined : readAll(decoder);
}

/** Reads what {@link encodeKeptReceipts} wrote; undefined when it is damaged. */
export function decodeKeptReceipts(bytes: Uint8Array): readonly Receipt[] | undefined {
  return readAll(decoding.createDecoder(bytes));
}

function readAll(decoder: decoding.Decoder): readonly Receipt[] | undefined {
  try {
    const count = decoding.readVarUint(decoder);
    if (count > maximumReceipts) return undefined;
    const receipts: Receipt[] = [];
    for (let index = 0; index < count; index++) {
      const receipt = readReceipt(decoder);
      if (receipt === undefined) return undefined;
      receipts.push(receipt);
    }
    return receipts;
  } catch {
    return undefined;
  }
}

function writeReceipts(encoder: encoding.Encoder, receipts: readonly Receipt[]): void {
  encoding.writeVarUint(encoder, receipts.length);
  for (const receipt of receipts) {
    if (!isReceipt(receipt)) throw new Error(`A receipt of the device ${receipt.device} is out of its range.`);
    encoding.writeVarString(encoder, receipt.device);
    encoding.writeVarString(encoder, receipt.member ?? "");
    encoding.writeVarUint(encoder, receipt.count);
    encoding.writeVarUint(encoder, receipt.at);
    encoding.writeVarUint8Array(encoder, encodeStateVector(receipt.stateVector));
    encoding.writeVarUint8Array(encoder, receipt.digest);
  }
}

function readReceipt(decoder: decoding.Decoder): Receipt | undefined {
  const device = decoding.readVarString(decoder);
  const member = decoding.readVarString(decoder) || undefined;
  const count = decoding.readVarUint(decoder);
  const at = decoding.readVarUint(decoder);
  const stateVector = decodeStateVector(decoding.readVarUint8Array(decoder));
  // Copied: the decoder's bytes belong to a message that may be large.
  const digest = decoding.readVarUint8Array(decoder).slice();
  if (stateVector === undefined) return undefined;
  const receipt = { device, member, count, at, stateVector, digest };
  return isReceipt(receipt) ? receipt : undefined;
}

/** Whether all that it says is in its range, so that it can be sent. */
export function isReceipt({ device, member, count, at, stateVector, digest }: Receipt): boolean {
  return (
    device.length >= 1 &&
    device.length <= maximumReceiptName &&
    (member === undefined || member.length <= maximumReceiptName) &&
    Number.isSafeInteger(count) &&
    count >= 1 &&
    Number.isSafeInteger(at) &&
    at >= 0 &&
    stateVector.size <= maximumReceiptWriters &&
    digest.length === digestBytes
  );
}
