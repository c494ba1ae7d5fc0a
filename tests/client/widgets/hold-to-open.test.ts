import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { makeHoldToOpen } from "#client/widgets/hold-to-open.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function button() {
  const said: string[] = [];
  const note = (word: string) => () => void said.push(word);
  const hold = makeHoldToOpen({
    begun: note("begun"),
    broken: note("broken"),
    held: note("held"),
    pressedOtherwise: note("pressed otherwise"),
  });
  return { said, ...hold.handlers, stop: hold.stop };
}
const finger = (x: number, y: number) => ({ button: 0, clientX: x, clientY: y }) as PointerEvent;
const key = (name: string, repeat = false) => new KeyboardEvent("keydown", { key: name, repeat, cancelable: true });

test("a finger that stays for a second opens, one that goes before does not", () => {
  const { said, onPointerDown, onPointerUp } = button();
  onPointerDown(finger(10, 10));
  vi.advanceTimersByTime(999);
  onPointerUp();
  vi.advanceTimersByTime(5000);
  expect(said).toEqual(["begun", "broken"]);
  onPointerDown(finger(10, 10));
  vi.advanceTimersByTime(1000);
  onPointerUp();
  expect(said).toEqual(["begun", "broken", "begun", "held"]);
});

test("a glove may slip a little, but not wander", () => {
  const { said, onPointerDown, onPointerMove } = button();
  onPointerDown(finger(10, 10));
  onPointerMove(finger(30, 20));
  vi.advanceTimersByTime(1000);
  onPointerDown(finger(10, 10));
  onPointerMove(finger(41, 10));
  vi.advanceTimersByTime(1000);
  expect(said).toEqual(["begun", "held", "begun", "broken"]);
});

test.each(["onPointerCancel", "onPointerLeave", "onBlur", "onKeyUp"] as const)("%s breaks it off", (end) => {
  const held = button();
  held.onPointerDown(finger(10, 10));
  held[end]();
  vi.advanceTimersByTime(5000);
  expect(held.said).toEqual(["begun", "broken"]);
});

test.each(["Enter", " "])("the key %j has to be held as long, and presses nothing by itself", (name) => {
  const { said, onKeyDown, onKeyUp } = button();
  const first = key(name);
  onKeyDown(first);
  expect(first.defaultPrevented).toBe(true);
  vi.advanceTimersByTime(600);
  onKeyDown(key(name, true));
  vi.advanceTimersByTime(400);
  onKeyUp();
  expect(said).toEqual(["begun", "held"]);
});

test("another key and another mouse button begin nothing", () => {
  const { said, onKeyDown, onPointerDown } = button();
  onKeyDown(key("a"));
  onPointerDown({ ...finger(10, 10), button: 2 } as PointerEvent);
  vi.advanceTimersByTime(5000);
  expect(said).toEqual([]);
});

test("only a press without pointer and key asks for a confirmation", () => {
  const { said, onClick } = button();
  onClick(new MouseEvent("click", { detail: 1 }));
  expect(said).toEqual([]);
  onClick(new MouseEvent("click", { detail: 0 }));
  expect(said).toEqual(["pressed otherwise"]);
});

test("a button that has gone away opens nothing any more", () => {
  const { said, onPointerDown, stop } = button();
  onPointerDown(finger(10, 10));
  stop();
  vi.advanceTimersByTime(5000);
  expect(said).toEqual(["begun"]);
});
