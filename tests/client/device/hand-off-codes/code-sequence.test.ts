/** Code sequences: a content as frames, and the content again from enough of them. */
import fc from "fast-check";
import { digest } from "lib0/hash/sha256";
import { describe, expect, test } from "vitest";
import {
  allowedContentBytes,
  type CodeFrame,
  frameBytes,
  payloadBytes,
  readFrame,
  sessionOf,
  writeFrame,
} from "#client/device/hand-off/codes/code-frame.ts";
import { type CodeSequence, createCodeSequence } from "#client/device/hand-off/codes/code-sequence.ts";
import {
  type CodeCollection,
  type CodeOutcome,
  type CodeProblem,
  collectCodes,
} from "#client/device/hand-off/codes/collect-codes.ts";
import { blocksOfFrame, gatherBlocks } from "#client/device/hand-off/codes/fountain.ts";
import { bytesOf, shuffled } from "./seeded.ts";

function sequenceOf(content: Uint8Array): CodeSequence {
  const made = createCodeSequence("answer", content);
  if (!made.ok) throw new Error(made.problem.type);
  return made.sequence;
}

function frameOf(content: Uint8Array, number: number): CodeFrame {
  const reading = readFrame(sequenceOf(content).frame(number));
  if (!reading.ok) throw new Error(`A frame of our own is ${reading.type}.`);
  return reading.frame;
}

/** The outcome of the last of these frames. */
function addAll(collection: CodeCollection, frames: readonly Uint8Array[]): CodeOutcome | undefined {
  return frames.map((frame) => collection.add(frame)).at(-1);
}

/** Frames that are taken, from `first` on and with a third left out at random, until the content is whole. */
function framesNeeded(
  content: Uint8Array,
  first: number,
  seed: number,
): { readonly frames: number; readonly content: Uint8Array } {
  const sequence = sequenceOf(content);
  const collection = collectCodes(["answer"]);
  const shown = Array.from({ length: sequence.blocks * 2 + 60 }, (_, index) => first + index);
  let frames = 0;
  for (const number of shuffled(shown, seed).slice(Math.ceil(shown.length / 3))) {
    frames += 1;
    const outcome = collection.add(sequence.frame(number));
    if (outcome.type === "done") return { frames, content: outcome.content };
    expect(outcome.type).toBe("read");
  }
  throw new Error(`${frames} frames did not suffice for ${sequence.blocks} blocks.`);
}

describe("a sequence of codes", () => {
  test("gives the content again from any frames, in any order, with a third of them dropped", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 * payloadBytes }),
        fc.nat(2 ** 31),
        fc.constantFrom(0, 3, 1000, 2 ** 32 - 400),
        (length, seed, first) => {
          const content = bytesOf(length, seed);
          expect(framesNeeded(content, first, seed).content).toEqual(content);
        },
      ),
      { numRuns: 120 },
    );
  });

  test("needs no more frames than blocks when none is missed, and one when everything fits into it", () => {
    for (const length of [1, payloadBytes, payloadBytes + 1, 40 * payloadBytes]) {
      const content = bytesOf(length, length);
      const sequence = sequenceOf(content);
      expect(sequence.blocks).toBe(Math.ceil(length / payloadBytes));
      const frames = Array.from({ length: sequence.blocks }, (_, number) => sequence.frame(number));
      expect(addAll(collectCodes(["answer"]), frames)).toEqual({ type: "done", kind: "answer", content });
      expect(Math.max(...frames.map((frame) => frame.length))).toBeLessThanOrEqual(frameBytes);
    }
  });

  // MacKay 2005: with e frames more than blocks it fails with a probability of at most 2^-e. Of 400 sequences, 12.5 are
  // expected to fail with 5 more at most; the seeds are fixed, and 25 leaves 3.6 standard deviations.
  test("needs about two mixed frames more than blocks, as the theory of random linear codes says", () => {
    const content = (seed: number): Uint8Array => bytesOf(24 * payloadBytes, seed);
    const extra = Array.from({ length: 400 }, (_, seed) => framesNeeded(content(seed), 1000, seed).frames - 24);
    expect(extra.reduce((sum, frames) => sum + frames, 0) / extra.length).toBeLessThan(2);
    expect(extra.filter((frames) => frames > 5).length).toBeLessThan(25);
  });

  test("comes back from mixed frames alone at the largest size that is allowed", () => {
    const content = bytesOf(allowedContentBytes, 7);
    const { frames, content: again } = framesNeeded(content, 5000, 7);
    expect(sessionOf(again)).toEqual(sessionOf(content));
    expect(frames).toBeLessThan(1024 + 20);
  });

  test("is not made of more than that", () => {
    const made = createCodeSequence("answer", new Uint8Array(allowedContentBytes + 1));
    expect(made.ok ? "made" : made.problem.type).toBe("too large");
  });

  test("tells how many codes were read of those that are needed, and counts none twice", () => {
    const sequence = sequenceOf(bytesOf(20 * payloadBytes, 3));
    const collection = collectCodes(["answer"]);
    expect(collection.progress()).toBeUndefined();
    addAll(collection, [4, 9, 4, 9, 9].map(sequence.frame));
    expect(collection.progress()).toEqual({ read: 2, needed: 20 });
  });
});

