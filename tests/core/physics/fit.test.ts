import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  createAirSpring,
  fitFrontShare,
  fitLoad,
  fitLoadAndVolume,
  forkLoad,
  ISOTHERMAL,
  PhysicsError,
  staticSag,
} from "#core/physics/index.ts";
import {
  absolutePascals,
  cubicMetres,
  type Force,
  gaugePascals,
  kilograms,
  metres,
  newtons,
  radians,
  squareMetres,
  type Volume,
} from "#core/quantity/quantity.ts";
import { between } from "./arbitrary-springs.ts";

/** A made-up fork with one positive chamber, of a volume that may be unknown. */
const forkWith = (positiveVolume: Volume, mainPascals: number) =>
  createAirSpring(
    {
      stroke: metres(0.16),
      positiveArea: squareMetres(1e-3),
      negativeArea: squareMetres(0.85e-3),
      positiveVolume,
      negativeVolume: cubicMetres(45e-6),
      equalisingStroke: metres(0.003),
      spacerVolume: cubicMetres(0),
    },
    { main: gaugePascals(mainPascals), spacers: 0, ambient: absolutePascals(95_000) },
    ISOTHERMAL,
  );
const sagOf = (volume: Volume, main: number, load: Force) => {
  const sag = staticSag(forkWith(volume, main), load);
  if (!sag.possible) throw new Error(sag.reason);
  return sag.value;
};
const range = { low: cubicMetres(170e-6), high: cubicMetres(320e-6) };

describe("fitting the load", () => {
  it("finds the load that one measured sag has", () => {
    const spring = forkWith(cubicMetres(220e-6), 4.5e5);
    const fit = fitLoad([{ spring, sag: metres(0.033) }]);
    expect(fit.load).toBeCloseTo(spring.force(metres(0.033)), 9);
    expect(fit.rootMeanSquare).toBeCloseTo(0, 12);
  });

  it("leaves residuals whose weighted sum is nothing, and no other load leaves less", () => {
    const volume = cubicMetres(220e-6);
    const error = fc.array(between(-0.003, 0.003), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(between(350, 480), error, (load, errors) => {
        const measurements = errors.map((off, index) => {
          const main = 4e5 + 4e4 * index;
          return { spring: forkWith(volume, main), sag: metres(sagOf(volume, main, newtons(load)) + off) };
        });
        const fit = fitLoad(measurements);
        const squares = (of: number) =>
          measurements.reduce((sum, { spring, sag }) => {
            const reached = staticSag(spring, newtons(of));
            return sum + ((reached.possible ? reached.value : Number.NaN) - sag) ** 2;
          }, 0);
        const best = squares(fit.load);
        expect(Math.sqrt(best / measurements.length)).toBeCloseTo(fit.rootMeanSquare, 9);
        expect(squares(fit.load + 0.5)).toBeGreaterThanOrEqual(best);
        expect(squares(fit.load - 0.5)).toBeGreaterThanOrEqual(best);
      }),
      { numRuns: 50 },
    );
  });

  it("gives measured less fitted sag, in the order of the measurements", () => {
    const volume = cubicMetres(220e-6);
    const sag = sagOf(volume, 4.5e5, newtons(420));
    const spring = forkWith(volume, 4.5e5);
    const fit = fitLoad([
      { spring, sag: metres(sag + 0.002) },
      { spring, sag: metres(sag - 0.002) },
    ]);
    expect(fit.residuals[0]).toBeCloseTo(0.002, 9);
    expect(fit.residuals[1]).toBeCloseTo(-0.002, 9);
    expect(fit.load).toBeCloseTo(420, 6);
  });

  it("refuses to fit nothing, and a sag outside the stroke", () => {
    expect(() => fitLoad([])).toThrow(PhysicsError);
    expect(() => fitLoad([{ spring: forkWith(cubicMetres(220e-6), 4.5e5), sag: metres(0.2) }])).toThrow(PhysicsError);
  });
});

describe("fitting load and chamber volume", () => {
  const measured = (mains: readonly number[], volume: Volume, load: Force) =>
    mains.map((main) => ({ build: (of: Volume) => forkWith(of, main), sag: sagOf(volume, main, load) }));

  it("finds both from the sags at different pressures", () => {
    fc.assert(
      fc.property(between(185e-6, 290e-6), between(380, 520), (volume, load) => {
        const measurements = measured([3e5, 4e5, 5e5], cubicMetres(volume), newtons(load));
        const fit = fitLoadAndVolume({ measurements, ...range });
        if (!fit.possible) throw new Error(fit.reason);
        expect(fit.value.volume / volume).toBeCloseTo(1, 3);
        expect(fit.value.load / load).toBeCloseTo(1, 3);
        expect(fit.value.rootMeanSquare).toBeLessThan(1e-6);
      }),
      { numRuns: 30 },
    );
  });

  it("says that the measurements do not tell when they were all taken with one setting", () => {
    const measurements = measured([4.5e5, 4.5e5], cubicMetres(220e-6), newtons(420));
    const fit = fitLoadAndVolume({ measurements, ...range });
    expect(fit).toEqual({ possible: false, reason: "measurements do not tell" });
  });

  it("says so too when the best volume lies outside the range", () => {
    const measurements = measured([3e5, 4e5, 5e5], cubicMetres(165e-6), newtons(420));
    const fit = fitLoadAndVolume({ measurements, ...range });
    expect(fit).toEqual({ possible: false, reason: "measurements do not tell" });
  });

  it("refuses a single measurement", () => {
    const measurements = measured([4.5e5], cubicMetres(220e-6), newtons(420));
    expect(() => fitLoadAndVolume({ measurements, ...range })).toThrow(PhysicsError);
  });
});

describe("fitting the front share", () => {
  const fork = { sprungMass: kilograms(90), angleFromVertical: radians(0.44) };

  it("gives the share back from which a load came", () => {
    const load = forkLoad({ ...fork, frontShare: 0.43 });
    const share = fitFrontShare({ ...fork, load });
    expect(share.possible && share.value).toBeCloseTo(0.43, 12);
  });

  it("says that no share gives more load than the whole mass", () => {
    expect(fitFrontShare({ ...fork, load: newtons(900) })).toEqual({
      possible: false,
      reason: "no share between none and all",
    });
  });
});
