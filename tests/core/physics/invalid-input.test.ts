import { describe, expect, it } from "vitest";
import {
  type AirSpringGeometry,
  type AirSpringSetting,
  ambientPressure,
  createAirSpring,
  createCoilSpring,
  firstReading,
  forceCurve,
  forkLoad,
  gaugeAfter,
  judgeReading,
  naturalFrequency,
  PhysicsError,
  type PhysicsProblem,
  polytropicPressure,
  pressureAtTemperature,
  sameHitStroke,
  standardPressure,
  staticSag,
  wheelLoad,
} from "#core/physics/index.ts";
import {
  absolutePascals,
  cubicMetres,
  gaugePascals,
  kelvins,
  kilograms,
  metres,
  newtons,
  newtonsPerMetre,
  radians,
  squareMetres,
} from "#core/quantity/quantity.ts";

const geometry: AirSpringGeometry = {
  stroke: metres(0.16),
  positiveArea: squareMetres(1e-3),
  negativeArea: squareMetres(0.85e-3),
  positiveVolume: cubicMetres(200e-6),
  negativeVolume: cubicMetres(40e-6),
  equalisingStroke: metres(0.003),
  secondaryVolume: cubicMetres(30e-6),
  spacerVolume: cubicMetres(9e-6),
};
const setting: AirSpringSetting = {
  main: gaugePascals(4e5),
  secondary: gaugePascals(9e5),
  spacers: 1,
  ambient: absolutePascals(101_325),
};
const air =
  (part: Partial<AirSpringGeometry>, set: Partial<AirSpringSetting> = {}, exponent = 1.3) =>
  () =>
    createAirSpring({ ...geometry, ...part }, { ...setting, ...set }, exponent);
const spring = createAirSpring(geometry, setting, 1.3);
const ambient = absolutePascals(101_325);
const state = { temperature: kelvins(293), ambient };

