/** English texts of the weekend report. */
import type { End } from "#core/team/place.ts";

/** What the rider complained of at an end in two runs; undefined where he said nothing of it. */
interface Complaints {
  readonly before: number | undefined;
  readonly after: number | undefined;
}

export const weekendReport = {
  title: "Weekend report",
  sessions: {
    title: "Sessions",
    session: "Session",
    start: "Start",
    air: "Air",
    bench: "At the bench",
    ground: "Ground",
    runs: "Runs",
    notEntered: "not entered",
    noCourse: "The course was not entered.",
  },
  rider: (name: string, plate: number | undefined) => (plate === undefined ? name : `${name}, No. ${plate}`),
  bike: (bike: string, mass: string) => `${bike}; rider ${mass}`,
  noRiders: "No riders with a bike in the team yet.",
  nothing: "No run was logged and nothing was set on this bike.",
  runs: {
    title: "Runs",
    none: "No run was logged.",
    run: "Run",
    session: "Session",
    time: "Time",
    front: "Front",
    rear: "Rear",
    confidence: "Confidence",
    note: "Note",
    complaints: (count: number | undefined) =>
      count === undefined ? "nothing said" : count === 0 ? "good" : count === 1 ? "1 complaint" : `${count} complaints`,
    confidences: { low: "low", fair: "fair", high: "high" },
    empty: "–",
  },
  changes: {
    title: "What was changed, and what came of it",
    none: "Nothing was changed.",
    when: "When",
    who: "Who",
    what: "What",
    why: "Why",
    outcome: "Afterwards",
    line: (adjuster: string, from: string, to: string) => `${adjuster} ${from} → ${to}`,
    first: (adjuster: string, to: string) => `${adjuster} set to ${to}`,
    still: (adjuster: string, value: string) => `${adjuster} still ${value}`,
    withdrawn: "withdrawn",
    more: (count: number) => (count === 1 ? "and 1 more" : `and ${count} more`),
    answers: (run: number) => `Answers run ${run}.`,
    careful: "One run proves little: course, weather and rider change too.",
  },
  outcome: {
    start: "On the bike for the first run.",
    "taken back": "Taken back.",
    "not ridden": "Not ridden on this weekend.",
    compared: (before: number, after: number) => `Run ${after} against run ${before}:`,
    seconds: (seconds: string, isFaster: boolean) => `${seconds} s ${isFaster ? "faster" : "slower"}`,
    sameTime: "the same time",
    noTimes: "no two times",
    otherSession: "in another session",
    noComplaints: "no complaint in either",
    complaints: (end: End, { before, after }: Complaints) =>
      `${end} ${before === undefined ? "unsaid" : before} → ${after === undefined ? "unsaid" : after} complaints`,
  },
  end: {
    title: "Where it ended",
    holds: (session: string, air: string) => `Pressures as they read in ${session} at ${air}.`,
    adjuster: "Adjuster",
    baseline: "Baseline",
    ended: "Ended",
    difference: "Difference",
    same: (count: number) =>
      count === 1 ? "1 adjuster ended at the baseline." : `${count} adjusters ended at the baseline.`,
    allSame: "All ended at the baseline.",
    states: { unknown: "not known", disputed: "in dispute" },
    reported: "said by the rider, not confirmed",
    why: {
      "nothing was set": "Nothing was set on this bike on this weekend.",
      "no course": "The course was not entered, so that there is no baseline to compare with.",
      "no conditions": "No session has conditions, so that there is no baseline to compare with.",
    },
  },
  times: {
    title: "Run times, lower is faster",
    changed: "changed",
    run: (number: number) => `Run ${number}`,
    /** For who cannot see the chart, and below it. */
    described: (facts: { count: number; fastest: string; fastestRun: number; slowest: string; slowestRun: number }) =>
      `${facts.count} timed runs, the fastest run ${facts.fastestRun} in ${facts.fastest}, the slowest run ${facts.slowestRun} in ${facts.slowest}.`,
    changes: (runs: string, count: number) =>
      count === 0
        ? "Nothing was changed between them."
        : `The first with a change on the bike: run${count === 1 ? "" : "s"} ${runs} (black).`,
  },
  settings: {
    title: "Settings that were changed, run by run",
    described: (adjuster: string, values: string) => `${adjuster}: ${values}.`,
    atRun: (value: string, run: number) => `${value} from run ${run}`,
    unknown: "not known",
  },
} as const;
