import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  balanceShift,
  clicksToKeepDampingRatio,
  createAirSpring,
  createCoilSpring,
  forceCurve,
  frequencyRatio,
  lowerMarkedMaximum,
  preloadForSag,
  preloadFromTurns,
  rateForSag,
  sagBand,
  sameHitStroke,
  solveSetting,
  staticSag,
  strokeForEnergy,
  tyrePressureForLoad,
  tyrePressureToSetNow,
  withBottomOutBumper,
  withTopOutBumper,
} from "#core/physics/index.ts";
import {
  absolutePascals,
  gaugePascals,
  joules,
  kelvins,
  kilograms,
  metres,
  newtons,
  newtonsPerMetre,
} from "#core/quantity/quantity.ts";
import { airSpringCases, between, oneChamberCases } from "./arbitrary-springs.ts";

const coil = (rate: number, preload = 0, stroke = 0.1) =>
  createCoilSpring({ rate: newtonsPerMetre(rate), preload: metres(preload), stroke: metres(stroke) });

describe("the same hit", () => {
  it("uses the same travel with the same setting", () => {
    fc.assert(
      fc.property(airSpringCases, between(0.2, 1), ({ geometry, setting, exponent }, part) => {
        const spring = createAirSpring(geometry, setting, exponent);
        const strokeUsed = metres(spring.stroke * part);
        fc.pre(spring.energy(strokeUsed) > 0);
        const again = sameHitStroke({ before: spring, after: spring, strokeUsed });
        expect(again.possible && again.value).toBeCloseTo(strokeUsed, 8);
      }),
    );
  });

  it("goes less far on a stiffer coil, by the root of the rates", () => {
    const after = sameHitStroke({ before: coil(8000), after: coil(18_000), strokeUsed: metres(0.09) });
    expect(after.possible && after.value).toBeCloseTo(0.06, 10);
  });

  it("bottoms out on a coil that is too soft for it", () => {
    const after = sameHitStroke({ before: coil(8000), after: coil(6000), strokeUsed: metres(0.099) });
    expect(after).toEqual({ possible: false, reason: "bottoms out" });
  });

  it("of no energy leaves a spring that is pulled together at its free length", () => {
    const pulled = withTopOutBumper(coil(8000), { until: metres(0.01), rate: newtonsPerMetre(40_000) });
    expect(pulled.force(metres(0))).toBeLessThan(0);
    const stroke = strokeForEnergy(pulled, joules(0));
    if (!stroke.possible) throw new Error(stroke.reason);
    expect(stroke.value).toBeGreaterThan(0.01);
    expect(pulled.energy(stroke.value)).toBeCloseTo(0, 9);
    expect(strokeForEnergy(pulled, joules(-10))).toEqual({ possible: false, reason: "tops out" });
  });
});

describe("sizing an adjustment", () => {
  it("finds the main pressure for a target sag", () => {
    fc.assert(
      fc.property(oneChamberCases, between(0.15, 0.6), ({ geometry, setting }, part) => {
        const build = (main: number) => createAirSpring(geometry, { ...setting, main: gaugePascals(main) }, 1);
        const target = geometry.stroke * part;
        const load = build(setting.main).force(metres(target));
        const measure = (spring: ReturnType<typeof build>) => {
          const sag = staticSag(spring, load);
          if (sag.possible) return sag.value;
          return sag.reason === "tops out" ? 0 : spring.stroke;
        };
        const solved = solveSetting({ build, measure, target, low: 1e5, high: 1.2e6 });
        expect(solved.possible && solved.value / setting.main).toBeCloseTo(1, 6);
      }),
    );
  });

  it.each([
    [10, "beyond high end"],
    [0.001, "beyond low end"],
  ] as const)("says for a target of %d N that it lies %s", (target, reason) => {
    const measure = (spring: ReturnType<typeof coil>) => spring.force(metres(0.001));
    expect(solveSetting({ build: (rate) => coil(rate), measure, target, low: 1000, high: 9000 })).toEqual({
      possible: false,
      reason,
    });
  });
});

describe("a coil", () => {
  it("sags where its rate was chosen for", () => {
    fc.assert(
      fc.property(between(100, 3000), between(0.01, 0.09), between(0, 0.01), (load, sag, preload) => {
        const rate = rateForSag({ load: newtons(load), sag: metres(sag), preload: metres(preload) });
        const settled = staticSag(coil(rate, preload), newtons(load));
        expect(settled.possible && settled.value).toBeCloseTo(sag, 10);
        const back = preloadForSag({ load: newtons(load), sag: metres(sag), rate });
        if (preload > 1e-9) expect(back.possible && back.value).toBeCloseTo(preload, 10);
      }),
    );
  });

  it("that is too stiff for a sag has no preload for it", () => {
    const wish = { load: newtons(400), sag: metres(0.05), rate: newtonsPerMetre(10_000) };
    expect(preloadForSag(wish)).toEqual({ possible: false, reason: "tops out" });
  });

  it("is preloaded by its turns times the thread's pitch", () => {
    expect(preloadFromTurns(2.5, metres(0.00125))).toBeCloseTo(0.003125, 12);
  });
});

