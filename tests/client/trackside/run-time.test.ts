import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseRunTime } from "#client/trackside/run-time.ts";
import { formatRunTime } from "#client/widgets/format-run-time.ts";

describe("a run's time", () => {
  it.each([
    ["3:45", 225],
    ["3.45", 225],
    ["3,45", 225],
    ["3 45", 225],
    [" 03:45.2 ", 225.2],
    ["3:45,25", 225.25],
    ["0:07", 7],
    ["60:00", 3600],
  ])("reads %j as %d seconds", (text, seconds) => {
    expect(parseRunTime(text)).toBe(seconds);
  });

  it.each(["", "345", "3:5", "3:60", "60:01", "0:00", "-1:00", "3:45x", "1:02:03", "abc"])("refuses %j", (text) => {
    expect(parseRunTime(text)).toBeUndefined();
  });

  it("is read back as it was written, to the thousandth", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3_600_000 }), (thousandths) => {
        expect(parseRunTime(formatRunTime(thousandths / 1000))).toBeCloseTo(thousandths / 1000, 6);
      }),
    );
  });
});
