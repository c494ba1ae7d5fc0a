import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { makeHoldRepeat } from "#client/widgets/hold-repeat.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function button() {
  let acts = 0;
  const hold = makeHoldRepeat(() => {
    acts += 1;
  });
  return { acts: () => acts, hold };
}
const pointer = (x: number, y: number, which = 0) => ({ button: which, clientX: x, clientY: y }) as PointerEvent;

test("a press acts once, and when it is let go", () => {
  const { acts, hold } = button();
  hold.onPointerDown(pointer(5, 5));
  vi.advanceTimersByTime(399);
  expect(acts()).toBe(0);
  hold.onPointerUp();
  vi.advanceTimersByTime(5000);
  expect(acts()).toBe(1);
});

test("held for 400 ms it begins to repeat, until it is let go", () => {
  const { acts, hold } = button();
  hold.onPointerDown(pointer(5, 5));
  vi.advanceTimersByTime(400);
  expect(acts()).toBe(1);
  vi.advanceTimersByTime(240);
  expect(acts()).toBe(3);
  hold.onPointerUp();
  vi.advanceTimersByTime(5000);
  expect(acts()).toBe(3);
});

test("9 px are a tremble, 10 px are a scroll, which does nothing, not even when it is let go", () => {
  const { acts, hold } = button();
  hold.onPointerDown(pointer(5, 5));
  hold.onPointerMove(pointer(5, 14));
  hold.onPointerUp();
  expect(acts()).toBe(1);
  hold.onPointerDown(pointer(5, 5));
  hold.onPointerMove(pointer(5, 15));
  vi.advanceTimersByTime(5000);
  hold.onPointerUp();
  expect(acts()).toBe(1);
});

test.each(["onPointerCancel", "onPointerLeave", "stop"] as const)("%s ends it without an act", (end) => {
  const { acts, hold } = button();
  hold.onPointerDown(pointer(5, 5));
  hold[end]();
  vi.advanceTimersByTime(5000);
  hold.onPointerUp();
  expect(acts()).toBe(0);
});

test("a scroll ends a repeat that is under way", () => {
  const { acts, hold } = button();
  hold.onPointerDown(pointer(5, 5));
  vi.advanceTimersByTime(520);
  hold.onPointerMove(pointer(40, 5));
  vi.advanceTimersByTime(5000);
  hold.onPointerUp();
  expect(acts()).toBe(2);
});

test("the other mouse buttons do nothing, and the click that follows a pointer is not counted twice", () => {
  const { acts, hold } = button();
  hold.onPointerDown(pointer(5, 5, 2));
  hold.onPointerUp();
  expect(acts()).toBe(0);
  hold.onPointerDown(pointer(5, 5));
  hold.onPointerUp();
  hold.onClick(new MouseEvent("click", { detail: 1 }));
  expect(acts()).toBe(1);
});

test("a click without a pointer acts: keys and assistive technology press so", () => {
  const { acts, hold } = button();
  hold.onClick(new MouseEvent("click", { detail: 0 }));
  expect(acts()).toBe(1);
});
