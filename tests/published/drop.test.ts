import { describe, expect, it } from "vitest";
import {
  type AirSpringGeometry,
  createAirSpring,
  createCoilSpring,
  dropStroke,
  type Spring,
} from "#core/physics/index.ts";
import { PASCALS_PER_PSI, PASCALS_PER_STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "#core/quantity/constants.ts";
import {
  absolutePascals,
  cubicMetres,
  gaugePascals,
  kilograms,
  metres,
  newtonsPerMetre,
  squareMetres,
} from "#core/quantity/quantity.ts";
import { cylinder } from "./air-spring.ts";
import { type Motion, stateAt, turningPoint } from "./motion.ts";

/*
 * Oracle: odex 2.0.4, a port of Hairer and Wanner's extrapolation integrator of
 * ordinary differential equations. Numbers of parts are made up.
 */

/** The force for the integrator, whose trial steps may look past either end. */
const forceOf = (spring: Spring) => (stroke: number) =>
  spring.force(metres(Math.min(spring.stroke, Math.max(0, stroke))));

const fork: AirSpringGeometry = {
  stroke: metres(0.17),
  positiveArea: squareMetres(1.0e-3),
  negativeArea: squareMetres(0.86e-3),
  positiveVolume: cubicMetres(230e-6),
  negativeVolume: cubicMetres(40e-6),
  equalisingStroke: metres(0.004),
  spacerVolume: cubicMetres(8e-6),
};
const ambient = absolutePascals(PASCALS_PER_STANDARD_ATMOSPHERE);
const psi = (value: number) => gaugePascals(value * PASCALS_PER_PSI);

const oneChamber = (main: number) => createAirSpring(fork, { main: psi(main), spacers: 1, ambient }, 1.3);
const twoChambers = (main: number) =>
  createAirSpring(
    { ...fork, positiveVolume: cubicMetres(205e-6), secondaryVolume: cubicMetres(30e-6) },
    { main: psi(main), secondary: psi(main + 70), spacers: 0, ambient },
    1.3,
  );

describe("a drop without damping goes as far as its energy says, to 0.1 per cent", () => {
  const drops = [
    ["one positive chamber at 60 psi", oneChamber(60)],
    ["one positive chamber at 75 psi", oneChamber(75)],
    ["one positive chamber at 90 psi", oneChamber(90)],
    ["two positive chambers at 60 psi", twoChambers(60)],
    ["two positive chambers at 75 psi", twoChambers(75)],
    ["two positive chambers at 90 psi", twoChambers(90)],
    ["a coil", createCoilSpring({ rate: newtonsPerMetre(10_000), preload: metres(0.003), stroke: metres(0.17) })],
  ] as const;

  it.each(drops)("with %s", (_name, spring) => {
    const drop = { spring, mass: kilograms(45), speed: 1.6 };
    const predicted = dropStroke(drop);
    const integrated = turningPoint({ ...drop, gravity: STANDARD_GRAVITY, force: forceOf(spring), damping: 0 });
    if (!predicted.possible) throw new Error(predicted.reason);
    expect(predicted.value).toBeLessThan(spring.stroke * 0.97);
    expect(predicted.value).toBeGreaterThan(spring.stroke * 0.4);
    expect(Math.abs(integrated.stroke / predicted.value - 1)).toBeLessThan(1e-3);
  });

  it("with the secondary chamber acting at the end of each of its drops", () => {
    for (const main of [60, 75, 90]) {
      const spring = twoChambers(main);
      const predicted = dropStroke({ spring, mass: kilograms(45), speed: 1.6 });
      if (!predicted.possible) throw new Error(predicted.reason);
      expect(predicted.value).toBeGreaterThan(spring.engagementStroke ?? Infinity);
    }
  });

  it("with damping it goes less far", () => {
    const spring = oneChamber(75);
    const drop = { spring, mass: kilograms(45), speed: 1.6 };
    const damped = turningPoint({ ...drop, gravity: STANDARD_GRAVITY, force: forceOf(spring), damping: 300 });
    const predicted = dropStroke(drop);
    if (!predicted.possible) throw new Error(predicted.reason);
    expect(damped.stroke).toBeLessThan(predicted.value * 0.95);
  });
});

describe("the published motion of a mass on a cylinder of air", () => {
  // 10 kg, 10 cm², 200 ml at 500 kPa, exponent 1.3, 1.5 m/s. Computed with the energy balance, scipy's DOP853 and odex.
  const spring = cylinder({ area: 1e-3, volume: 2e-4, pressure: 5e5, ambient: 101_325, exponent: 1.3, stroke: 0.16 });
  const motion: Motion = { mass: 10, gravity: STANDARD_GRAVITY, force: forceOf(spring), damping: 0, speed: 1.5 };

  it("turns round at 31.3693105933 mm by the energy balance", () => {
    const predicted = dropStroke({ spring, mass: kilograms(10), speed: 1.5 });
    expect(predicted.possible && predicted.value).toBeCloseTo(0.0313693105933, 11);
  });

  it("turns round there by integration too, after 39.565479 ms and with 522.8284832 N", () => {
    const turn = turningPoint(motion);
    expect(turn.stroke).toBeCloseTo(0.0313693105933, 9);
    expect(turn.time).toBeCloseTo(0.039565479, 7);
    expect(spring.force(metres(turn.stroke))).toBeCloseTo(522.8284832, 5);
  });

  it("comes back with the speed it came with, after 79.130958 ms", () => {
    const back = stateAt(motion, 0.079130958);
    expect(back.stroke).toBeCloseTo(0, 8);
    expect(back.speed).toBeCloseTo(-1.5, 7);
  });

  it("turns round at 27.9743411066 mm with a damper of 50 N s/m", () => {
    const turn = turningPoint({ ...motion, damping: 50 });
    expect(turn.stroke).toBeCloseTo(0.0279743411066, 9);
    expect(turn.time).toBeCloseTo(0.0367517934, 7);
  });

  it("dropped from air at ambient pressure it goes twice as far as it settles (Rinkel's method, Blundell and Blundell)", () => {
    const flask = cylinder({
      area: 2e-4,
      volume: 0.0104,
      pressure: 101_325,
      ambient: 101_325,
      exponent: 1.4,
      stroke: 2,
    });
    const fallen = dropStroke({ spring: flask, mass: kilograms(1e-5), speed: 0 });
    const settled = (1e-5 * STANDARD_GRAVITY) / flask.rate(metres(0));
    expect(fallen.possible && fallen.value / settled).toBeCloseTo(2, 4);
  });
});

describe("the integrator itself", () => {
  it("follows the free decay of a damped vibration, whose value at t = 10 is published", () => {
    // Natural angular frequency 1, damping ratio 0.2, from x = 1 at rest: closed form. Here y = 1 − x starts at 0.
    const motion: Motion = { mass: 1, gravity: 1, force: (stroke) => stroke, damping: 0.4, speed: 0 };
    expect(1 - stateAt(motion, 10).stroke).toBeCloseTo(-0.1360920475956015, 9);
  });
});
