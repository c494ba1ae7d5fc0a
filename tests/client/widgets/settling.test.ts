import { createRoot, createSignal } from "solid-js";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createSettling } from "#client/widgets/create-settling.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test("a list settles for a moment after its lines have moved, gone or come, and not when it is opened or stays", () => {
  const [keys, setKeys] = createSignal(["a", "b", "c"]);
  const { isSettling, dispose } = createRoot((dispose) => ({ isSettling: createSettling(keys), dispose }));
  expect(isSettling()).toBe(false);
  setKeys(["a", "b", "c"]);
  expect(isSettling()).toBe(false);
  setKeys(["b", "c"]);
  expect(isSettling()).toBe(true);
  vi.advanceTimersByTime(500);
  setKeys(["c", "b"]);
  vi.advanceTimersByTime(500);
  expect(isSettling()).toBe(true);
  vi.advanceTimersByTime(200);
  expect(isSettling()).toBe(false);
  dispose();
});
