import { describe, expect, it } from "vitest";
import {
  type AirSpringGeometry,
  clicksToKeepDampingRatio,
  createAirSpring,
  DEFAULT_RIDING_EXPONENT,
  firstReading,
  forkLoad,
  ISOTHERMAL,
  staticSag,
} from "#core/physics/index.ts";
import { PASCALS_PER_PSI, PASCALS_PER_STANDARD_ATMOSPHERE } from "#core/quantity/constants.ts";
import {
  absolutePascals,
  cubicMetres,
  gaugePascals,
  kilograms,
  metres,
  radians,
  squareMetres,
} from "#core/quantity/quantity.ts";
import { toSi } from "#core/quantity/unit.ts";
import { defaultSizes } from "#core/team/default-sizes.ts";

/* Facts of the trade: common practice, no source. The fork is made up, of an ordinary size. */

const ambient = absolutePascals(PASCALS_PER_STANDARD_ATMOSPHERE);
const psi = (value: number) => gaugePascals(value * PASCALS_PER_PSI);
const fork: AirSpringGeometry = {
  stroke: metres(0.17),
  positiveArea: squareMetres(0.96e-3),
  negativeArea: squareMetres(0.84e-3),
  positiveVolume: cubicMetres(205e-6),
  negativeVolume: cubicMetres(45e-6),
  equalisingStroke: metres(0.003),
  secondaryVolume: cubicMetres(30e-6),
  spacerVolume: cubicMetres(8e-6),
};
const forkAt = (main: number, secondary: number, exponent: number) =>
  createAirSpring(fork, { main: psi(main), secondary: psi(secondary), spacers: 0, ambient }, exponent);
const load = forkLoad({ sprungMass: kilograms(88), frontShare: 0.42, angleFromVertical: radians(0.45) });
const sagAt = (main: number, secondary: number): number => {
  const sag = staticSag(forkAt(main, secondary, ISOTHERMAL), load);
  if (!sag.possible) throw new Error(sag.reason);
  return sag.value;
};

describe("a pump on a small secondary chamber", () => {
  it.each([80, 85, 90, 95, 100, 105, 110])("shows 7 to 10 psi less when the chamber has %i psi", (pressure) => {
    const reading = firstReading({
      chamberVolume: cubicMetres(30e-6),
      hoseVolume: cubicMetres(3e-6),
      chamberPressure: psi(pressure),
      ambient,
    });
    const less = pressure - reading / PASCALS_PER_PSI;
    expect(less).toBeGreaterThanOrEqual(7);
    expect(less).toBeLessThanOrEqual(10 + 1e-9);
  });
});

describe("the main pressure", () => {
  it("gives more sag when it is lower", () => {
    for (let main = 55; main < 80; main += 5) expect(sagAt(main, 140)).toBeGreaterThan(sagAt(main + 5, 140));
  });

  it("moves the sag by something that can be felt with 2 psi, and by much more than that with 5 psi", () => {
    const felt = sagAt(65, 140) - sagAt(67, 140);
    const large = sagAt(65, 140) - sagAt(70, 140);
    expect(felt).toBeGreaterThan(0.0005);
    expect(large).toBeGreaterThan(2 * felt);
  });

  it("asks for less rebound damping when it is lower, and for more when it is higher", () => {
    const rateAt = (main: number) => {
      const sag = metres(sagAt(main, 140));
      return forkAt(main, 140, DEFAULT_RIDING_EXPONENT).rate(sag);
    };
    expect(clicksToKeepDampingRatio({ rateBefore: rateAt(70), rateAfter: rateAt(60) })).toBeLessThan(0);
    expect(clicksToKeepDampingRatio({ rateBefore: rateAt(60), rateAfter: rateAt(70) })).toBeGreaterThan(0);
  });
});

describe("the secondary pressure", () => {
  it("leaves the sag alone while its chamber does not act there", () => {
    for (const secondary of [110, 140, 170]) {
      expect(forkAt(65, secondary, ISOTHERMAL).engagementStroke).toBeGreaterThan(sagAt(65, secondary));
      expect(sagAt(65, secondary)).toBeCloseTo(sagAt(65, 110), 12);
    }
  });

  it("raises the force near full travel", () => {
    const forceAt = (secondary: number, part: number) =>
      forkAt(65, secondary, DEFAULT_RIDING_EXPONENT).force(metres(fork.stroke * part));
    for (const part of [0.9, 0.95, 1]) {
      expect(forceAt(120, part)).toBeGreaterThan(forceAt(110, part));
      expect(forceAt(130, part)).toBeGreaterThan(forceAt(120, part));
    }
  });

  it("drops the rate where its chamber starts to act, while the force goes on without a step", () => {
    const spring = forkAt(65, 130, DEFAULT_RIDING_EXPONENT);
    const start = spring.engagementStroke ?? Number.NaN;
    const before = metres(start - 1e-9);
    const after = metres(start + 1e-9);
    expect(spring.rate(after)).toBeLessThan(spring.rate(before) * 0.9);
    expect(spring.force(after) - spring.force(before)).toBeLessThan(0.01);
  });
});

describe("the default sizes of the chambers", () => {
  it("1 to 2 psi in either chamber is felt", () => {
    for (const kind of ["main-pressure", "secondary-pressure"] as const) {
      expect(defaultSizes(kind, "psi")?.felt).toBeGreaterThanOrEqual(1);
      expect(defaultSizes(kind, "psi")?.felt).toBeLessThanOrEqual(2);
    }
  });

  it("5 psi in the main chamber and 10 psi in the secondary chamber are drastic: the largest change at a time", () => {
    expect(defaultSizes("main-pressure", "psi")?.large).toBe(5);
    expect(defaultSizes("secondary-pressure", "psi")?.large).toBe(10);
  });

  it("other units have the same sizes, to what their step can say", () => {
    for (const [kind, unit] of [
      ["main-pressure", "bar"],
      ["main-pressure", "kPa"],
      ["secondary-pressure", "bar"],
      ["secondary-pressure", "kPa"],
    ] as const) {
      const theirs = defaultSizes(kind, unit);
      const ours = defaultSizes(kind, "psi");
      if (!theirs || !ours) throw new Error(`No sizes for ${kind} in ${unit}.`);
      for (const size of ["felt", "large"] as const) {
        const difference = toSi({ value: theirs[size], unit }) - toSi({ value: ours[size], unit: "psi" });
        expect(Math.abs(difference)).toBeLessThanOrEqual(toSi({ value: theirs.step, unit }));
      }
    }
  });
});
