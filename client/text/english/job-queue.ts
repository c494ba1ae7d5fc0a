/** English texts of the team's job queue, with which the pit opens. */
import type { JobKind } from "#core/planning/jobs/job.ts";
import type { NoRunReason } from "#core/weekend/no-run.ts";
import { settingsText } from "./settings-count.ts";

export const jobQueue = {
  title: "What to do next",
  none: "Nothing to do: every bike is as it should be for this session.",
  noneYet: "Nothing to do yet: the setups wait for course and conditions.",
  toRiders: "To the riders",
  riders: "Riders",
  jobs: (count: number) => (count === 1 ? "1 job" : `${count} jobs`),
  team: "The team",
  caution:
    "Gas is under pressure, springs are under load: stay below the maximum marked on the part. The cautions for each step are at the bench. The first ride after a change is slow and short.",
  sessions: {
    title: "Sessions",
    startsIn: (time: string) => `starts in ${time}`,
    running: "running",
    over: "over",
    allOver: "All sessions of this weekend are over.",
  },
  kinds: {
    "dispute to check": "Dispute to check at the bike",
    "reported change to confirm": "Reported change to confirm",
    "service overdue": "Service overdue",
    "feedback to decide on": "Feedback to decide on",
    "change to make": "Change to make",
    "pressure check": "Pressure check for the new temperature",
    "feedback missing": "Feedback missing",
    "service due": "Service due",
  } satisfies Record<JobKind, string>,
  until: (session: string) => `Until ${session},`,
  noneLeft: "No session left to do it for",
  steps: (count: number) => (count === 1 ? "1 step" : `${count} steps, in this order`),
  step: (adjuster: string, from: string | undefined, to: string) =>
    from === undefined ? `${adjuster}: ${to}` : `${adjuster}: ${from} → ${to}`,
  valueOf: (name: string, value: string) => `${name}: ${value}`,
  atBench: "At the bench",
  doneNow: (what: string) => `Done: ${what}`,
  undo: "Undo",
  undone: (rider: string, kind: string) => `Undone: ${kind}, ${rider}`,
  changedSince: "Changed since; what is so now is at the bench.",
  change: {
    what: (count: number) => (count === 1 ? "1 adjuster to set" : `${count} adjusters to set`),
    why: (session: string) => `The bike is not as course, ground and temperature of ${session} ask for.`,
    blocked: "No safe order reaches all of it: look at the bench.",
    touch: "It is all on the bike",
    said: (count: number) => `${settingsText(count)} on the bike`,
  },
  pressure: {
    what: (count: number) => (count === 1 ? "1 pressure to check" : `${count} pressures to check`),
    why: (session: string, air: string, bench: string) =>
      `Set at another temperature. At ${session} the air has ${air}, at the bench ${bench}.`,
    touch: "They read so now",
    said: (count: number) => (count === 1 ? "1 pressure set" : `${count} pressures set`),
    note: (session: string) => `The same pressure at the temperature of ${session}.`,
  },
  reported: {
    why: (who: string, when: string) => `${who} said so on ${when}; no mechanic has seen it.`,
    touch: (value: string) => `Seen: ${value}`,
    said: (adjuster: string, value: string) => `${adjuster} ${value} confirmed`,
  },
  decide: {
    why: (run: string, cause: string) => `${run}. ${cause}.`,
    of: (run: string) => `${run}.`,
    lookFirst: "Something is to be looked at or asked first.",
    noAdvice: "No rule of the advice speaks to this run.",
    noSetup: "No advice before course and conditions are entered.",
    put: (value: string) => `On the bike: ${value}`,
    putSaid: (adjuster: string, value: string) => `${adjuster} ${value} on the bike`,
    leave: "Leave as it is",
    leftSaid: "left as it is",
    read: "Read and decide",
  },
  missing: {
    what: (sessions: string) => `No run of ${sessions}`,
    why: (count: number) =>
      count === 1 ? "The session is over. Ask for the run." : "The sessions are over. Ask for the runs.",
    reasons: { "nothing to report": "Nothing to report", "did not ride": "Did not ride" } satisfies Record<
      NoRunReason,
      string
    >,
    look: "To his feedback",
  },
  dispute: {
    look: "Look at the bike before you say which one is right.",
    why: "Two people say different things.",
    claim: (value: string, who: string) => `It is ${value}, as ${who} says`,
    claimAfterAll: (value: string) => `After all it is ${value}`,
    go: "Look and say which",
  },
  service: {
    used: (used: string, limit: string, left: string) => `${used} ${limit}. ${left}`,
    touch: "Service done: write it down",
    said: (part: string, work: string) => `${part}, ${work.toLowerCase()}, written down now`,
  },
} as const;