describe("a force curve", () => {
  it("holds both ends and even steps between them", () => {
    const curve = forceCurve(coil(8000, 0.002));
    expect(curve).toHaveLength(200);
    expect(curve[0]).toEqual({ stroke: 0, force: 16 });
    expect(curve[199]).toEqual({ stroke: 0.1, force: expect.closeTo(816, 9) });
    expect(curve[100]?.stroke).toBeCloseTo((0.1 * 100) / 199, 12);
  });
});

describe("a bumper", () => {
  it("changes nothing away from it and adds its own line within it", () => {
    const bumped = withBottomOutBumper(coil(8000), { from: metres(0.08), rate: newtonsPerMetre(50_000) });
    expect(bumped.force(metres(0.08))).toBe(640);
    expect(bumped.force(metres(0.1))).toBeCloseTo(800 + 1000, 9);
    expect(bumped.energy(metres(0.1))).toBeCloseTo(40 + 10, 9);
    expect(bumped.rate(metres(0.05))).toBe(8000);
    expect(bumped.rate(metres(0.09))).toBe(58_000);
  });

  it("at the top keeps the energy continuous and the integral of its force", () => {
    const pulled = withTopOutBumper(coil(8000, 0.005), { until: metres(0.01), rate: newtonsPerMetre(20_000) });
    for (const x of [0.002, 0.0099, 0.0101, 0.05]) {
      const slope = (pulled.energy(metres(x + 1e-7)) - pulled.energy(metres(x - 1e-7))) / 2e-7;
      expect(slope).toBeCloseTo(pulled.force(metres(x)), 3);
    }
    expect(pulled.rate(metres(0.005))).toBe(28_000);
    expect(pulled.rate(metres(0.02))).toBe(8000);
  });
});

describe("friction", () => {
  it("makes a band around the sag without it", () => {
    const band = sagBand(coil(8000), newtons(240), newtons(16));
    expect(band.least.possible && band.least.value).toBeCloseTo(0.028, 12);
    expect(band.most.possible && band.most.value).toBeCloseTo(0.032, 12);
  });
});

describe("rebound", () => {
  it("is not touched when the rate does not change, and goes back by what it came", () => {
    const rates = between(2000, 12_000).map(newtonsPerMetre);
    fc.assert(
      fc.property(rates, rates, (rateBefore, rateAfter) => {
        const there = clicksToKeepDampingRatio({ rateBefore, rateAfter });
        expect(there + clicksToKeepDampingRatio({ rateBefore: rateAfter, rateAfter: rateBefore })).toBeCloseTo(0, 9);
        expect(1.06 ** there).toBeCloseTo(Math.sqrt(rateAfter / rateBefore), 9);
        expect(clicksToKeepDampingRatio({ rateBefore, rateAfter: rateBefore })).toBe(0);
      }),
    );
  });
});

describe("balance", () => {
  const bike = (front: number) => ({
    front: { rate: newtonsPerMetre(front), mass: kilograms(40) },
    rear: { rate: newtonsPerMetre(10_000), mass: kilograms(50) },
  });

  it("is the root of the rates and masses", () => {
    expect(frequencyRatio(bike(8000))).toBeCloseTo(1, 12);
  });

  it("shifts to the front when the front becomes stiffer", () => {
    const shift = balanceShift({ now: frequencyRatio(bike(9680)), own: frequencyRatio(bike(8000)) });
    expect(shift).toBeCloseTo(0.1, 12);
  });
});

describe("a tyre", () => {
  const warm = { temperature: kelvins(303.15), ambient: absolutePascals(95_000) };
  const cold = { temperature: kelvins(283.15), ambient: absolutePascals(95_000) };
  const marked = { tyre: gaugePascals(3e5), rim: gaugePascals(2.2e5) };

  it("keeps its contact area when the pressure follows the load", () => {
    const loads = { loadBefore: newtons(400), loadAfter: newtons(440) };
    expect(tyrePressureForLoad({ pressure: gaugePascals(1.5e5), ...loads })).toBeCloseTo(1.65e5, 6);
  });

  it("is filled to less in the cold than it shall have in the warm", () => {
    const set = tyrePressureToSetNow({ wanted: gaugePascals(1.6e5), wantedAt: warm, now: cold, marked });
    expect(set.possible && set.value).toBeCloseTo((2.55e5 * 283.15) / 303.15 - 95_000, 6);
  });

  it("cannot be filled when the cold alone would take it below ambient pressure", () => {
    const wanted = gaugePascals(2000);
    const set = tyrePressureToSetNow({ wanted, wantedAt: warm, now: cold, marked });
    expect(set).toEqual({ possible: false, reason: "below ambient pressure" });
  });

  it("never goes above the lower of the two marked maxima, now or then", () => {
    expect(lowerMarkedMaximum(marked)).toBe(2.2e5);
    const refused = { possible: false, reason: "above marked maximum" };
    const wanted = gaugePascals(2.15e5);
    expect(tyrePressureToSetNow({ wanted, wantedAt: cold, now: warm, marked })).toEqual(refused);
    expect(tyrePressureToSetNow({ wanted: gaugePascals(2.21e5), wantedAt: warm, now: cold, marked })).toEqual(refused);
    expect(tyrePressureToSetNow({ wanted, wantedAt: warm, now: cold, marked }).possible).toBe(true);
  });
});
