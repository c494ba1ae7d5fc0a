/**
 * Every unit against a general-purpose library of units (mathjs), which carries
 * its own factors: two independent tables that agree to the last digits.
 */
import { unit as libraryUnit } from "mathjs";
import { describe, expect, test } from "vitest";
import { dimensionOf, fromSi, toSi, type Unit, units } from "#core/quantity/unit.ts";

/** What the library calls our unit, and the SI unit it is compared in. Counts have no unit there. */
const names: Readonly<Partial<Record<Unit, readonly [string, string]>>> = {
  psi: ["psi", "Pa"],
  bar: ["bar", "Pa"],
  kPa: ["kPa", "Pa"],
  "°C": ["degC", "K"],
  "°F": ["degF", "K"],
  m: ["m", "m"],
  mm: ["mm", "m"],
  in: ["in", "m"],
  kg: ["kg", "kg"],
  lb: ["lb", "kg"],
  "°": ["deg", "rad"],
  ml: ["ml", "m^3"],
  "mm²": ["mm^2", "m^2"],
  "N/mm": ["N/mm", "N/m"],
  "lbf/in": ["lbf/in", "N/m"],
};

/** The library rounds its factors of psi and lbf to eight or more digits. */
const RELATIVE = 2e-8;

describe("units against mathjs", () => {
  test("every unit that is no count is compared", () => {
    const counts = ["clicks", "turns", "spacers"];
    expect(units.filter((unit) => names[unit] === undefined && !counts.includes(dimensionOf(unit)))).toEqual([]);
  });

  test.each(Object.entries(names) as [Unit, readonly [string, string]][])("%s", (unit, [theirs, si]) => {
    for (const value of [0.5, 1, 37, 250]) {
      const expected = libraryUnit(value, theirs).toNumber(si);
      expect(Math.abs(toSi({ value, unit }) / expected - 1)).toBeLessThan(RELATIVE);
      expect(Math.abs(fromSi(expected, unit).value / value - 1)).toBeLessThan(RELATIVE * 10);
    }
  });
});
