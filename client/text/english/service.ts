/** English texts of the service of a bike's parts, as the pit shows it. */
import type { PartServiceStatus } from "#core/planning/service-status.ts";
import { settingsText } from "./settings-count.ts";

export const service = {
  title: "Service",
  works: {
    fork: { "bath oil": "Bath oil of the lower legs", complete: "Complete service" },
    shock: { "bath oil": "Bath oil of the air can", complete: "Complete service" },
  } satisfies Record<PartServiceStatus["place"], Record<PartServiceStatus["works"][number]["work"], string>>,
  states: { "in use": "In use", due: "Due", overdue: "Overdue" } satisfies Record<PartServiceStatus["state"], string>,
  hours: (used: string) => `${used} h`,
  limit: (limit: string) => `of ${limit} h`,
  dueNext: "Due with the next run.",
  overNext: "The hours are over with the next run.",
  untilDue: (left: string) => `${left} until it is due.`,
  untilLimit: (left: string) => `${left} until the hours are over.`,
  runs: (count: number) => (count === 1 ? "1 run" : `${count} runs`),
  runsAndSessions: (runs: string, sessions: number) =>
    sessions === 0
      ? `${runs}, less than a session like this weekend's,`
      : `${runs}, or ${sessions === 1 ? "1 session" : `${sessions} sessions`} like this weekend's,`,
  over: "The hours are over.",
  neverDone: "No service is written down: the hours count from the first run.",
  lastDone: (what: string, who: string, when: string) => `Last: ${what}, ${who}, ${when}`,
  hoursBefore: (hours: string) => `${hours} h were on it then.`,
  onTheBikeThen: (count: number) => `What was on the bike then: ${settingsText(count)}`,
  onTheBikeNow: (count: number) => `Written down with it, what is on the bike now: ${settingsText(count)}`,
  nothingOnTheBike: "No settings of this bike are known: nothing can be written down with it.",
  inDispute: (adjusters: string) => `In dispute, so not written down: ${adjusters}. Look at the bike first.`,
  setting: (adjuster: string, value: string) => `${adjuster}: ${value}`,
  done: (part: string) => `Service done: ${part.toLowerCase()}`,
  what: "What was done",
  completeHint: "A complete service has the bath oil in it: both start again.",
  before: "Hours ridden since it was done",
  beforeHint: "Only for a service that was done earlier. Leave it empty when it was done just now.",
  hoursUnit: "h",
  note: "Note, if you like",
  save: "Write it down",
  needsWork: "Choose what was done.",
  saved: (part: string, work: string) => `Written down: ${part}, ${work.toLowerCase()}`,
  caution:
    "An overdue or damaged part goes to a qualified mechanic: do not tune around it. The maker's manual comes first: where it asks for service earlier, it is due earlier.",
  counting: "How the hours are counted",
  countingRuns: (minutes: string) =>
    `Each run counts with its time for the parts that were on its bike then, also on another bike; a run without a time counts as ${minutes} minutes.`,
  countingGround: (weights: string) =>
    `An hour counts by the ground: ${weights}. A ground that is not entered counts as dry.`,
  weight: (ground: string, weight: string) => `${ground} ${weight} h`,
  countingLeft: (minutes: string) =>
    `What is left is counted in runs like this weekend's; before the first one, in runs of ${minutes} minutes on dry ground.`,
  countingDue: (percent: string) => `Due from ${percent} % of the hours on.`,
  countingSource: "Common practice, where the maker says nothing else.",
} as const;
