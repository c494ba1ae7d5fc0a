import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createAirSpring, ISOTHERMAL, type Spring, staticSag } from "#core/physics/index.ts";
import { gaugePascals, metres, newtons } from "#core/quantity/quantity.ts";
import { type AirSpringCase, airSpringCases, between, oneChamberCases, twoChamberCases } from "./arbitrary-springs.ts";

const build = ({ geometry, setting, exponent }: AirSpringCase) => createAirSpring(geometry, setting, exponent);
const at = (spring: Spring, part: number) => metres(spring.stroke * part);
const withMain = (given: AirSpringCase, factor: number): AirSpringCase => ({
  ...given,
  setting: { ...given.setting, main: gaugePascals(given.setting.main * factor) },
});

/** Simpson's rule over `pieces` of an interval. */
function integral(f: (x: number) => number, from: number, to: number, pieces = 400): number {
  const width = (to - from) / pieces;
  let sum = 0;
  for (let piece = 0; piece < pieces; piece += 1) {
    const left = from + piece * width;
    const right = piece === pieces - 1 ? to : left + width;
    sum += ((right - left) / 6) * (f(left) + 4 * f((left + right) / 2) + f(right));
  }
  return sum;
}

describe("an air spring", () => {
  it("pushes back harder the further it goes", () => {
    fc.assert(
      fc.property(airSpringCases, between(0, 0.999), (given, part) => {
        const spring = build(given);
        expect(spring.force(at(spring, part + 0.001))).toBeGreaterThan(spring.force(at(spring, part)));
      }),
    );
  });

  it("has the rate that a numerical derivative of its force gives", () => {
    fc.assert(
      fc.property(airSpringCases, between(0.01, 0.99), (given, part) => {
        const spring = build(given);
        const x = at(spring, part);
        const width = spring.stroke * 1e-5;
        fc.pre(Math.abs((spring.engagementStroke ?? Infinity) - x) > 2 * width);
        const slope = (spring.force(metres(x + width)) - spring.force(metres(x - width))) / (2 * width);
        expect(spring.rate(x) / slope).toBeCloseTo(1, 6);
      }),
    );
  });

  it("stores the energy that a numerical integral of its force gives", () => {
    fc.assert(
      fc.property(airSpringCases, between(0.05, 1), (given, part) => {
        const spring = build(given);
        const x = at(spring, part);
        const kink = Math.min(x, spring.engagementStroke ?? x);
        const force = (stroke: number) => spring.force(metres(stroke));
        const sum = integral(force, 0, kink) + integral(force, kink, x);
        expect(Math.abs(spring.energy(x) - sum)).toBeLessThan(1e-5 * Math.abs(sum) + 1e-6);
      }),
    );
  });

  it("sags less with more main pressure, wherever it sags beyond its equalising stroke", () => {
    fc.assert(
      fc.property(airSpringCases, between(0.1, 0.9), between(1.01, 1.3), (given, part, factor) => {
        const slow = { ...given, exponent: ISOTHERMAL };
        const stiffer = withMain(slow, factor);
        fc.pre((stiffer.setting.secondary ?? Infinity) > stiffer.setting.main);
        const spring = build(slow);
        const sag = at(spring, part);
        const after = staticSag(build(stiffer), spring.force(sag));
        if (after.possible) expect(after.value).toBeLessThan(sag);
        else expect(after.reason).toBe("tops out");
      }),
    );
  });

  it("takes more energy in its full stroke with more main pressure", () => {
    fc.assert(
      fc.property(airSpringCases, between(1.001, 1.3), (given, factor) => {
        const stiffer = withMain(given, factor);
        fc.pre((stiffer.setting.secondary ?? Infinity) > stiffer.setting.main);
        const [before, after] = [build(given), build(stiffer)];
        expect(after.energy(after.stroke)).toBeGreaterThan(before.energy(before.stroke));
      }),
    );
  });

  it("finds under any load between its ends the sag that carries it", () => {
    fc.assert(
      fc.property(airSpringCases, between(0, 1), (given, part) => {
        const spring = build(given);
        const x = at(spring, part);
        const sag = staticSag(spring, spring.force(x));
        if (!sag.possible) throw new Error(sag.reason);
        expect(Math.abs(sag.value - x)).toBeLessThan(1e-9);
      }),
    );
  });

  it("says that it tops out or bottoms out beyond its ends", () => {
    fc.assert(
      fc.property(airSpringCases, between(0.001, 1000), (given, beyond) => {
        const spring = build(given);
        const lightest = newtons(spring.force(metres(0)) - beyond);
        const heaviest = newtons(spring.force(spring.stroke) + beyond);
        expect(staticSag(spring, lightest)).toEqual({ possible: false, reason: "tops out" });
        expect(staticSag(spring, heaviest)).toEqual({ possible: false, reason: "bottoms out" });
      }),
    );
  });
});

