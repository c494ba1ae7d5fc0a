/** German texts of the service of a bike's parts, as the pit shows it. */
import type { service as model } from "../english/service.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const service: Said<typeof model> = {
  title: "Service",
  works: {
    fork: { "bath oil": "Schmieröl der Tauchrohre", complete: "Kompletter Service" },
    shock: { "bath oil": "Schmieröl der Luftkammer", complete: "Kompletter Service" },
  },
  states: { "in use": "Im Einsatz", due: "Fällig", overdue: "Überfällig" },
  hours: (used: string) => `${used} h`,
  limit: (limit: string) => `von ${limit} h`,
  dueNext: "Mit dem nächsten Lauf fällig.",
  overNext: "Mit dem nächsten Lauf sind die Stunden um.",
  untilDue: (left: string) => `Fällig in: ${left}.`,
  untilLimit: (left: string) => `Stunden um in: ${left}.`,
  runs: (count: number) => plural(count, "Lauf", "Läufe"),
  runsAndSessions: (runs: string, sessions: number) =>
    sessions === 0
      ? `${runs}, weniger als eine Session wie an diesem Wochenende`
      : `${runs} oder ${plural(sessions, "Session", "Sessions")} wie an diesem Wochenende`,
  over: "Die Stunden sind um.",
  neverDone: "Kein Service eingetragen: Die Stunden zählen ab dem ersten Lauf.",
  lastDone: (what: string, who: string, when: string) => `Zuletzt: ${what}, ${who}, ${when}`,
  hoursBefore: (hours: string) => `Da waren ${hours} h darauf.`,
  onTheBikeThen: (count: number) => `Was damals am Bike war: ${settingsText(count)}`,
  onTheBikeNow: (count: number) => `Wird mit eingetragen, was jetzt am Bike ist: ${settingsText(count)}`,
  nothingOnTheBike: "Von diesem Bike sind keine Einstellungen bekannt: Es kann nichts mit eingetragen werden.",
  inDispute: (adjusters: string) => `Strittig, daher nicht eingetragen: ${adjusters}. Schau erst ans Bike.`,
  setting: (adjuster: string, value: string) => `${adjuster}: ${value}`,
  done: (part: string) => `Service gemacht: ${part}`,
  what: "Was gemacht wurde",
  completeHint: "Zum kompletten Service gehört das Schmieröl: Beide beginnen von vorn.",
  before: "Gefahrene Stunden seither",
  beforeHint: "Nur für einen Service, der früher gemacht wurde. Leer lassen, wenn er gerade eben war.",
  hoursUnit: "h",
  note: "Notiz, wenn du magst",
  save: "Eintragen",
  needsWork: "Wähl, was gemacht wurde.",
  saved: (part: string, work: string) => `Eingetragen: ${part}, ${work}`,
  caution:
    "Ein überfälliges oder beschädigtes Teil gehört zu einem Fachmechaniker: nicht mit dem Setup darum herumarbeiten. Das Handbuch des Herstellers geht vor: Verlangt es den Service früher, ist er früher fällig.",
  counting: "Wie die Stunden gezählt werden",
  countingRuns: (minutes: string) =>
    `Jeder Lauf zählt mit seiner Zeit für die Teile, die da an seinem Bike waren, auch wenn es ein anderes Bike war; ein Lauf ohne Zeit zählt ${minutes} Minuten.`,
  countingGround: (weights: string) =>
    `Eine Stunde zählt je nach Boden: ${weights}. Nicht eingetragener Boden zählt als trocken.`,
  weight: (ground: string, weight: string) => `${ground} ${weight} h`,
  countingLeft: (minutes: string) =>
    `Was bleibt, wird in Läufen wie an diesem Wochenende gezählt; vor dem ersten in Läufen von ${minutes} Minuten auf trockenem Boden.`,
  countingDue: (percent: string) => `Fällig ab ${percent} % der Stunden.`,
  countingSource: "Gängige Praxis, wo der Hersteller nichts anderes sagt.",
};
