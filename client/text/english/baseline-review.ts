/** English texts of how old a baseline is, what stands behind it, and how far it is from those of the others. */

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

export const baselineReview = {
  age: {
    today: "from today",
    ahead: "dated ahead of this device's clock",
    days: (count: number) => `${plural(count, "day", "days")} old`,
    weeks: (count: number) => `${plural(count, "week", "weeks")} old`,
    months: (count: number) => `${plural(count, "month", "months")} old`,
    years: (count: number) => `${plural(count, "year", "years")} old`,
  },
  evidence: {
    none: "no run with these values yet",
    ridden: (runs: number, weekends: number) =>
      `${plural(runs, "run", "runs")} on ${plural(weekends, "weekend", "weekends")}`,
  },
  facts: (age: string, evidence: string) => `${age}, ${evidence}`,
  how: "How runs are counted and riders compared",
  explained:
    "A run counts for a baseline when all of its values were on the bike, each less than a felt step off. Springs and pressures are compared by kilogram of rider with the team mates who have the same kind of part and course type, from five riders on; pressures as they would read at 20 °C at sea level.",
  outlier: {
    high: "Look at it: high for the rider's mass.",
    low: "Look at it: low for the rider's mass.",
    sentence: (adjuster: string, value: string, median: string, riders: number) =>
      `${adjuster} ${value} a kilogram; the middle of ${riders} riders is ${median}.`,
  },
} as const;
