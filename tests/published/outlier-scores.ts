/** Modified z-scores: eight measurements that NIST's handbook prints for its outlier tests, and what the published formula makes of them. */
import { modifiedZScores, OUTLIER_SCORE } from "#core/planning/modified-z-scores.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

/** Uranium isotope masses by mass spectrometer (Tietjen and Moore 1972), as NIST uses them in 1.3.5.17.1. */
const masses = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

const scoreOf = (index: number): number => modifiedZScores(masses)?.scores[index] ?? Number.NaN;

export const outlierAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    {
      source: "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17 and its Grubbs example; the data from memory",
      provenance: "source from memory, number recomputed",
      tolerance: { absolute: 0.001 },
      because: "worked out by hand to three decimals: median 201.37, MAD 0.995",
    },
    [
      ["modified z-score of the measurement that is far off", () => scoreOf(7), 29.963],
      ["modified z-score of the lowest measurement", () => scoreOf(0), -1.396],
      ["median of the measurements", () => modifiedZScores(masses)?.median ?? Number.NaN, 201.37],
    ],
  ),
  ...answersOf(
    {
      source:
        "Iglewicz and Hoaglin, How to Detect and Handle Outliers (1993), section 3.3, as several statistics packages cite it",
      provenance: "read in a transcription of the source and recomputed",
      tolerance: { absolute: 0 },
      because: "the threshold is a stated number",
    },
    [["modified z-score beyond which a number is labelled an outlier", () => OUTLIER_SCORE, 3.5]],
  ),
];
