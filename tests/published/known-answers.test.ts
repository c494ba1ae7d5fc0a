import { describe, expect, it } from "vitest";
import { airSpringAnswers } from "./air-spring.ts";
import { gasAnswers, idealGasErrors } from "./gas.ts";
import { geodesicAnswers } from "./geodesics.ts";
import { type KnownAnswer, measure, provenances } from "./known-answer.ts";
import { linkageAnswers } from "./linkage.ts";
import { outlierAnswers } from "./outlier-scores.ts";
import { pumpAnswers } from "./pump.ts";
import { atmosphereAnswers } from "./standard-atmosphere.ts";
import { unitAnswers } from "./units.ts";
import { vibrationAnswers } from "./vibration.ts";

/** Every table with the number of its rows, so that a row cannot be lost without a word. */
const tables: readonly (readonly [name: string, rows: number, answers: readonly KnownAnswer[]])[] = [
  ["units", 24, unitAnswers],
  ["standard atmosphere", 31, atmosphereAnswers],
  ["gas", 27, gasAnswers],
  ["vibration", 32, vibrationAnswers],
  ["air spring", 25, airSpringAnswers],
  ["pump", 5, pumpAnswers],
  ["linkage", 7, linkageAnswers],
  ["outlier scores", 4, outlierAnswers],
  ["geodesics", 13, geodesicAnswers],
];
const all = tables.flatMap(([, , answers]) => answers);

describe.each(tables)("the published values of %s", (_name, _rows, answers) => {
  it.each(answers.map((answer) => [answer.name, answer] as const))("give the %s", (_answer, answer) => {
    const { off, allowed } = measure(answer);
    expect(
      off,
      `${answer.computed()} against ${answer.expected}; ${answer.source}; tolerance: ${answer.because}`,
    ).toBeLessThanOrEqual(allowed);
  });
});

describe("the tables of known answers", () => {
  it.each(tables)("hold every row of %s", (_name, rows, answers) => {
    expect(answers).toHaveLength(rows);
  });

  it("hold each answer once, with a source, a provenance and a reason for its tolerance", () => {
    expect(new Set(all.map((answer) => answer.name)).size).toBe(all.length);
    for (const answer of all) {
      expect(provenances).toContain(answer.provenance);
      expect(answer.source.length).toBeGreaterThan(10);
      expect(answer.because.length).toBeGreaterThan(5);
      expect(Number.isFinite(answer.expected)).toBe(true);
    }
  });

  it("fail on an answer that is off by twice its tolerance", () => {
    for (const answer of all) {
      const { allowed } = measure(answer);
      const wrong = { ...answer, computed: () => answer.expected + 2 * allowed + 1e-12 };
      expect(measure(wrong).off).toBeGreaterThan(allowed);
    }
  });
});

describe("the ideal gas", () => {
  it("is never off by more than 0.7 per cent in the range of a shock", () => {
    const errors = idealGasErrors.map((answer) => Math.abs(answer.computed()));
    expect(errors).toHaveLength(13);
    expect(Math.max(...errors)).toBeLessThan(0.7);
  });
});