describe("the negative chamber", () => {
  it("has the main chamber's pressure at the equalising stroke, so that only the rod's area presses there", () => {
    fc.assert(
      fc.property(oneChamberCases, ({ geometry, setting }) => {
        const spring = createAirSpring(geometry, setting, ISOTHERMAL);
        const { positiveArea, negativeArea, equalisingStroke } = geometry;
        const volume = geometry.positiveVolume - setting.spacers * geometry.spacerVolume;
        const absolute = setting.main + setting.ambient;
        const equalised = (absolute * volume) / (volume - positiveArea * equalisingStroke);
        const rod = (positiveArea - negativeArea) * (equalised - setting.ambient);
        expect(spring.force(equalisingStroke)).toBeCloseTo(rod, 6);
      }),
    );
  });

  it("has the pressure that both positive chambers share there, where the secondary one acts as early as that", () => {
    fc.assert(
      fc.property(twoChamberCases, between(0.001, 1), ({ geometry, setting }, margin) => {
        const { positiveArea, negativeArea, secondaryVolume = 0 } = geometry;
        const equalisingStroke = metres(geometry.stroke * 0.1);
        const volume = geometry.positiveVolume - setting.spacers * geometry.spacerVolume;
        const left = volume - positiveArea * equalisingStroke;
        const main = setting.main + setting.ambient;
        // Between the main chamber's pressure and that which it would have there alone.
        const secondary = main + margin * 0.99 * ((main * volume) / left - main);
        const secondaryGauge = gaugePascals(secondary - setting.ambient);
        const spring = createAirSpring(
          { ...geometry, equalisingStroke },
          { ...setting, secondary: secondaryGauge },
          ISOTHERMAL,
        );
        // Boyle and Mariotte: as much gas as before, in the volumes of both.
        const shared = (main * volume + secondary * secondaryVolume) / (left + secondaryVolume);
        const rod = (positiveArea - negativeArea) * (shared - setting.ambient);
        expect(spring.force(equalisingStroke)).toBeCloseTo(rod, 6);
      }),
    );
  });
});

describe("a spacer", () => {
  it("leaves the force at full extension and raises it at full travel", () => {
    fc.assert(
      fc.property(oneChamberCases, (given) => {
        fc.pre(given.geometry.spacerVolume > 1e-8);
        const atExtension = { ...given, geometry: { ...given.geometry, equalisingStroke: metres(0) } };
        const more = { ...atExtension, setting: { ...given.setting, spacers: given.setting.spacers + 1 } };
        const [before, after] = [build(atExtension), build(more)];
        expect(after.force(metres(0))).toBeCloseTo(before.force(metres(0)), 6);
        expect(after.force(after.stroke)).toBeGreaterThan(before.force(before.stroke));
      }),
    );
  });
});

describe("a secondary chamber", () => {
  const singleOf = ({ geometry, setting, exponent }: AirSpringCase) => {
    const { secondaryVolume: _volume, ...single } = geometry;
    const { secondary: _pressure, ...alone } = setting;
    return createAirSpring(single, alone, exponent);
  };

  it("changes nothing before the main chamber has reached its pressure, and softens from there on", () => {
    fc.assert(
      fc.property(twoChamberCases, between(0, 1), (given, part) => {
        const [spring, single] = [build(given), singleOf(given)];
        const atRest = build({ ...given, exponent: ISOTHERMAL });
        // Where it acts as early as that, it has a part in what the negative chamber holds.
        fc.pre((atRest.engagementStroke ?? Infinity) >= given.geometry.equalisingStroke);
        const x = at(spring, part);
        const apart = single.force(x) - spring.force(x);
        if (x <= (spring.engagementStroke ?? Infinity)) expect(Math.abs(apart)).toBeLessThan(1e-6);
        else expect(apart).toBeGreaterThan(-1e-6);
      }),
    );
  });

  it("takes no less energy in the full stroke with more pressure, and more when it acts", () => {
    fc.assert(
      fc.property(twoChamberCases, between(1.01, 1.5), (given, factor) => {
        const higher = gaugePascals((given.setting.secondary ?? 0) * factor);
        const before = build(given);
        const after = build({ ...given, setting: { ...given.setting, secondary: higher } });
        const gained = after.energy(after.stroke) - before.energy(before.stroke);
        expect(gained).toBeGreaterThan(-1e-6);
        if ((before.engagementStroke ?? Infinity) < before.stroke * 0.95) expect(gained).toBeGreaterThan(0);
      }),
    );
  });

  it("starts to act exactly where the two pressures meet", () => {
    fc.assert(
      fc.property(twoChamberCases, (given) => {
        const start = build(given).engagementStroke;
        if (start === undefined) return;
        const { geometry, setting, exponent } = given;
        const volume = geometry.positiveVolume - setting.spacers * geometry.spacerVolume;
        const compressed =
          (setting.main + setting.ambient) * (volume / (volume - geometry.positiveArea * start)) ** exponent;
        expect(compressed / ((setting.secondary ?? 0) + setting.ambient)).toBeCloseTo(1, 9);
      }),
    );
  });
});
