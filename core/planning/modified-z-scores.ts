/**
 * How far each of some numbers lies from their middle, by a rule that the far ones cannot spoil.
 *
 *   M = 0.6745 (x - median) / MAD,   MAD = median of |x - median|
 *
 * 0.6745 is the 0.75 quantile of the standard normal distribution, so that M is like a z-score where numbers scatter normally.
 * Source: B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, ASQC Quality Press 1993, section 3.3; also
 * NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.17.
 */

/** Numbers whose score is beyond this, to either side, are labelled as outliers. Source: the same. */
export const OUTLIER_SCORE = 3.5;

const NORMAL_QUARTILE = 0.6745;

export interface ModifiedZScores {
  readonly median: number;
  /** One for each number, in their order. */
  readonly scores: readonly number[];
}

/** @returns undefined where the rule says nothing: without numbers, and where more than half of them are equal (MAD = 0) */
export function modifiedZScores(numbers: readonly number[]): ModifiedZScores | undefined {
  const middle = median(numbers);
  if (middle === undefined) return undefined;
  const deviation = median(numbers.map((number) => Math.abs(number - middle))) ?? 0;
  if (!(deviation > 0) || !Number.isFinite(deviation)) return undefined;
  return { median: middle, scores: numbers.map((number) => (NORMAL_QUARTILE * (number - middle)) / deviation) };
}

function median(numbers: readonly number[]): number | undefined {
  const sorted = [...numbers].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2;
}
