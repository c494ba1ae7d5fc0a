import { describe, expect, test } from "vitest";
import { remaining, serviceState } from "#core/service/service-state.ts";

describe("a work", () => {
  // The intervals of 50 and 200 hours are common practice, no source; due from 90 % on is the tool's own default.
  test.each([
    [0, 50, "in use"],
    [44.9, 50, "in use"],
    [45, 50, "due"],
    [50, 50, "due"],
    [50.1, 50, "overdue"],
    [179.9, 200, "in use"],
    [180, 200, "due"],
    [200, 200, "due"],
    [200.1, 200, "overdue"],
  ] as const)("after %f of %f hours is %s", (used, limit, state) => {
    expect(serviceState(used, limit, 0.9)).toBe(state);
  });

  test("is due at its limit however the hours were added up", () => {
    const used = Array.from({ length: 750 }, () => 4 / 60).reduce((sum, hours) => sum + hours, 0);
    expect(used).not.toBe(50);
    expect(serviceState(used, 50, 0.9)).toBe("due");
  });
});

describe("what is left", () => {
  test("is counted in whole runs and whole sessions that stay below it", () => {
    expect(remaining(44, 45, { hoursPerRun: 0.3, runsPerSession: 2 })).toEqual({ runs: 3, sessions: 1 });
  });

  test("counts the run that ends exactly there", () => {
    // In floating point 0.3 h hold only 2.9999999999999996 runs of 0.1 h.
    expect(remaining(0, 0.3, { hoursPerRun: 0.1, runsPerSession: 3 })).toEqual({ runs: 3, sessions: 1 });
  });

  test("is nothing once it is reached, and no number of sessions while nobody has ridden", () => {
    expect(remaining(46, 45, { hoursPerRun: 0.1, runsPerSession: undefined })).toEqual({
      runs: 0,
      sessions: undefined,
    });
  });
});