describe("a code changes nothing, and tells why, when", () => {
  const content = bytesOf(5 * payloadBytes, 1);
  const sequence = sequenceOf(content);
  const problemOf = (outcome: CodeOutcome): CodeProblem | undefined =>
    outcome.type === "left out" ? outcome.problem : undefined;
  const started = (): CodeCollection => {
    const collection = collectCodes(["answer"]);
    collection.add(sequence.frame(0));
    return collection;
  };
  const cases: readonly (readonly [string, Uint8Array, CodeProblem])[] = [
    ["it is empty", new Uint8Array(), { type: "unreadable", as: "foreign" }],
    [
      "it is a link on a sticker",
      new TextEncoder().encode("https://example.org/"),
      { type: "unreadable", as: "foreign" },
    ],
    ["it belongs to another sequence", sequenceOf(bytesOf(999, 2)).frame(1), { type: "another hand-off" }],
    ["it is of a newer version", withByte(sequence.frame(1), 2, 2), { type: "unreadable", as: "newer version" }],
    ["it is of an unknown kind", withByte(sequence.frame(1), 3, 250), { type: "unreadable", as: "damaged" }],
    ["it ends early", sequence.frame(1).subarray(0, 300), { type: "unreadable", as: "damaged" }],
  ];
  test.each(cases)("%s", (_, bytes, expected) => {
    const collection = started();
    expect(problemOf(collection.add(bytes))).toEqual(expected);
    expect(collection.progress()).toEqual({ read: 1, needed: 5 });
    expect(addAll(collection, [1, 2, 3, 4].map(sequence.frame))).toEqual({ type: "done", kind: "answer", content });
  });

  test("it is of another kind than the one that is waited for", () => {
    const made = createCodeSequence("holdings", content);
    expect(made.ok && problemOf(collectCodes(["answer", "file"]).add(made.sequence.frame(0)))).toEqual({
      type: "unwanted",
      kind: "holdings",
    });
  });

  test("any of its bits was misread", () => {
    const frame = sequence.frame(8);
    for (let bit = 0; bit < frame.length * 8; bit++) {
      const misread = frame.slice();
      misread[bit >> 3] = (misread[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect(readFrame(misread).ok).toBe(false);
    }
  });

  test("a forged frame spoils the whole: nothing is given out, and reading starts again", () => {
    const collection = started();
    collection.add(writeFrame({ ...frameOf(content, 1), payload: bytesOf(payloadBytes, 9) }));
    const spoilt = addAll(collection, [2, 3, 4].map(sequence.frame));
    expect(spoilt && problemOf(spoilt)).toEqual({ type: "no fit" });
    expect(addAll(collection, [0, 1, 2, 3, 4].map(sequence.frame))).toMatchObject({ type: "done", content });
  });
});

describe("hostile codes", () => {
  test("of any bytes are left out, never thrown at", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 500 }), (bytes) => {
        expect(collectCodes(["answer"]).add(bytes).type).toBe("left out");
        expect(collectCodes(["answer"]).add(signed(new Uint8Array([0xb5, 0x71, 1, ...bytes]))).type).toMatch(/./);
      }),
      { numRuns: 2000 },
    );
  });

  test("with counts and lengths that do not agree are left out before anything is set aside for them", () => {
    fc.assert(
      fc.property(
        fc.nat(65535),
        fc.nat(2 ** 32 - 1),
        fc.nat(2 ** 32 - 1),
        fc.uint8Array({ minLength: 1, maxLength: 500 }),
        (blocks, length, number, payload) => {
          const bytes = writeFrame({ kind: "answer", session: bytesOf(8, 1), blocks, length, number, payload });
          const isPossible =
            blocks >= 1 &&
            blocks <= 1024 &&
            payload.length <= payloadBytes &&
            Math.ceil(length / payload.length) === blocks;
          expect(readFrame(bytes).ok).toBe(isPossible);
          collectCodes(["answer"]).add(bytes);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

test("a set of blocks is never empty, so that no frame says nothing", () => {
  for (let number = 0; number < 300; number++) {
    for (const blocks of [1, 2, 3, 33]) {
      expect(gatherBlocks(blocks, 1).add(blocksOfFrame(bytesOf(8, 5), number, blocks), new Uint8Array(1))).toBe(true);
    }
  }
});

function withByte(frame: Uint8Array, index: number, value: number): Uint8Array {
  const changed = frame.slice(0, -4);
  changed[index] = value;
  return signed(changed);
}

/** With a true checksum behind it. */
function signed(bytes: Uint8Array): Uint8Array {
  return new Uint8Array([...bytes, ...digest(bytes).slice(0, 4)]);
}
