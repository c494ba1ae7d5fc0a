import { createAirSpring, naturalFrequency } from "#core/physics/index.ts";
import {
  absolutePascals,
  cubicMetres,
  gaugePascals,
  kilograms,
  metres,
  squareMetres,
} from "#core/quantity/quantity.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

/** A cylinder with a piston and nothing on its other side: what the textbooks calculate. */
export function cylinder(of: {
  readonly area: number;
  readonly volume: number;
  readonly pressure: number;
  readonly ambient: number;
  readonly exponent: number;
  readonly stroke: number;
}) {
  return createAirSpring(
    {
      stroke: metres(of.stroke),
      positiveArea: squareMetres(of.area),
      negativeArea: squareMetres(0),
      positiveVolume: cubicMetres(of.volume),
      negativeVolume: cubicMetres(of.volume),
      equalisingStroke: metres(0),
      spacerVolume: cubicMetres(0),
    },
    { main: gaugePascals(of.pressure - of.ambient), spacers: 0, ambient: absolutePascals(of.ambient) },
    of.exponent,
  );
}

const bench = (exponent: number) =>
  cylinder({ area: 1e-3, volume: 2e-4, pressure: 5e5, ambient: 101_325, exponent, stroke: 0.16 });
const flask = () =>
  cylinder({ area: 2e-4, volume: 0.0104, pressure: 101_325, ambient: 101_325, exponent: 1.4, stroke: 0.1 });

/** Force (N) at 0, 50, 100 and 150 mm, by exponent. */
const forces = [
  [1, [398.675, 565.341667, 898.675, 1898.675]],
  [1.2, [398.675, 604.824227, 1047.373355, 2537.690822]],
  [1.3, [398.675, 625.433905, 1129.819413, 2930.108133]],
  [1.4, [398.675, 646.645097, 1218.182911, 3380.877253]],
] as const;
const energies = [
  [1, 59.182218056],
  [1.2, 64.216677499],
  [1.3, 66.915637782],
  [1.4, 69.744477693],
] as const;

const worked = "worked out from the textbook formula";

export const airSpringAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    {
      source:
        "k = n p A²/V with p absolute, from T = 2π √(mV/(γpA²)): Blundell and Blundell, Concepts in Thermal Physics, chapter 12",
      provenance: "read in a transcription of the source and recomputed",
      tolerance: { relative: 1e-9 },
      because: "worked out to ten figures",
    },
    [
      ["rate of 500 kPa, 10 cm², 200 ml at full extension", () => bench(1.3).rate(metres(0)), 3250],
      ["rate of the same at 50 mm", () => bench(1.3).rate(metres(0.05)), 6298.577177067361],
    ],
  ),
  ...answersOf(
    {
      source:
        "gas-spring problem of vibration textbooks: 300 N/m at 150 kPa and a column of 30 cm (answer not printed)",
      provenance: worked,
      tolerance: { relative: 1e-9 },
      because: "the area is a closed form",
    },
    [
      [
        "rate of a column of 30 cm at 150 kPa on the area that the formula asks for",
        () => {
          const area = 0.0004285714285714286;
          const spring = { area, volume: area * 0.3, pressure: 1.5e5, ambient: 101_325, exponent: 1.4, stroke: 0.1 };
          return cylinder(spring).rate(metres(0));
        },
        300,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "Rüchardt's apparatus, 10.4 l, 2.0e-4 m² (a university's demonstration sheet); ball of 16.5 g assumed",
      provenance: worked,
      tolerance: { relative: 1e-8 },
      because: "worked out to ten figures",
    },
    [
      ["rate of the air under the ball", () => flask().rate(metres(0)), 0.5455961538],
      [
        "period of the ball",
        () => 1 / naturalFrequency(flask().rate(metres(0)), kilograms(0.0165)),
        1.0926628823948474,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "p V^n constant, OpenStax University Physics 2, section 3.6",
      provenance: worked,
      tolerance: { absolute: 1e-5 },
      because: "worked out to a micronewton",
    },
    forces.flatMap(([exponent, row]) =>
      row.map(
        (force, index) =>
          [
            `force at ${index * 50} mm with exponent ${exponent}`,
            () => bench(exponent).force(metres(index * 0.05)),
            force,
          ] as const,
      ),
    ),
  ),
  ...answersOf(
    {
      source: "closed-form work of a polytropic compression, less that of the ambient air",
      provenance: "computed with the named reference",
      tolerance: { absolute: 1e-7 },
      because: "worked out to a nanojoule",
    },
    energies.map(([exponent, energy]) => [
      `energy to 100 mm with exponent ${exponent}`,
      () => bench(exponent).energy(metres(0.1)),
      energy,
    ]),
  ),
];
