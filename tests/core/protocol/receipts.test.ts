import fc from "fast-check";
import * as decoding from "lib0/decoding";
import { describe, expect, it } from "vitest";
import { maximumReceipts } from "#core/protocol/limits.ts";
import { messageType } from "#core/protocol/message-type.ts";
import {
  decodeKeptReceipts,
  encodeKeptReceipts,
  encodeReceipts,
  type Receipt,
  readReceipts,
} from "#core/protocol/receipt.ts";
import { createReceiptBook } from "#core/protocol/receipt-book.ts";

const digest = new Uint8Array(32).fill(7);

function receipt(device: string, count: number, clock = count): Receipt {
  return { device, member: "kim", count, at: 1000, stateVector: new Map([[5, clock]]), digest };
}

const anyReceipt = fc.record({
  device: fc.string({ minLength: 1, maxLength: 64 }),
  member: fc.option(fc.string({ minLength: 1, maxLength: 64 }), { nil: undefined }),
  count: fc.integer({ min: 1, max: Number.MAX_SAFE_INTEGER }),
  at: fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER }),
  stateVector: fc
    .array(fc.tuple(fc.nat({ max: 2 ** 32 - 1 }), fc.nat()), { maxLength: 10 })
    .map((pairs): ReadonlyMap<number, number> => new Map(pairs)),
  digest: fc.uint8Array({ minLength: 32, maxLength: 32 }),
});

describe("receipts", () => {
  it("are read as they were written, on the socket and from the disk", () => {
    fc.assert(
      fc.property(fc.array(anyReceipt, { maxLength: 5 }), (receipts) => {
        const decoder = decoding.createDecoder(encodeReceipts(receipts));
        expect(decoding.readVarUint(decoder)).toBe(messageType.receipts);
        expect(readReceipts(decoder)).toEqual(receipts);
        expect(decodeKeptReceipts(encodeKeptReceipts(receipts))).toEqual(receipts);
      }),
    );
  });

  it("that are cut short anywhere are read as nothing, and never throw", () => {
    const bytes = encodeKeptReceipts([receipt("phone", 3)]);
    for (let length = 0; length < bytes.length; length++) {
      expect(decodeKeptReceipts(bytes.slice(0, length))).toBeUndefined();
    }
  });

  it.each([
    ["no device", { device: "" }],
    ["a device with too long a name", { device: "d".repeat(65) }],
    ["a member with too long a name", { member: "m".repeat(65) }],
    ["a count of 0", { count: 0 }],
    ["a broken count", { count: 1.5 }],
    ["a time before the epoch", { at: -1 }],
    ["a digest that is cut short", { digest: digest.slice(1) }],
  ])("cannot be written with %s", (_what, fault) => {
    expect(() => encodeReceipts([{ ...receipt("phone", 1), ...fault }])).toThrow("out of its range");
  });

  it("are read as nothing when they are too many, before any of them is read", () => {
    const many = Array.from({ length: maximumReceipts + 1 }, (_, index) => receipt(`phone-${index}`, 1));
    expect(decodeKeptReceipts(encodeKeptReceipts(many))).toBeUndefined();
    expect(decodeKeptReceipts(new Uint8Array([255, 255, 255, 255, 15]))).toBeUndefined();
  });
});

describe("a book of receipts", () => {
  it("keeps the newest of each device by the device's own count, in whatever order they come", () => {
    const receipts = [receipt("phone", 1), receipt("phone", 2), receipt("phone", 3), receipt("laptop", 1)];
    fc.assert(
      fc.property(fc.shuffledSubarray(receipts, { minLength: receipts.length }), (order) => {
        const book = createReceiptBook();
        for (const one of order) book.take([one]);
        expect(book.of("phone")).toEqual(receipt("phone", 3));
        expect(book.all()).toHaveLength(2);
      }),
    );
  });

  it("tells what it took, and what it knows that is newer", () => {
    const book = createReceiptBook();
    expect(book.take([receipt("phone", 2)]).taken).toEqual([receipt("phone", 2)]);
    expect(book.take([receipt("phone", 2)])).toEqual({ taken: [], newerKnown: [], forgotten: [] });
    expect(book.take([receipt("phone", 1), receipt("laptop", 1)])).toEqual({
      taken: [receipt("laptop", 1)],
      newerKnown: [receipt("phone", 2)],
      forgotten: [],
    });
  });

  it("P31 keeps the same of two with one count, in whatever order they come: a device died before it had kept its count", () => {
    const first = { ...receipt("phone", 3, 9), at: 1000 };
    const second = { ...receipt("phone", 3, 2), at: 2000 };
    const atOnce = { ...second, member: "lou" };
    for (const [one, other] of [[first, second] as const, [first, atOnce] as const, [second, atOnce] as const]) {
      const [book, another] = [createReceiptBook(), createReceiptBook()];
      book.take([one]);
      another.take([other]);
      const { taken, newerKnown } = book.take([other]);
      expect(taken.length + newerKnown.length).toBe(1);
      another.take([one]);
      expect(book.all()).toEqual(another.all());
      expect(book.take(book.all())).toEqual({ taken: [], newerKnown: [], forgotten: [] });
    }
    const book = createReceiptBook();
    book.take([second, first]);
    expect(book.of("phone")).toEqual(second);
  });

  it("takes a smaller claim when the device's own count is higher: its storage was set back", () => {
    const book = createReceiptBook();
    book.take([receipt("phone", 4, 9)]);
    book.take([receipt("phone", 5, 2)]);
    expect(book.of("phone")?.stateVector.get(5)).toBe(2);
  });

  it("lets the device go that was silent longest when there are too many", () => {
    const book = createReceiptBook();
    for (let index = 0; index < maximumReceipts; index++) book.take([receipt(`phone-${index}`, 1)]);
    book.take([receipt("phone-0", 2)]);
    book.take([receipt("one more", 1)]);
    expect(book.all()).toHaveLength(maximumReceipts);
    expect(book.of("phone-0")).toBeDefined();
    expect(book.of("phone-1")).toBeUndefined();
  });
});
