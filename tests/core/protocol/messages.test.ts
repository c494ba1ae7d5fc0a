import fc from "fast-check";
import * as decoding from "lib0/decoding";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import {
  digestBytes,
  encodeDurableAcknowledgement,
  readDurableAcknowledgement,
} from "#core/protocol/durable-acknowledgement.ts";
import { maximumRefusalSentence } from "#core/protocol/limits.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { encodeRefusal, readRefusal } from "#core/protocol/refusal.ts";
import { coversStateVector, decodeStateVector, encodeStateVector } from "#core/protocol/state-vector.ts";

const clocks = fc.uniqueArray(fc.tuple(fc.nat({ max: 2 ** 32 - 1 }), fc.nat({ max: 1_000_000 })), {
  selector: ([client]) => client,
  maxLength: 20,
});

const digest = Uint8Array.from({ length: digestBytes }, (_, index) => 255 - index);

/** After the type number, as a provider hands a message over. */
function afterType(message: Uint8Array): { type: number; decoder: decoding.Decoder } {
  const decoder = decoding.createDecoder(message);
  return { type: decoding.readVarUint(decoder), decoder };
}

describe("the durable acknowledgement", () => {
  it("P9 carries any state vector that Yjs writes", () => {
    fc.assert(
      fc.property(clocks, (pairs) => {
        const { type, decoder } = afterType(encodeDurableAcknowledgement(Y.encodeStateVector(new Map(pairs)), digest));
        expect(type).toBe(messageType.durableAcknowledgement);
        expect(readDurableAcknowledgement(decoder)).toEqual({ stateVector: new Map(pairs), digest });
        expect(decoding.hasContent(decoder)).toBe(false);
      }),
    );
  });

  it("is read as nothing when it is damaged, and never throws", () => {
    const message = encodeDurableAcknowledgement(Y.encodeStateVector(new Map([[7, 300]])), digest);
    for (let length = 1; length < message.length; length++) {
      if (length === endOfStateVector(message)) continue;
      expect(readDurableAcknowledgement(afterType(message.slice(0, length)).decoder)).toBeUndefined();
    }
  });

  it("of a server before version 3 comes without a digest", () => {
    const message = encodeDurableAcknowledgement(Y.encodeStateVector(new Map([[7, 300]])), digest);
    const { decoder } = afterType(message.slice(0, endOfStateVector(message)));
    expect(readDurableAcknowledgement(decoder)).toEqual({ stateVector: new Map([[7, 300]]), digest: undefined });
  });
});

/** Bytes of an acknowledgement of the versions before 3, which end with the state vector. */
function endOfStateVector(message: Uint8Array): number {
  const decoder = decoding.createDecoder(message);
  decoding.readVarUint(decoder);
  decoding.readVarUint8Array(decoder);
  return decoder.pos;
}

describe("a state vector", () => {
  it("is written as Yjs reads it", () => {
    fc.assert(
      fc.property(clocks, (pairs) => {
        expect(Y.decodeStateVector(encodeStateVector(new Map(pairs)))).toEqual(new Map(pairs));
      }),
    );
  });

  it("is read exactly as Yjs reads it", () => {
    fc.assert(
      fc.property(clocks, (pairs) => {
        const bytes = Y.encodeStateVector(new Map(pairs));
        expect(decodeStateVector(bytes)).toEqual(Y.decodeStateVector(bytes));
      }),
    );
  });

  it("is undefined for any bytes that are none, in time that grows with the bytes alone", () => {
    expect(decodeStateVector(new Uint8Array())).toBeUndefined();
    expect(decodeStateVector(new Uint8Array([255, 255, 255, 255, 15, 1, 1]))).toBeUndefined();
    expect(decodeStateVector(new Uint8Array([1, 7]))).toBeUndefined();
    expect(decodeStateVector(new Uint8Array([0, 0]))).toBeUndefined();
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 30 }), (bytes) => {
        expect(() => decodeStateVector(bytes)).not.toThrow();
      }),
    );
  });

  it.each([
    ["the same", [[1, 5]], [[1, 5]], true],
    ["less of one writer", [[1, 5]], [[1, 6]], false],
    ["more of one writer", [[1, 6]], [[1, 5]], true],
    ["a writer that is not held", [[1, 5]], [[2, 1]], false],
    ["nothing of a writer that is not held", [[1, 5]], [[2, 0]], true],
    ["nothing", [], [], true],
  ] as [string, [number, number][], [number, number][], boolean][])(
    "covers another one only when it holds as much of every writer: %s",
    (_what, held, wanted, covers) => {
      expect(coversStateVector(new Map(held), new Map(wanted))).toBe(covers);
    },
  );
});

describe("a refusal", () => {
  it("P16 carries a word and a sentence, in any script", () => {
    const refusal = { type: "bad record", sentence: "Die Änderung ist größer als erlaubt 🚲." };
    const { type, decoder } = afterType(encodeRefusal(refusal));
    expect(type).toBe(messageType.refusal);
    expect(readRefusal(decoder)).toEqual(refusal);
  });

  it("P16 cuts a sentence that is too long", () => {
    const { decoder } = afterType(encodeRefusal({ type: "bad record", sentence: "x".repeat(10_000) }));
    expect(readRefusal(decoder)?.sentence).toHaveLength(maximumRefusalSentence);
  });

  it("cannot be written without a sentence", () => {
    expect(() => encodeRefusal({ type: "bad record", sentence: "" })).toThrow();
  });

  it("is read as nothing when it is damaged or no refusal, and never throws", () => {
    const text = (content: string) => new Uint8Array([content.length, ...new TextEncoder().encode(content)]);
    for (const content of [
      "",
      "{",
      "null",
      "7",
      '{"type":"a"}',
      '{"type":1,"sentence":"b"}',
      '{"type":"","sentence":"b"}',
    ]) {
      expect(readRefusal(decoding.createDecoder(text(content)))).toBeUndefined();
    }
    expect(readRefusal(decoding.createDecoder(new Uint8Array([200])))).toBeUndefined();
  });
});
