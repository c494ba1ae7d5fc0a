import { describe, expect, test } from "vitest";
import { daysAfter, daysBetween, isDay, isTimeOfDay } from "#client/pit/weekend/calendar-day.ts";
import { freeIdentifier, identifierOfName, weekendIdentifier } from "#client/pit/weekend/identifier-of-name.ts";
import { isIdentifier } from "#core/team/identifier.ts";

const never = () => false;

describe("identifiers of names", () => {
  test.each([
    ["Kestrel Ridge", "kestrel-ridge"],
    ["  Été à la Crête! ", "ete-a-la-crete"],
    ["Øst / 2", "st-2"],
    ["山", "venue"],
    ["--", "venue"],
  ])("%j is %j", (name, identifier) => {
    expect(identifierOfName(name, "venue")).toBe(identifier);
  });

  test("a name as long as it may be leaves room for year and count", () => {
    const taken = new Set<string>();
    for (let count = 0; count < 120; count += 1) {
      const identifier = weekendIdentifier("x".repeat(80), "2027", (other) => taken.has(other));
      expect(isIdentifier(identifier)).toBe(true);
      expect(taken.has(identifier)).toBe(false);
      taken.add(identifier);
    }
  });

  test("a year that the name has already is not said twice", () => {
    expect(weekendIdentifier("Spring Cup 2027", "2027", never)).toBe("spring-cup-2027");
    expect(weekendIdentifier("Spring Cup", "2027", never)).toBe("spring-cup-2027");
  });

  test("the first count that is free is taken", () => {
    expect(freeIdentifier("race", (other) => ["race", "race-2"].includes(other))).toBe("race-3");
  });
});

describe("days", () => {
  test.each(["2026-05-29", "2028-02-29", "2026-12-31"])("%s is one", (text) => expect(isDay(text)).toBe(true));
  test.each(["2026-02-29", "2026-13-01", "0202-05-29", "2026-5-9", "29.05.2026", ""])("%j is none", (text) => {
    expect(isDay(text)).toBe(false);
  });

  test("are counted over months, leap days and years", () => {
    expect(daysAfter("2028-02-28", 2)).toBe("2028-03-01");
    expect(daysAfter("2026-12-31", 1)).toBe("2027-01-01");
    expect(daysBetween("2026-12-31", "2027-03-01")).toBe(60);
    expect(daysBetween("2026-05-29", "2026-05-27")).toBe(-2);
  });

  test("times of day have hours to 23 and minutes to 59", () => {
    expect(["00:00", "23:59", "10:30:15"].map(isTimeOfDay)).toEqual([true, true, true]);
    expect(["24:00", "10:60", "9:30", ""].map(isTimeOfDay)).toEqual([false, false, false, false]);
  });
});
