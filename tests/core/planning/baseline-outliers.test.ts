import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { baselineOutliers, LEAST_RIDERS } from "#core/planning/baseline-outliers.ts";
import { baselineMatrix } from "#core/planning/baseline-review.ts";
import { modifiedZScores } from "#core/planning/modified-z-scores.ts";
import type { Baseline } from "#core/team/baseline.ts";
import type { Part } from "#core/team/part.ts";
import { baselineKind, bikeKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { baseline, oneChamberFork, riderBike, setupValues, twoChamberFork } from "#tests/builders/bike.ts";
import { teamLedger, written } from "#tests/builders/team-ledger.ts";

interface Mate {
  readonly kilograms: number;
  readonly psi: number;
  readonly fork?: Part;
  readonly changes?: Partial<Baseline>;
}

/** The outliers among riders r0, r1, … of whom each has one baseline, for wet. */
function outliersOf(mates: readonly Mate[]) {
  const { ledger, writerFor } = teamLedger();
  const mia = writerFor("mia");
  for (const [index, { kilograms, psi, fork, changes }] of mates.entries()) {
    const { rider, bike } = riderBike({ massKg: kilograms });
    const [riderId, bikeId, forkId] = [`r${index}`, `b${index}`, `f${index}`];
    written(mia.set(partKind, forkId, fork ?? twoChamberFork));
    written(mia.set(bikeKind, bikeId, { ...bike, rider: riderId, parts: { ...bike.parts, fork: forkId } }));
    written(mia.set(riderKind, riderId, { ...rider, bike: bikeId }));
    const onlyFork = { "fork.main-pressure": { value: psi, unit: "psi" } } as const;
    const mass = { value: kilograms, unit: "kg" } as const;
    written(
      mia.set(baselineKind, `${riderId}/wet`, { ...baseline(), values: onlyFork, bike: bikeId, mass, ...changes }),
    );
  }
  return baselineOutliers(ledger, baselineMatrix(ledger));
}

/** About 0.75 psi for each kilogram, as springs scatter by taste. */
const usual: readonly Mate[] = [
  { kilograms: 70, psi: 53 },
  { kilograms: 76, psi: 56 },
  { kilograms: 80, psi: 60 },
  { kilograms: 84, psi: 64 },
  { kilograms: 90, psi: 67 },
];

describe("baselines far from those of the team mates", () => {
  test("are none where all follow the mass, however light and heavy the riders are", () => {
    expect(outliersOf(usual)).toEqual([]);
    expect(outliersOf([...usual, { kilograms: 110, psi: 82 }])).toEqual([]);
  });

  test.each([
    ["high", 85],
    ["low", 38],
  ] as const)("are named with the numbers: %s", (side, psi) => {
    const [outlier, ...others] = outliersOf([...usual, { kilograms: 80, psi }]);
    expect(others).toEqual([]);
    expect(outlier).toMatchObject({ riderId: "r5", type: "wet", path: "fork.main-pressure", riders: 6, side });
    expect(outlier?.perKilogram.unit).toBe("psi");
    expect(outlier?.perKilogram.value).toBeCloseTo(psi / 80, 6);
    expect(outlier?.median.value).toBeCloseTo(0.75, 1);
  });

  test("are not claimed among fewer than five riders", () => {
    const few = [...usual.slice(0, LEAST_RIDERS - 2), { kilograms: 80, psi: 100 }];
    expect(outliersOf(few)).toEqual([]);
    expect(outliersOf([...few, usual[4] as Mate])).toHaveLength(1);
  });

  test("are looked for among the same kind of part only", () => {
    expect(outliersOf([...usual, { kilograms: 80, psi: 100, fork: oneChamberFork }])).toEqual([]);
  });

  test("are judged by the mass that the baseline was found with", () => {
    const lighterThen = { changes: { mass: { value: 53, unit: "kg" } } } as const;
    expect(outliersOf([...usual, { kilograms: 80, psi: 40, ...lighterThen }])).toEqual([]);
    expect(outliersOf([...usual, { kilograms: 80, psi: 40 }])).toHaveLength(1);
  });

  test("are not made by the cold: a pressure is compared as it would read in the same surroundings", () => {
    const inTheCold = { temperature: { value: -10, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
    // 60 psi at 20 °C reads 52.4 psi at -10 °C.
    expect(outliersOf([...usual, { kilograms: 80, psi: 52.4, changes: { heldAt: inTheCold } }])).toEqual([]);
    expect(outliersOf([...usual, { kilograms: 80, psi: 52.4 }]).map(({ side }) => side)).toEqual(["low"]);
  });

  test("are not named for less than a rider feels, however alike the others are", () => {
    const alike = [75, 75.01, 75.02, 75.03, 75.04].map((kilograms) => ({ kilograms, psi: 60 }));
    expect(outliersOf([...alike, { kilograms: 75, psi: 61 }])).toEqual([]);
    expect(outliersOf([...alike, { kilograms: 75, psi: 63 }])).toHaveLength(1);
  });

  test("have nothing to do with clicks", () => {
    const { ledger } = teamLedger();
    expect(Object.keys(setupValues)).toContain("fork.rebound");
    expect(baselineOutliers(ledger, baselineMatrix(ledger))).toEqual([]);
  });
});

describe("modified z-scores", () => {
  // As far apart as gauges and scales can tell: among the least numbers that a computer has, half of a number is itself.
  const number = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((drawn) => Math.round(drawn * 1e6) / 1e6);
  const numbers = fc.array(number, { minLength: 1, maxLength: 30 });

  test("do not change with the unit, nor when all numbers move together", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1, maxLength: 20 }), (whole) => {
        const scores = modifiedZScores(whole)?.scores;
        const moved = modifiedZScores(whole.map((number) => 8 * number + 64))?.scores;
        expect(moved === undefined).toBe(scores === undefined);
        for (const [index, score] of (scores ?? []).entries()) expect(moved?.[index]).toBeCloseTo(score, 9);
      }),
    );
  });

  test("are finite, and at most half of them beyond 0.6745", () => {
    fc.assert(
      fc.property(numbers, (drawn) => {
        const scores = modifiedZScores(drawn)?.scores ?? [];
        expect(scores.every((score) => !Number.isNaN(score))).toBe(true);
        expect(scores.filter((score) => Math.abs(score) > 0.6745 + 1e-9).length).toBeLessThanOrEqual(drawn.length / 2);
      }),
    );
  });

  test.each([[[]], [[3]], [[3, 3, 3, 9]]])("say nothing of %j", (given) => {
    expect(modifiedZScores(given)).toBeUndefined();
  });
});
