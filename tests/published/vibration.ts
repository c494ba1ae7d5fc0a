import {
  clicksToKeepDampingRatio,
  createCoilSpring,
  criticalDamping,
  dampedFrequency,
  dampingRatio,
  dampingRatioFromDecrement,
  decrementFromPeaks,
  dropStroke,
  logarithmicDecrement,
  naturalFrequency,
  type Possible,
  rateForSag,
  sagBand,
  staticSag,
  strokeForEnergy,
  wheelLoad,
} from "#core/physics/index.ts";
import {
  hertz,
  joules,
  kilograms,
  metres,
  newtonSecondsPerMetre,
  newtons,
  newtonsPerMetre,
} from "#core/quantity/quantity.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

const coil = (rate: number, stroke: number) =>
  createCoilSpring({ rate: newtonsPerMetre(rate), preload: metres(0), stroke: metres(stroke) });
const value = (answer: Possible<number>): number => {
  if (!answer.possible) throw new Error(answer.reason);
  return answer.value;
};
const frequency = (rate: number, mass: number) => naturalFrequency(newtonsPerMetre(rate), kilograms(mass));

/** Natural frequency of any mass on a linear spring that it makes sag by `sag`, through our load, rate and sag. */
const frequencyOfSag = (sag: number) => () => {
  const load = wheelLoad({ sprungMass: kilograms(90), share: 1 });
  const rate = rateForSag({ load, sag: metres(sag), preload: metres(0) });
  const settled = value(staticSag(coil(rate, 1), load));
  return frequency(load / settled, 90);
};

/** Overshoot of a step, per cent: half a cycle later the peak is smaller by the square root of the decrement's ratio. */
const overshoot = (ratio: number) => () => 100 * Math.exp(-logarithmicDecrement(ratio) / 2);

const read = "read in a transcription of the source and recomputed";
const worked = "worked out from the textbook formula";
const nine = { tolerance: { relative: 1e-8 }, because: "recomputed to nine figures or more" } as const;

