import { describe, expect, test } from "vitest";
import { checkSetup, checkValue, describeLimitProblem } from "#core/advice/limits.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { riderBike, setupValues } from "#tests/builders/bike.ts";

const bike = riderBike();
const table: readonly (readonly [string, AdjusterPath, TypedQuantity, string])[] = [
  [
    "a pressure above the part's maximum",
    "fork.main-pressure",
    { value: 130, unit: "psi" },
    "Fork main pressure: 130 psi is outside the part's range of 20 psi to 110 psi.",
  ],
  [
    "a pressure above it in another unit",
    "fork.main-pressure",
    { value: 8, unit: "bar" },
    "Fork main pressure: 8 bar is outside the part's range of 20 psi to 110 psi.",
  ],
  [
    "a unit of something else",
    "fork.rebound",
    { value: 8, unit: "psi" },
    "Fork rebound: 8 psi is not measured in clicks.",
  ],
  [
    "half a click",
    "fork.rebound",
    { value: 7.5, unit: "clicks" },
    "Fork rebound: 7.5 clicks cannot be set; the adjuster moves in steps of 1 click.",
  ],
  [
    "an adjuster that the bike does not have",
    "shock.main-pressure",
    { value: 180, unit: "psi" },
    "Shock main pressure: the bike Alder one has no such adjuster.",
  ],
  [
    "more than the rim is marked for",
    "rear-tyre.tyre-pressure",
    { value: 36, unit: "psi" },
    "Rear tyre pressure: 36 psi is above the 35 psi that is marked on the rim.",
  ],
  [
    "a secondary chamber too near the main one",
    "fork.secondary-pressure",
    { value: 64, unit: "psi" },
    "Fork secondary pressure: the secondary chamber (64 psi) must stay at least 5 psi above the main chamber (60 psi).",
  ],
  [
    "a main chamber too near the secondary one",
    "fork.main-pressure",
    { value: 106, unit: "psi" },
    "Fork main pressure: the secondary chamber (110 psi) must stay at least 5 psi above the main chamber (106 psi).",
  ],
  [
    "no number",
    "fork.main-pressure",
    { value: Number.NaN, unit: "psi" },
    "Fork main pressure: NaN psi is outside the part's range of 20 psi to 110 psi.",
  ],
];

describe("a limit refuses with a sentence", () => {
  test.each(table)("%s", (_name, path, value, sentence) => {
    const problem = checkValue(bike, path, value, setupValues);
    expect(problem && describeLimitProblem(problem)).toBe(sentence);
  });
});

test("values within every limit are taken, also exactly at its edge", () => {
  expect(checkSetup(bike, setupValues)).toEqual([]);
  expect(checkValue(bike, "fork.secondary-pressure", { value: 65, unit: "psi" }, setupValues)).toBeUndefined();
  expect(checkValue(bike, "rear-tyre.tyre-pressure", { value: 35, unit: "psi" }, setupValues)).toBeUndefined();
});

test("a value in another unit is judged by what it is, not by the adjuster's step", () => {
  expect(checkValue(bike, "fork.main-pressure", { value: 4.27, unit: "bar" }, setupValues)).toBeUndefined();
});
