import type { UpdateStore } from "./store/update-store.ts";

/** The quantiles of commit times are of the newest commits, so that they tell how the disk is now. */
export const newestCommits = 1000;

/** What has gone into the log since the start. Times are in seconds, from the beginning of a write to its end on the disk. */
export type CommitReport = {
  readonly updates: number;
  readonly commits: number;
  readonly failures: number;
  readonly totalSeconds: number;
  /** By quantile (0 to 1), of the newest commits; NaN before the first. */
  readonly secondsByQuantile: ReadonlyMap<number, number>;
};

export type CommitMeter = {
  /** The same log, measured. */
  readonly store: UpdateStore;
  report(): CommitReport;
};

const quantiles = [0.5, 0.9, 0.99, 1];

/** @param now milliseconds of a clock that never goes back. */
export function measureCommits(log: UpdateStore, now: () => number): CommitMeter {
  const newest: number[] = [];
  let updates = 0;
  let commits = 0;
  let failures = 0;
  let totalSeconds = 0;
  return {
    store: {
      ...log,
      append(entries) {
        const begun = now();
        try {
          log.append(entries);
        } catch (error) {
          failures += 1;
          throw error;
        }
        const seconds = (now() - begun) / 1000;
        newest[commits % newestCommits] = seconds;
        commits += 1;
        updates += entries.length;
        totalSeconds += seconds;
      },
    },
    report() {
      const sorted = [...newest].sort((left, right) => left - right);
      const secondsByQuantile = new Map(quantiles.map((quantile) => [quantile, nearestRank(sorted, quantile)]));
      return { updates, commits, failures, totalSeconds, secondsByQuantile };
    },
  };
}

function nearestRank(sorted: readonly number[], quantile: number): number {
  return sorted[Math.ceil(quantile * sorted.length) - 1] ?? Number.NaN;
}
