import {
  ADIABATIC_EXPONENT_OF_AIR,
  gaugeAfter,
  ISOTHERMAL,
  polytropicPressure,
  polytropicTemperature,
  polytropicWork,
  pressureAtTemperature,
} from "#core/physics/index.ts";
import { PASCALS_PER_PSI } from "#core/quantity/constants.ts";
import { absolutePascals, cubicMetres, gaugePascals, kelvins } from "#core/quantity/quantity.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

const celsius = (value: number) => kelvins(value + 273.15);
const state = (degrees: number, ambient: number) => ({
  temperature: celsius(degrees),
  ambient: absolutePascals(ambient),
});
const warmed = (pressure: number, from: number, to: number) => () =>
  pressureAtTemperature(absolutePascals(pressure), kelvins(from), kelvins(to));
const gauge = (psi: number, from: readonly [number, number], then: readonly [number, number]) => () =>
  gaugeAfter({ set: gaugePascals(psi * PASCALS_PER_PSI), setAt: state(...from), readAt: state(...then) }) /
  PASCALS_PER_PSI;
const engine = [cubicMetres(240e-6), cubicMetres(40e-6), ADIABATIC_EXPONENT_OF_AIR] as const;

const read = "read in a transcription of the source and recomputed";
const worked = "worked out from the textbook formula";
const threeFigures = "published to three figures";
const lemmon = {
  source: "equation of state of air, Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331",
  provenance: "computed with the named reference",
} as const;

/** Ideal less real, as per cent of the real pressure. */
const ideality = (ideal: number, real: number) => (ideal / real - 1) * 100;

/** Air charged at 293.15 K to so many bar: its real pressure, and the per cent by which the ideal gas is off. */
const cooled = [
  [5, 456_827, 0.117],
  [10, 912_588, 0.234],
  [15, 1_367_280, 0.351],
  [20, 1_820_905, 0.469],
  [25, 2_273_462, 0.587],
] as const;
const heated = [
  [5, 551_786, -0.112],
  [10, 1_104_810, -0.224],
  [15, 1_659_074, -0.336],
  [20, 2_214_578, -0.447],
  [25, 2_771_323, -0.559],
] as const;
const compressed = [
  [5, 1_495_243, 0.318],
  [10, 2_984_120, 0.532],
  [15, 4_470_971, 0.649],
] as const;

/** The ideal-gas error of what this project computes, and what the equation of state says it is. */
export const idealGasErrors: readonly KnownAnswer[] = answersOf(
  { ...lemmon, tolerance: { absolute: 0.005 }, because: "the error is given to a thousandth of a per cent" },
  [
    ...cooled.map(
      ([bar, real, error]) =>
        [
          `error of cooling ${bar} bar to −5 °C`,
          () => ideality(warmed(bar * 1e5, 293.15, 268.15)(), real),
          error,
        ] as const,
    ),
    ...heated.map(
      ([bar, real, error]) =>
        [
          `error of warming ${bar} bar to 50 °C`,
          () => ideality(warmed(bar * 1e5, 293.15, 323.15)(), real),
          error,
        ] as const,
    ),
    ...compressed.map(
      ([bar, real, error]) =>
        [
          `error of pressing ${bar} bar to a third`,
          () =>
            ideality(polytropicPressure(absolutePascals(bar * 1e5), cubicMetres(3), cubicMetres(1), ISOTHERMAL), real),
          error,
        ] as const,
    ),
  ],
);

export const gasAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    {
      source: "OpenStax University Physics 2, example 2.1 (bicycle tyre)",
      provenance: read,
      tolerance: { absolute: 500 },
      because: threeFigures,
    },
    [["a tyre warmed from 18 to 35 °C", warmed(7e5, 291.15, 308.15), 741_000]],
  ),
  ...answersOf(
    {
      source: "OpenStax University Physics 2, example 2.1, unrounded",
      provenance: read,
      tolerance: { absolute: 0.01 },
      because: "recomputed to a hundredth of a pascal",
    },
    [
      ["the same tyre with 273 for zero Celsius", warmed(7e5, 291, 308), 740_893.47],
      ["the same tyre with 273.15", warmed(7e5, 291.15, 308.15), 740_872.4],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax College Physics 2e, chapter 13 (sealed bulb)",
      provenance: read,
      tolerance: { absolute: 0.0005 },
      because: threeFigures,
    },
    [
      [
        "gauge pressure of a bulb sealed at 20 °C and heated to 60 °C, in atmospheres",
        () => gaugeAfter({ set: gaugePascals(0), setAt: state(20, 101_325), readAt: state(60, 101_325) }) / 101_325,
        0.136,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax University Physics 2, example 3.7 (engine, 1.00e5 Pa, 293 K, 240 to 40 cm³)",
      provenance: read,
      tolerance: { relative: 1e-5 },
      because: "recomputed to five figures or more; published are 1.23e6 Pa, 600 K, −63 J",
    },
    [
      ["pressure after adiabatic compression", () => polytropicPressure(absolutePascals(1e5), ...engine), 1_228_603.51],
      ["temperature after adiabatic compression", () => polytropicTemperature(kelvins(293), ...engine), 599.968],
      ["work of adiabatic compression", () => polytropicWork(absolutePascals(1e5), ...engine), 62.86],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax University Physics 2, section 3.6, problem (diatomic gas at 80 K, volume halved)",
      provenance: read,
      tolerance: { absolute: 0.5 },
      because: "published as 106 K",
    },
    [
      [
        "temperature of a diatomic gas pressed to half",
        () => polytropicTemperature(kelvins(80), cubicMetres(2), cubicMetres(1), 1.4),
        106,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax University Physics 2, chapter 3, problem on a diesel engine (answer not printed)",
      provenance: worked,
      tolerance: { absolute: 0.01 },
      because: "the ratio 15.3108 is rounded to four decimals",
    },
    [
      [
        "temperature in °C after compression by 15.3108 from 20 °C",
        () => polytropicTemperature(celsius(20), cubicMetres(15.3108), cubicMetres(1), 1.4) - 273.15,
        600,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "U.S. Standard Atmosphere 1976, table 2",
      provenance: read,
      tolerance: { absolute: 0 },
      because: "a constant of the standard",
    },
    [["ratio of specific heats of dry air", () => ADIABATIC_EXPONENT_OF_AIR, 1.4]],
  ),
  ...answersOf(
    {
      source: "constant-volume law and the definition of gauge pressure; pressure at 2000 m of the 1976 atmosphere",
      provenance: worked,
      tolerance: { absolute: 0.001 },
      because: "a thousandth of a psi, far below what a gauge shows",
    },
    [
      ["80 psi taken from sea level to 2000 m", gauge(80, [15, 101_325], [15, 79_501.42]), 83.16524267237423],
      [
        "80 psi taken to 2000 m and cooled to 2.004 °C",
        gauge(80, [15, 101_325], [2.004, 79_501.42]),
        78.89431242671547,
      ],
      ["25 psi cooled from 20 to 5 °C", gauge(25, [20, 101_325], [5, 101_325]), 22.96882404355211],
      ["25 psi warmed from 20 to 35 °C", gauge(25, [20, 101_325], [35, 101_325]), 27.0311759564479],
    ],
  ),
  ...idealGasErrors,
];
