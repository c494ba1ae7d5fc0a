/** The pace of a sequence of codes on the screen. */
import { createRoot } from "solid-js";
import { describe, expect, test } from "vitest";
import { type CodeSequence, createCodeSequence } from "#client/device/hand-off/codes/code-sequence.ts";
import { createCodeShow } from "#client/shell/codes/create-code-show.ts";
import { bytesOf } from "#tests/client/device/hand-off-codes/seeded.ts";

function sequenceOf(bytes: number): CodeSequence {
  const made = createCodeSequence("answer", bytesOf(bytes, 1));
  if (!made.ok) throw new Error(made.problem.type);
  return made.sequence;
}

/** A show whose time passes when `tick` is called. */
function showing(sequence: CodeSequence, isCalm = false) {
  const paces: number[] = [];
  let step: (() => void) | undefined;
  const every = (milliseconds: number, next: () => void) => {
    paces.push(milliseconds);
    step = next;
    return () => {
      step = undefined;
    };
  };
  return createRoot((dispose) => ({
    show: createCodeShow(sequence, { isCalm, every }),
    paces,
    tick: () => step?.(),
    isTimed: () => step !== undefined,
    dispose,
  }));
}

describe("codes on the screen", () => {
  test("follow each other five times a second: less than three flashes a second", () => {
    const { show, paces, tick } = showing(sequenceOf(4000));
    expect([show.number(), show.isPlaying(), paces]).toEqual([1, true, [200]]);
    for (let count = 0; count < 30; count++) tick();
    expect(show.number()).toBe(31);
  });

  test("follow each other once a second for those who want less movement", () => {
    expect(showing(sequenceOf(4000), true).paces).toEqual([1000]);
  });

  test("stand when paused, go on one by one by hand, and then by themselves again", () => {
    const { show, tick, isTimed } = showing(sequenceOf(4000));
    show.pause();
    expect(isTimed()).toBe(false);
    show.next();
    show.next();
    expect([show.number(), show.isPlaying()]).toEqual([3, false]);
    show.play();
    tick();
    expect(show.number()).toBe(4);
    show.next();
    expect(isTimed()).toBe(false);
  });

  test("stand when there is one only, and end with the screen", () => {
    expect(showing(sequenceOf(200)).isTimed()).toBe(false);
    const { dispose, isTimed } = showing(sequenceOf(4000));
    dispose();
    expect(isTimed()).toBe(false);
  });

  test("say how long they take, in seconds and in minutes", () => {
    expect(showing(sequenceOf(20 * 386)).show.duration).toBe("6 seconds or more");
    expect(showing(sequenceOf(1000 * 386)).show.duration).toBe("5 minutes or more");
  });
});
