/** German texts of the team's job queue, with which the pit opens. */
import type { jobQueue as model } from "../english/job-queue.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const jobQueue: Said<typeof model> = {
  title: "Was als Nächstes dran ist",
  none: "Nichts zu tun: Jedes Bike ist so, wie es für diese Session sein soll.",
  noneYet: "Noch nichts zu tun: Die Setups warten auf Strecke und Bedingungen.",
  toRiders: "Zu den Fahrern",
  riders: "Fahrer",
  jobs: (count: number) => plural(count, "Aufgabe", "Aufgaben"),
  team: "Das Team",
  caution:
    "Gas steht unter Druck, Federn stehen unter Spannung: Bleib unter dem Maximum, das auf dem Teil steht. Die Sicherheitshinweise zu jedem Schritt stehen bei der Werkbank. Die erste Fahrt nach einer Änderung ist langsam und kurz.",
  sessions: {
    title: "Sessions",
    startsIn: (time: string) => `beginnt in ${time}`,
    running: "läuft",
    over: "vorbei",
    allOver: "Alle Sessions dieses Wochenendes sind vorbei.",
  },
  kinds: {
    "dispute to check": "Widerspruch am Bike klären",
    "reported change to confirm": "Gemeldete Änderung bestätigen",
    "service overdue": "Service überfällig",
    "feedback to decide on": "Über Feedback entscheiden",
    "change to make": "Änderung ans Bike bringen",
    "pressure check": "Druck prüfen, neue Temperatur",
    "feedback missing": "Feedback fehlt",
    "service due": "Service fällig",
  },
  until: (session: string) => `Bis ${session},`,
  noneLeft: "Keine Session mehr, für die es nötig ist",
  steps: (count: number) => (count === 1 ? "1 Schritt" : `${count} Schritte, in dieser Reihenfolge`),
  step: (adjuster: string, from: string | undefined, to: string) =>
    from === undefined ? `${adjuster}: ${to}` : `${adjuster}: ${from} → ${to}`,
  valueOf: (name: string, value: string) => `${name}: ${value}`,
  atBench: "Zur Werkbank",
  doneNow: (what: string) => `Erledigt: ${what}`,
  undo: "Rückgängig",
  undone: (rider: string, kind: string) => `Rückgängig gemacht: ${kind}, ${rider}`,
  changedSince: "Seither geändert; was jetzt gilt, steht bei der Werkbank.",
  change: {
    what: (count: number) => `${plural(count, "Einstellpunkt", "Einstellpunkte")} offen`,
    why: (session: string) =>
      `Das Bike ist nicht so eingestellt, wie Strecke, Boden und Temperatur bei ${session} es verlangen.`,
    blocked: "Keine sichere Reihenfolge führt ganz ans Ziel: Schau bei der Werkbank nach.",
    touch: "Alles davon ist am Bike",
    said: (count: number) => `${settingsText(count)} am Bike`,
  },
  pressure: {
    what: (count: number) => `${plural(count, "Druck", "Drücke")} zu prüfen`,
    why: (session: string, air: string, bench: string) =>
      `Bei einer anderen Temperatur eingestellt. Bei ${session} hat die Luft ${air}, an der Werkbank ${bench}.`,
    touch: "So zeigt es jetzt an",
    said: (count: number) => `${plural(count, "Druck", "Drücke")} eingestellt`,
    note: (session: string) => `Derselbe Druck, bei der Temperatur von ${session}.`,
  },
  reported: {
    why: (who: string, when: string) => `Gemeldet von ${who}, ${when}; noch kein Mechaniker hat es gesehen.`,
    touch: (value: string) => `Gesehen: ${value}`,
    said: (adjuster: string, value: string) => `${adjuster} ${value} bestätigt`,
  },
  decide: {
    why: (run: string, cause: string) => `${run}. ${cause}.`,
    of: (run: string) => `${run}.`,
    lookFirst: "Erst ist etwas nachzusehen oder zu fragen.",
    noAdvice: "Zu diesem Lauf sagt keine Regel etwas.",
    noSetup: "Kein Ratschlag, bevor Strecke und Bedingungen eingetragen sind.",
    put: (value: string) => `Am Bike: ${value}`,
    putSaid: (adjuster: string, value: string) => `${adjuster} ${value} am Bike`,
    leave: "Lassen, wie es ist",
    leftSaid: "bleibt, wie es ist",
    read: "Lesen und entscheiden",
  },
  missing: {
    what: (sessions: string) => `Kein Lauf in ${sessions}`,
    why: (count: number) =>
      count === 1 ? "Die Session ist vorbei. Frag nach dem Lauf." : "Die Sessions sind vorbei. Frag nach den Läufen.",
    reasons: { "nothing to report": "Nichts zu melden", "did not ride": "Nicht gefahren" },
    look: "Zu seinem Feedback",
  },
  dispute: {
    look: "Schau ans Bike, bevor du sagst, was stimmt.",
    why: "Zwei sagen Verschiedenes.",
    claim: (value: string, who: string) => `Richtig: ${value}, wie ${who} sagt`,
    claimAfterAll: (value: string) => `Doch richtig: ${value}`,
    go: "Nachsehen und klären",
  },
  service: {
    used: (used: string, limit: string, left: string) => `${used} ${limit}. ${left}`,
    touch: "Service gemacht: eintragen",
    said: (part: string, work: string) => `${part}, ${work}, jetzt eingetragen`,
  },
};
