import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastOf } from "#core/physics/minimise.ts";
import { solveBracketed } from "#core/physics/solve.ts";
import { between } from "./arbitrary-springs.ts";

describe("the bracketed solver", () => {
  it("finds the root of rising and falling, flat and steep functions", () => {
    const shapes = [
      (d: number) => d,
      (d: number) => d ** 3,
      (d: number) => Math.expm1(20 * d),
      (d: number) => Math.atan(1000 * d),
      (d: number) => Math.sign(d) * Math.sqrt(Math.abs(d)),
    ];
    fc.assert(
      fc.property(between(0, 1), fc.constantFrom(...shapes), fc.constantFrom(1, -1), (root, shape, sign) => {
        const found = solveBracketed((x) => sign * shape(x - root), 0, 1);
        expect(Math.abs((found ?? Number.NaN) - root)).toBeLessThan(1e-5);
      }),
    );
  });

  it("gives an end that is the root itself", () => {
    expect(solveBracketed((x) => x, 0, 1)).toBe(0);
    expect(solveBracketed((x) => x - 1, 0, 1)).toBe(1);
  });

  it("finds none when both ends lie on one side", () => {
    expect(solveBracketed((x) => x + 1, 0, 1)).toBeUndefined();
  });

  it("does not go on with a function that is no number", () => {
    expect(() => solveBracketed(() => Number.NaN, 0, 1)).toThrow(/not a number/);
  });

  it("needs few evaluations: under a hundred for the worst of shapes, a dozen for a smooth one", () => {
    const evaluations = (f: (x: number) => number) => {
      let count = 0;
      solveBracketed(
        (x) => {
          count += 1;
          return f(x);
        },
        0,
        1,
      );
      return count;
    };
    expect(evaluations((x) => Math.exp(x) - 2)).toBeLessThan(12);
    expect(evaluations((x) => (x < 0.37 ? -1 : 1))).toBeLessThan(100);
    expect(evaluations((x) => (x - 0.37) ** 9)).toBeLessThan(100);
  });
});

describe("the least of a function", () => {
  it("is found in the deeper of two valleys", () => {
    const found = leastOf((x) => (x - 0.3) ** 2 * (x - 0.8) ** 2 - 0.01 * x, 0, 1);
    expect(found.at).toBeCloseTo(0.86, 1);
    expect(found.atEnd).toBe(false);
  });

  it("is said to be at an end when the function falls towards it", () => {
    expect(leastOf((x) => -x, 2, 5)).toEqual({ at: expect.closeTo(5, 5), atEnd: true });
  });
});
