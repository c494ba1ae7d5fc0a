import { createRoot } from "solid-js";
import { expect, test } from "vitest";
import { createWallClock, wallClockAt } from "#client/widgets/create-wall-clock.ts";

/** A source whose alarm rings when the test says so. */
function heldSource(start: number) {
  let alarm: { readonly at: number; readonly act: () => void } | undefined;
  let now = start;
  let wake = (): void => {};
  return {
    now: () => now,
    after: (ms: number, act: () => void) => {
      const own = { at: now + ms, act };
      alarm = own;
      return () => {
        if (alarm === own) alarm = undefined;
      };
    },
    onReturn: (act: () => void) => {
      wake = act;
      return () => {
        wake = () => {};
      };
    },
    ring: () => {
      const due = alarm;
      if (!due) throw new Error("No alarm is set.");
      now = due.at;
      due.act();
    },
    sleepUntil: (moment: number) => {
      now = moment;
      wake();
    },
    isSet: () => alarm !== undefined,
  };
}

test("the clock goes on at every full minute, is right after a sleep, and stops with its owner", () => {
  const start = Date.parse("2026-05-29T08:34:40Z");
  const source = heldSource(start);
  createRoot((dispose) => {
    const now = createWallClock(source);
    expect(now()).toBe(wallClockAt(start));
    source.ring();
    expect(now()).toBe(wallClockAt(start + 20_000));
    source.ring();
    expect(now()).toBe(wallClockAt(start + 80_000));
    source.sleepUntil(start + 3_600_000);
    expect(now()).toBe(wallClockAt(start + 3_600_000));
    expect(source.isSet()).toBe(true);
    dispose();
    expect(source.isSet()).toBe(false);
  });
});

test("the wall clock reads what a clock at this place shows", () => {
  const moment = Date.parse("2026-05-29T08:34:40Z");
  const shown = new Date(moment);
  expect(new Date(wallClockAt(moment)).getUTCHours()).toBe(shown.getHours());
  expect(new Date(wallClockAt(moment)).getUTCMinutes()).toBe(shown.getMinutes());
});
