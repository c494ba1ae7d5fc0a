import { chamberBeforeReading, firstReading, pressureAtTemperature } from "#core/physics/index.ts";
import { PASCALS_PER_PSI, PASCALS_PER_STANDARD_ATMOSPHERE } from "#core/quantity/constants.ts";
import { absoluteFromGauge, gaugeFromAbsolute } from "#core/quantity/pressure.ts";
import { absolutePascals, cubicMetres, kelvins } from "#core/quantity/quantity.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

/** Absolute pressure (Pa) after a chamber and a second vessel that holds `other` (Pa) are joined. */
function joined(
  chamber: readonly [volume: number, pressure: number],
  second: readonly [volume: number, other: number],
) {
  const ambient = absolutePascals(second[1]);
  const reading = firstReading({
    chamberVolume: cubicMetres(chamber[0]),
    chamberPressure: gaugeFromAbsolute(absolutePascals(chamber[1]), ambient),
    hoseVolume: cubicMetres(second[0]),
    ambient,
  });
  return absoluteFromGauge(reading, ambient);
}

const warmed = (pressure: number, from: number, to: number) =>
  pressureAtTemperature(absolutePascals(pressure), kelvins(from), kelvins(to));

const connection = {
  chamberVolume: cubicMetres(80e-6),
  hoseVolume: cubicMetres(3e-6),
  ambient: absolutePascals(PASCALS_PER_STANDARD_ATMOSPHERE),
};
const inside = gaugeFromAbsolute(absolutePascals(8e5), connection.ambient);
const reading = () => firstReading({ ...connection, chamberPressure: inside });

export const pumpAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    {
      source: "two rigid tanks joined, 10 °C 350 kPa and 35 °C 150 kPa to 20 °C: thermodynamics texts, answer 222 kPa",
      provenance: "read in a transcription of the source and recomputed",
      tolerance: { relative: 1e-5 },
      because: "recomputed to seven figures with 273 for zero Celsius, as the book does",
    },
    [
      [
        "pressure of the two tanks, kPa",
        () => joined([1, warmed(350e3, 283, 293)], [1.76792, warmed(150e3, 308, 293)]) / 1000,
        222.0586,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "Çengel and Boles, Thermodynamics, two tanks, 25 °C 500 kPa and 35 °C 200 kPa to 20 °C: 284.1 kPa",
      provenance: "source from memory, number recomputed",
      tolerance: { absolute: 0.1 },
      because: "published to four figures",
    },
    [
      [
        "pressure of the classic two tanks, kPa",
        () => joined([1, warmed(500e3, 298, 293)], [2.2099, warmed(200e3, 308, 293)]) / 1000,
        284.1,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "conservation of mass at one temperature, p = (p₁V₁ + p₂V₂)/(V₁ + V₂)",
      provenance: "worked out from the textbook formula",
      tolerance: { relative: 1e-9 },
      because: "worked out to ten figures",
    },
    [
      [
        "80 ml at 800 kPa joined with a hose of 3 ml",
        () => absoluteFromGauge(reading(), connection.ambient),
        774_746.686747,
      ],
      ["psi that the gauge shows less", () => (inside - reading()) / PASCALS_PER_PSI, 3.662683424],
      [
        "the chamber before, from that reading",
        () => absoluteFromGauge(chamberBeforeReading({ ...connection, reading: reading() }), connection.ambient),
        8e5,
      ],
    ],
  ),
];
