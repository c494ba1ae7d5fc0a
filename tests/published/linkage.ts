import { createCoilSpring, createLinkage, wheelSpring } from "#core/physics/index.ts";
import { metres, newtonsPerMetre } from "#core/quantity/quantity.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

const ratioAt = (stroke: number) => 3 - 12 * stroke + 40 * stroke ** 2;
/** The exact integral of the leverage ratio. */
const travelAt = (stroke: number) => 3 * stroke - 6 * stroke ** 2 + (40 * stroke ** 3) / 3;

/** The curve sampled at so many points, as a team would type it in. */
const sampled = (points: number) =>
  createLinkage(
    Array.from({ length: points }, (_, index) => {
      const stroke = (0.06 * index) / (points - 1);
      return { wheelTravel: metres(travelAt(stroke)), leverageRatio: ratioAt(stroke) };
    }),
  );
const shock = () => createCoilSpring({ rate: newtonsPerMetre(80_000), preload: metres(0.002), stroke: metres(0.0601) });

const curve = "LR(s) = 3.0 − 12 s + 40 s², integrated from 0 to 0.06 m: travel 0.16128 m";
const worked = "worked out from the textbook formula";

export const linkageAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    {
      source: `${curve} (made-up curve, calculus)`,
      provenance: worked,
      tolerance: { relative: 1e-5 },
      because: "straight lines between 61 points of a curve",
    },
    [
      [
        "full travel from the integral of the leverage ratio",
        () => sampled(61).wheelTravelAt(sampled(61).shockStroke),
        0.16128,
      ],
      ["shock stroke at full travel", () => sampled(61).shockStroke, 0.06],
      ["shock stroke at half the stroke's travel", () => sampled(61).shockStrokeAt(metres(travelAt(0.03))), 0.03],
      ["wheel travel at half the stroke", () => sampled(61).wheelTravelAt(metres(0.03)), travelAt(0.03)],
    ],
  ),
  ...answersOf(
    {
      source: `${curve} (made-up curve, calculus)`,
      provenance: worked,
      tolerance: { relative: 1e-3 },
      because: "straight lines between nine points, as many as one reads off a chart",
    },
    [["shock stroke from nine points", () => sampled(9).shockStroke, 0.06]],
  ),
  ...answersOf(
    {
      source: `virtual work along ${curve}, coil of 80 N/mm with 2 mm of preload`,
      provenance: worked,
      tolerance: { relative: 1e-4 },
      because: "straight lines between 61 points of a curve",
    },
    [
      [
        "force at the wheel at half the stroke",
        () => wheelSpring(shock(), sampled(61)).force(metres(travelAt(0.03))),
        (80_000 * 0.032) / ratioAt(0.03),
      ],
      [
        "energy at the wheel at half the stroke",
        () => wheelSpring(shock(), sampled(61)).energy(metres(travelAt(0.03))),
        80_000 * (0.03 ** 2 / 2 + 0.002 * 0.03),
      ],
    ],
  ),
];
