import {
  GAS_CONSTANT_OF_AIR,
  geopotentialAltitude,
  standardDensity,
  standardPressure,
  standardTemperature,
} from "#core/physics/index.ts";
import { metres } from "#core/quantity/quantity.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

/** Geometric altitude, temperature (K), pressure (Pa) as printed (five figures), density (kg/m³). */
const geometric = [
  [0, 288.15, 101_325, 1.225],
  [500, 284.9, 95_461, 1.16727],
  [1000, 281.651, 89_876, 1.11166],
  [1500, 278.402, 84_559, 1.0581],
  [2000, 275.154, 79_501, 1.00655],
  [3000, 268.659, 70_121, 0.90925],
  [4000, 262.166, 61_660, 0.81935],
] as const;

const table = {
  source: "U.S. Standard Atmosphere 1976 (NASA-TM-X-74335), table I, geometric altitude",
  provenance: "read in a transcription of the source and recomputed",
} as const;

const geopotential = {
  source: "U.S. Standard Atmosphere 1976, equation 33a; ASHRAE Fundamentals 2017, chapter 1, table 1",
  provenance: "read in a transcription of the source and recomputed",
  tolerance: { absolute: 0.2 },
  because: "ASHRAE rounds its constants; ours are those of ISO 2533",
} as const;

/** The geometric altitude of a geopotential one, with the radius that the standard prescribes. */
const geometricOf = (height: number) => metres((6_356_766 * height) / (6_356_766 - height));
const pressureAtGeopotential = (height: number) => () => standardPressure(geometricOf(height));

export const atmosphereAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    { ...table, tolerance: { absolute: 0.001 }, because: "printed to a thousandth of a kelvin" },
    geometric.map(([z, temperature]) => [`temperature at ${z} m`, () => standardTemperature(metres(z)), temperature]),
  ),
  ...answersOf(
    { ...table, tolerance: { absolute: 1 }, because: "printed to five figures" },
    geometric.map(([z, , pressure]) => [`pressure at ${z} m`, () => standardPressure(metres(z)), pressure]),
  ),
  ...answersOf(
    { ...table, tolerance: { absolute: 5e-5 }, because: "printed to five figures" },
    geometric.map(([z, , , density]) => [`density at ${z} m`, () => standardDensity(metres(z)), density]),
  ),
  ...answersOf(geopotential, [
    ["pressure at a geopotential 500 m", pressureAtGeopotential(500), 95_460.84],
    ["pressure at a geopotential 1000 m", pressureAtGeopotential(1000), 89_874.57],
    ["pressure at a geopotential 2000 m", pressureAtGeopotential(2000), 79_495.22],
    ["pressure at a geopotential 2500 m", pressureAtGeopotential(2500), 74_682.53],
    ["pressure at a geopotential 4000 m", pressureAtGeopotential(4000), 61_640.24],
  ]),
  ...answersOf(
    {
      source: "ISO 2533:1975, tables",
      provenance: "read in a transcription of the source and recomputed",
      tolerance: { absolute: 0.05 },
      because: "the last printed digit",
    },
    [
      ["ISO pressure at 1000 m", () => standardPressure(metres(1000)), 89_876.3],
      ["ISO pressure at 2000 m", () => standardPressure(metres(2000)), 79_501.4],
    ],
  ),
  ...answersOf({ ...table, tolerance: { absolute: 0.001 }, because: "printed to a thousandth of a metre" }, [
    ["geopotential altitude of 1000 m", () => geopotentialAltitude(metres(1000)), 999.843],
    ["geopotential altitude of 4000 m", () => geopotentialAltitude(metres(4000)), 3997.485],
  ]),
  ...answersOf(
    {
      source: "U.S. Standard Atmosphere 1976, constants (R* = 8.31432 J/(mol K), M = 0.0289644 kg/mol)",
      provenance: "computed with the named reference",
      tolerance: { relative: 1e-6 },
      because: "ISO 2533 states the same constant as 287.05287, to eight figures",
    },
    [["gas constant of dry air", () => GAS_CONSTANT_OF_AIR, 287.05307204706463]],
  ),
];