const faults: readonly (readonly [name: string, call: () => unknown, type: PhysicsProblem, says: RegExp])[] = [
  ["a pressure that is no number", air({}, { main: gaugePascals(Number.NaN) }), "not a number", /Main pressure/],
  ["an endless stroke", air({ stroke: metres(Infinity) }), "not a number", /Stroke/],
  ["a negative volume", air({ positiveVolume: cubicMetres(-1e-6) }), "not positive", /main chamber/],
  ["a negative chamber of nothing", air({ negativeVolume: cubicMetres(0) }), "not positive", /negative chamber/],
  ["a negative area above the positive", air({ negativeArea: squareMetres(2e-3) }), "out of range", /negative side/],
  ["an equalising stroke beyond the stroke", air({ equalisingStroke: metres(0.2) }), "out of range", /Equalising/],
  ["a main pressure below ambient", air({}, { main: gaugePascals(-1) }), "negative", /Main pressure/],
  ["half a spacer", air({}, { spacers: 0.5 }), "out of range", /whole number/],
  ["more spacers than fit", air({}, { spacers: 5 }), "chamber overfull", /155\.0 ml.*160\.0 ml/],
  [
    "a secondary pressure at the main",
    air({}, { secondary: gaugePascals(4e5) }),
    "secondary not above main",
    /400 kPa.*above.*400 kPa/,
  ],
  ["a secondary pressure left out", air({}, { secondary: undefined }), "secondary chamber missing", /must be given/],
  [
    "a secondary pressure without its chamber",
    air({ secondaryVolume: undefined }),
    "secondary chamber missing",
    /no secondary chamber/,
  ],
  ["an exponent below 1", air({}, {}, 0.9), "out of range", /exponent/],
  ["an exponent above that of air", air({}, {}, 1.5), "out of range", /exponent/],
  ["a force beyond the stroke", () => spring.force(metres(0.161)), "beyond stroke", /160\.0 mm.*161\.0 mm/],
  ["a rate before full extension", () => spring.rate(metres(-0.001)), "beyond stroke", /Stroke/],
  ["an energy at no number", () => spring.energy(metres(Number.NaN)), "not a number", /Stroke/],
  [
    "a travel used beyond the stroke",
    () => sameHitStroke({ before: spring, after: spring, strokeUsed: metres(0.2) }),
    "beyond stroke",
    /200\.0 mm/,
  ],
  ["a sag under no number", () => staticSag(spring, newtons(Number.NaN)), "not a number", /Load/],
  ["a force curve of one point", () => forceCurve(spring, 1), "out of range", /points/],
  [
    "a coil without a rate",
    () => createCoilSpring({ rate: newtonsPerMetre(0), preload: metres(0), stroke: metres(0.06) }),
    "not positive",
    /Spring rate/,
  ],
  [
    "a slack coil",
    () => createCoilSpring({ rate: newtonsPerMetre(8e4), preload: metres(-0.001), stroke: metres(0.06) }),
    "negative",
    /Preload/,
  ],
  ["an altitude above the troposphere", () => standardPressure(metres(12_000)), "out of range", /Altitude/],
  [
    "a barometer in hectopascals",
    () => ambientPressure({ altitude: metres(0), barometer: absolutePascals(1013) }),
    "out of range",
    /Barometer/,
  ],
  [
    "a temperature of zero",
    () => pressureAtTemperature(ambient, kelvins(0), kelvins(300)),
    "not positive",
    /Temperature/,
  ],
  [
    "a gauge below vacuum",
    () => gaugeAfter({ set: gaugePascals(-2e5), setAt: state, readAt: state }),
    "not positive",
    /below vacuum/,
  ],
  [
    "a compression to nothing",
    () => polytropicPressure(ambient, cubicMetres(1), cubicMetres(0), 1.4),
    "not positive",
    /Volume/,
  ],
  ["a share above the whole", () => wheelLoad({ sprungMass: kilograms(80), share: 1.1 }), "out of range", /Share/],
  [
    "a fork that lies flat",
    () => forkLoad({ sprungMass: kilograms(80), frontShare: 0.4, angleFromVertical: radians(2) }),
    "out of range",
    /Angle/,
  ],
  ["a mass of nothing", () => naturalFrequency(newtonsPerMetre(1), kilograms(0)), "not positive", /Mass/],
  [
    "a hose of less than nothing",
    () =>
      firstReading({
        chamberVolume: cubicMetres(1e-4),
        chamberPressure: gaugePascals(4e5),
        hoseVolume: cubicMetres(-1e-6),
        ambient,
      }),
    "negative",
    /hose/,
  ],
];

describe("invalid input throws one typed error with a sentence", () => {
  it.each(faults)("for %s", (_name, call, type, says) => {
    let caught: unknown;
    try {
      call();
    } catch (error) {
      caught = error;
    }
    if (!(caught instanceof PhysicsError)) throw new Error(`Expected a PhysicsError, not ${String(caught)}.`);
    expect(caught.type).toBe(type);
    expect(caught.message).toMatch(says);
    expect(caught.message).toMatch(/^[A-Z].*\.$/);
  });
});

describe("the ambient pressure", () => {
  it("is the barometer's where there is one, and the standard's at the altitude where there is none", () => {
    const barometer = absolutePascals(83_000);
    expect(ambientPressure({ altitude: metres(1500), barometer })).toBe(83_000);
    expect(ambientPressure({ altitude: metres(1500) })).toBe(standardPressure(metres(1500)));
  });
});

describe("a first reading", () => {
  const expected = gaugePascals(6e5);
  const tolerance = gaugePascals(1e4);

  it.each([
    [6e5, "as expected"],
    [5.91e5, "as expected"],
    [6.09e5, "as expected"],
    [5.89e5, "leak"],
    [6.11e5, "more than expected"],
  ] as const)("of %d Pa where 600000 ± 10000 was expected is %s", (read, verdict) => {
    expect(judgeReading({ expected, read: gaugePascals(read), tolerance })).toEqual({ verdict, missing: 6e5 - read });
  });
});
