import {
  PASCALS_PER_PSI,
  PASCALS_PER_STANDARD_ATMOSPHERE,
  STANDARD_GRAVITY,
  ZERO_CELSIUS,
} from "#core/quantity/constants.ts";
import { gaugeFromAbsolute } from "#core/quantity/pressure.ts";
import { absolutePascals } from "#core/quantity/quantity.ts";
import { convert, differenceToSi, toSi, type Unit } from "#core/quantity/unit.ts";
import { answersOf, type KnownAnswer, ROUNDING } from "./known-answer.ts";

const si = (value: number, unit: Unit) => () => toSi({ value, unit });
const to = (value: number, unit: Unit, target: Unit) => () => convert({ value, unit }, target).value;

const recalled = {
  ...ROUNDING,
  source: "NIST SP 811 (2008) appendix B.8",
  provenance: "source from memory, number recomputed",
} as const;
const transcribed = { ...recalled, provenance: "read in a transcription of the source and recomputed" } as const;

/** The unit factors. */
export const unitAnswers: readonly KnownAnswer[] = [
  ...answersOf(recalled, [
    ["an inch in metres", si(1, "in"), 0.0254],
    ["twelve inches are the foot's metres", si(12, "in"), 0.3048],
    ["a pound in kilograms", si(1, "lb"), 0.45359237],
    ["a bar in pascals", si(1, "bar"), 100_000],
    ["a kilopascal in pascals", si(1, "kPa"), 1000],
    ["a pound-force per inch in newtons per metre", si(1, "lbf/in"), 175.12683524647636],
    ["450 pounds-force per inch in newtons per metre", si(450, "lbf/in"), 78807.07586091437],
    ["a kilogram-force in newtons", () => STANDARD_GRAVITY, 9.80665],
    ["zero Celsius in kelvins", () => ZERO_CELSIUS, 273.15],
    ["a difference of 1.8 °F in kelvins", () => differenceToSi({ value: 1.8, unit: "°F" }), 1],
  ]),
  ...answersOf(transcribed, [
    ["a psi in pascals", si(1, "psi"), 6894.757293168361],
    ["a standard atmosphere in pascals", () => PASCALS_PER_STANDARD_ATMOSPHERE, 101_325],
    ["a standard atmosphere in psi", to(101.325, "kPa", "psi"), 14.695948775513449],
  ]),
  ...answersOf(
    { ...ROUNDING, source: "NIST SP 811 factors, divided", provenance: "computed with the named reference" },
    [
      ["1 bar in psi", to(1, "bar", "psi"), 14.50377377302092],
      ["5 bar in psi", to(5, "bar", "psi"), 72.51886886510461],
      ["80 psi in bar", to(80, "psi", "bar"), 5.515805834534689],
      ["100 psi in bar", to(100, "psi", "bar"), 6.894757293168361],
      ["200 psi in bar", to(200, "psi", "bar"), 13.789514586336722],
      ["300 psi in bar", to(300, "psi", "bar"), 20.684271879505083],
    ],
  ),
  ...answersOf(
    { ...recalled, tolerance: { absolute: 1e-9 }, because: "the offset 459.67/1.8 is not a binary number" },
    [
      ["59 °F in kelvins", si(59, "°F"), 288.15],
      ["68 °F in °C", to(68, "°F", "°C"), 20],
      ["−40 °F in °C", to(-40, "°F", "°C"), -40],
      ["32 °F in kelvins", si(32, "°F"), 273.15],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax College Physics 2e, chapter 13, problem on a tyre of 7.00e5 Pa (answer not printed)",
      provenance: "worked out from the textbook formula",
      tolerance: { absolute: 0.01 },
      because: "the pressure is given to three figures",
    },
    [
      [
        "the gauge reading of 7.00e5 Pa absolute, in psi",
        () =>
          gaugeFromAbsolute(absolutePascals(7e5), absolutePascals(PASCALS_PER_STANDARD_ATMOSPHERE)) / PASCALS_PER_PSI,
        86.83046763563301,
      ],
    ],
  ),
];
