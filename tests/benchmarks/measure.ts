/** Measuring on shared, noisy machines: many repetitions, the median with its spread, and ratios within one run. */

export interface Measurement {
  /** ms of one repetition. */
  readonly median: number;
  readonly lowerQuartile: number;
  readonly upperQuartile: number;
}

/** Runs `work` until it is warm, then `repetitions` times (≥ 5), and takes the time of each. */
export function measure(repetitions: number, work: () => void): Measurement {
  for (let warm = 0; warm < Math.max(5, repetitions / 5); warm += 1) work();
  const times = Array.from({ length: repetitions }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return quartiles(times);
}

/** @param times of one repetition each, ms, in any order */
export function quartiles(times: readonly number[]): Measurement {
  return {
    median: percentile(times, 0.5),
    lowerQuartile: percentile(times, 0.25),
    upperQuartile: percentile(times, 0.75),
  };
}

/** The value below which `part` (0 to 1) of the values lie; 0 of none. */
export function percentile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0;
}

/** "12.3 ms (11.9 to 13.0)", in µs below 1 ms. */
export function describe({ median, lowerQuartile, upperQuartile }: Measurement): string {
  const [factor, unit] = median < 1 ? [1000, "µs"] : [1, "ms"];
  const text = (value: number) => (value * factor).toPrecision(3);
  return `${text(median)} ${unit} (quartiles ${text(lowerQuartile)} to ${text(upperQuartile)})`;
}

/** One line of a report: what, how much, and whether it keeps its bound (absent: none is set). */
export function line(what: string, value: string, bound?: { readonly text: string; readonly kept: boolean }): string {
  const judged = bound ? `   ${bound.kept ? "keeps" : "MISSES"} ${bound.text}` : "";
  return `${what.padEnd(62)} ${value}${judged}\n`;
}
