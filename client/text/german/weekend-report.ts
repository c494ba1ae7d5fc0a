/** German texts of the weekend report. */
import type { weekendReport as model } from "../english/weekend-report.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const weekendReport: Said<typeof model> = {
  title: "Wochenendbericht",
  sessions: {
    title: "Sessions",
    session: "Session",
    start: "Beginn",
    air: "Luft",
    bench: "An der Werkbank",
    ground: "Boden",
    runs: "Läufe",
    notEntered: "nicht eingetragen",
    noCourse: "Die Strecke wurde nicht eingetragen.",
  },
  rider: (name: string, plate: number | undefined) => (plate === undefined ? name : `${name}, Nr. ${plate}`),
  bike: (bike: string, mass: string) => `${bike}; Fahrer ${mass}`,
  noRiders: "Noch keine Fahrer mit Bike im Team.",
  nothing: "Kein Lauf wurde eingetragen und an diesem Bike nichts eingestellt.",
  runs: {
    title: "Läufe",
    none: "Kein Lauf wurde eingetragen.",
    run: "Lauf",
    session: "Session",
    time: "Zeit",
    front: "Vorne",
    rear: "Hinten",
    confidence: "Vertrauen",
    note: "Notiz",
    complaints: (count: number | undefined) =>
      count === undefined ? "nichts gesagt" : count === 0 ? "gut" : plural(count, "Klage", "Klagen"),
    confidences: { low: "gering", fair: "mittel", high: "hoch" },
    empty: "–",
  },
  changes: {
    title: "Was geändert wurde, und was daraus wurde",
    none: "Nichts wurde geändert.",
    when: "Wann",
    who: "Wer",
    what: "Was",
    why: "Warum",
    outcome: "Danach",
    line: (adjuster: string, from: string, to: string) => `${adjuster} ${from} → ${to}`,
    first: (adjuster: string, to: string) => `${adjuster} auf ${to} gestellt`,
    still: (adjuster: string, value: string) => `${adjuster} weiterhin ${value}`,
    withdrawn: "zurückgezogen",
    more: (count: number) => `und ${count} weitere`,
    answers: (run: number) => `Antwort auf Lauf ${run}.`,
    careful: "Ein Lauf beweist wenig: Auch Strecke, Wetter und Fahrer ändern sich.",
  },
  outcome: {
    start: "Für den ersten Lauf am Bike.",
    "taken back": "Zurückgenommen.",
    "not ridden": "An diesem Wochenende nicht gefahren.",
    compared: (before: number, after: number) => `Lauf ${after} gegen Lauf ${before}:`,
    seconds: (seconds: string, isFaster: boolean) => `${seconds} s ${isFaster ? "schneller" : "langsamer"}`,
    sameTime: "gleiche Zeit",
    noTimes: "keine zwei Zeiten",
    otherSession: "in einer anderen Session",
    noComplaints: "beide ohne Klage",
    complaints: (end, { before, after }) =>
      `${end === "front" ? "vorne" : "hinten"} Klagen: ${before ?? "nichts gesagt"} → ${after ?? "nichts gesagt"}`,
  },
  end: {
    title: "Stand am Ende",
    holds: (session: string, air: string) => `Drücke, wie sie in ${session} bei ${air} anzeigen.`,
    adjuster: "Einstellpunkt",
    baseline: "Basis-Setup",
    ended: "Am Ende",
    difference: "Differenz",
    same: (count: number) =>
      `${plural(count, "Einstellpunkt steht", "Einstellpunkte stehen")} am Ende wie im Basis-Setup.`,
    allSame: "Am Ende steht alles wie im Basis-Setup.",
    states: { unknown: "unbekannt", disputed: "strittig" },
    reported: "vom Fahrer gemeldet, nicht bestätigt",
    why: {
      "nothing was set": "An diesem Wochenende wurde an diesem Bike nichts eingestellt.",
      "no course": "Die Strecke wurde nicht eingetragen, daher gibt es kein Basis-Setup zum Vergleichen.",
      "no conditions": "Keine Session hat Bedingungen, daher gibt es kein Basis-Setup zum Vergleichen.",
    },
  },
  times: {
    title: "Laufzeiten, tiefer ist schneller",
    changed: "geändert",
    run: (number: number) => `Lauf ${number}`,
    described: (facts) =>
      `${facts.count} Läufe mit Zeit, am schnellsten Lauf ${facts.fastestRun} in ${facts.fastest}, am langsamsten Lauf ${facts.slowestRun} in ${facts.slowest}.`,
    changes: (runs: string, count: number) =>
      count === 0
        ? "Dazwischen wurde nichts geändert."
        : `Erstmals mit einer Änderung am Bike: ${count === 1 ? "Lauf" : "Läufe"} ${runs} (schwarz).`,
  },
  settings: {
    title: "Geänderte Einstellungen, Lauf für Lauf",
    described: (adjuster: string, values: string) => `${adjuster}: ${values}.`,
    atRun: (value: string, run: number) => `${value} ab Lauf ${run}`,
    unknown: "unbekannt",
  },
};