export const vibrationAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    {
      source: "OpenStax College Physics 2e, example 16.1",
      provenance: read,
      tolerance: { relative: 1e-3 },
      because: "published to three figures, 6.53e4",
    },
    [
      [
        "rate of a car's springs that sag 1.20 cm under 784 N",
        () => rateForSag({ load: newtons(784), sag: metres(0.012), preload: metres(0) }),
        65_300,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax College Physics 2e, example 16.4",
      provenance: read,
      tolerance: { absolute: 0.005 },
      because: "published to three figures",
    },
    [
      ["frequency of 900 kg on 6.53e4 N/m", () => frequency(6.53e4, 900), 1.36],
      ["period of 900 kg on 6.53e4 N/m", () => 1 / frequency(6.53e4, 900), 0.738],
    ],
  ),
  ...answersOf({ source: "OpenStax University Physics 1, example 15.2", provenance: read, ...nine }, [
    ["angular frequency of 2 kg on 32 N/m", () => 2 * Math.PI * frequency(32, 2), 4],
    ["greatest speed from the energy at 0.02 m", () => Math.sqrt(coil(32, 0.1).energy(metres(0.02))), 0.08],
  ]),
  ...answersOf(
    {
      source: "OpenStax University Physics 1, chapter 15, problem on a swaying tower of 4.00e5 kg",
      provenance: read,
      tolerance: { relative: 1e-8 },
      because: "recomputed to nine figures; published are 2.00 s and 7.90e6 J",
    },
    [
      ["period of the tower", () => 1 / frequency(3_947_841.76, 4e5), 2],
      ["energy of the tower at 2.00 m", () => coil(3_947_841.76, 3).energy(metres(2)), 7_895_683.52],
    ],
  ),
  ...answersOf(
    {
      source: "closed form f = √(g/δ) / 2π, standard vibration texts",
      provenance: worked,
      tolerance: { relative: 1e-7 },
      because: "given to eight figures",
    },
    [
      ["frequency of a sag of 25 mm", frequencyOfSag(0.025), 3.1521761],
      ["frequency of a sag of 25.4 mm", frequencyOfSag(0.0254), 3.1272573],
      ["frequency of a sag of 50 mm", frequencyOfSag(0.05), 2.2289251],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax University Physics 1, chapter 15, problem on a fall of 2.00 m on a spring, parts a and b",
      provenance: read,
      tolerance: { absolute: 0.005 },
      because: "published to three figures",
    },
    [["frequency of 90 kg on 1.40e4 N/m", () => frequency(1.4e4, 90), 1.99]],
  ),
  ...answersOf(
    {
      source: "OpenStax University Physics 1, chapter 15, problem on a fall of 2.00 m on a spring, part b",
      provenance: read,
      tolerance: { absolute: 0.0005 },
      because: "published to three figures; the book takes g = 9.80 m/s², which moves it by 0.0002",
    },
    [
      [
        "depth of a fall of 2.00 m on a spring",
        () => value(dropStroke({ spring: coil(1.4e4, 1), mass: kilograms(90), speed: Math.sqrt(2 * 9.8 * 2) })),
        0.569,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax College Physics 2e, chapter 16, the same fall without gravity after contact",
      provenance: read,
      tolerance: { absolute: 0.0005 },
      because: "published to three figures: 50.2 cm and 71.0 cm",
    },
    [
      ["stroke that takes up 1764 J", () => value(strokeForEnergy(coil(1.4e4, 1), joules(1764))), 0.502],
      ["the same with half the rate", () => value(strokeForEnergy(coil(7e3, 1), joules(1764))), 0.71],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax University Physics 1, section 15.5, problem (3.0 % of amplitude lost each cycle)",
      provenance: read,
      tolerance: { absolute: 0.1 },
      because: "published as 6 %, the exact is 5.91 %",
    },
    [
      [
        "per cent of energy lost with 3 % of amplitude",
        () => 100 * (1 - coil(50, 1).energy(metres(0.97)) / coil(50, 1).energy(metres(1))),
        5.91,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "OpenStax College Physics 2e, example 16.7 (dry friction of 0.1568 N, 50.0 N/m): loss each half swing",
      provenance: read,
      tolerance: { absolute: 1e-9 },
      because: "recomputed to a nanometre",
    },
    [
      [
        "width of the band in which friction holds the mass",
        () => {
          const band = sagBand(coil(50, 1), newtons(2), newtons(0.1568));
          return value(band.most) - value(band.least);
        },
        0.006272,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "worked example of theory-of-machines texts: 8 kg, 5.4 N/mm, 40 N s/m",
      provenance: read,
      ...nine,
    },
    [
      ["critical damping", () => criticalDamping(newtonsPerMetre(5400), kilograms(8)), 415.692193817],
      [
        "damping ratio",
        () => dampingRatio(newtonSecondsPerMetre(40), newtonsPerMetre(5400), kilograms(8)),
        0.0962250449,
      ],
      ["logarithmic decrement", () => logarithmicDecrement(0.0962250448649), 0.6074184504],
      [
        "ratio of two peaks that follow each other",
        () => Math.exp(logarithmicDecrement(0.0962250448649)),
        1.8356863612,
      ],
    ],
  ),
  ...answersOf(
    { source: "definition of the logarithmic decrement: 6 kg, 5400 N/m, peaks 3 to 2", provenance: worked, ...nine },
    [
      ["decrement from two peaks", () => decrementFromPeaks({ first: 3, last: 2, cycles: 1 }), 0.4054651081],
      ["damping ratio from the decrement", () => dampingRatioFromDecrement(Math.log(1.5)), 0.064397828],
      [
        "damping coefficient from the decrement",
        () => dampingRatioFromDecrement(Math.log(1.5)) * criticalDamping(newtonsPerMetre(5400), kilograms(6)),
        23.1832180662,
      ],
    ],
  ),
  ...answersOf(
    {
      source: "overshoot of a second-order step, control texts (16.3 % at 0.5)",
      provenance: read,
      tolerance: { absolute: 1e-4 },
      because: "recomputed to four decimals of a per cent",
    },
    [
      ["overshoot at a damping ratio of 0.1", overshoot(0.1), 72.9248],
      ["overshoot at a damping ratio of 0.2", overshoot(0.2), 52.6621],
      ["overshoot at a damping ratio of 0.3", overshoot(0.3), 37.2326],
      ["overshoot at a damping ratio of 0.5", overshoot(0.5), 16.3034],
      ["overshoot at a damping ratio of 0.7", overshoot(0.7), 4.5988],
      ["overshoot at a damping ratio of 0.9", overshoot(0.9), 0.1524],
    ],
  ),
  ...answersOf(
    {
      source: "closed form of the free decay, natural angular frequency 1, damping ratio 0.2, at t = 10",
      provenance: "computed with the named reference",
      tolerance: { absolute: 1e-9 },
      because: "the closed form and an integration agree to that",
    },
    [
      [
        "free decay at the damped frequency",
        () => {
          const angular = 2 * Math.PI * dampedFrequency(hertz(1 / (2 * Math.PI)), 0.2);
          return Math.exp(-2) * (Math.cos(angular * 10) + (0.2 / angular) * Math.sin(angular * 10));
        },
        -0.1360920475956015,
      ],
    ],
  ),
  ...answersOf({ source: "definition of the damping ratio: c grows with √k", provenance: worked, ...nine }, [
    [
      "clicks of 6 % for a rate that is 1.06 squared times the old",
      () => clicksToKeepDampingRatio({ rateBefore: newtonsPerMetre(5000), rateAfter: newtonsPerMetre(5000 * 1.1236) }),
      1,
    ],
    [
      "clicks of 10 % for a rate that is halved",
      () =>
        clicksToKeepDampingRatio({
          rateBefore: newtonsPerMetre(8000),
          rateAfter: newtonsPerMetre(4000),
          perClick: 0.1,
        }),
      -3.636270448670856,
    ],
  ]),
];
