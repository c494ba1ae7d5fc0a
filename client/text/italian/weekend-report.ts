/** Italian texts of the weekend report. */
import type { End } from "#core/team/place.ts";
import type { weekendReport as english } from "../english/weekend-report.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

const endNames: Readonly<Record<string, string>> = { front: "davanti", rear: "dietro" };

export const weekendReport: Said<typeof english> = {
  title: "Rapporto del weekend",
  sessions: {
    title: "Sessioni",
    session: "Sessione",
    start: "Inizio",
    air: "Aria",
    bench: "Al banco",
    ground: "Terreno",
    runs: "Run",
    notEntered: "non inserito",
    noCourse: "La pista non è stata inserita.",
  },
  rider: (name: string, plate: number | undefined) => (plate === undefined ? name : `${name}, N. ${plate}`),
  bike: (bike: string, mass: string) => `${bike}; pilota ${mass}`,
  noRiders: "Nel team non c’è ancora nessun pilota con una bici.",
  nothing: "Su questa bici non è stata inserita nessuna run e non è stato regolato niente.",
  runs: {
    title: "Le run",
    none: "Nessuna run inserita.",
    run: "N.",
    session: "Sessione",
    time: "Tempo",
    front: "Anteriore",
    rear: "Posteriore",
    confidence: "Fiducia",
    note: "Nota",
    complaints: (count: number | undefined) =>
      count === undefined ? "niente detto" : count === 0 ? "bene" : plural(count, "problema", "problemi"),
    confidences: { low: "bassa", fair: "discreta", high: "alta" },
    empty: "–",
  },
  changes: {
    title: "Che cosa è stato cambiato, e con quale effetto",
    none: "Non è stato cambiato niente.",
    when: "Quando",
    who: "Chi",
    what: "Che cosa",
    why: "Perché",
    outcome: "Dopo",
    line: (adjuster: string, from: string, to: string) => `${adjuster} ${from} → ${to}`,
    first: (adjuster: string, to: string) => `${adjuster} regolato a ${to}`,
    still: (adjuster: string, value: string) => `${adjuster} sempre ${value}`,
    withdrawn: "ritirato",
    more: (count: number) => (count === 1 ? "e 1 altra" : `e altre ${count}`),
    answers: (run: number) => `Risponde alla run ${run}.`,
    careful: "Una run prova poco: cambiano anche pista, tempo e pilota.",
  },
  outcome: {
    start: "Sulla bici per la prima run.",
    "taken back": "Ritirato.",
    "not ridden": "Non provato in questo weekend.",
    compared: (before: number, after: number) => `Run ${after} rispetto alla run ${before}:`,
    seconds: (seconds: string, isFaster: boolean) => `${seconds} s ${isFaster ? "in meno" : "in più"}`,
    sameTime: "lo stesso tempo",
    noTimes: "non ci sono due tempi",
    otherSession: "in un’altra sessione",
    noComplaints: "nessun problema in tutt’e due",
    complaints: (end: End, { before, after }: { before: number | undefined; after: number | undefined }) =>
      `problemi ${endNames[end] ?? end}: ${before ?? "non detto"} → ${after ?? "non detto"}`,
  },
  end: {
    title: "Dove è finito",
    holds: (session: string, air: string) => `Pressioni come si leggono in ${session} a ${air}.`,
    adjuster: "Regolazione",
    baseline: "Base",
    ended: "Alla fine",
    difference: "Differenza",
    same: (count: number) =>
      count === 1 ? "1 regolazione è finita come nella base." : `${count} regolazioni sono finite come nella base.`,
    allSame: "Tutto è finito come nella base.",
    states: { unknown: "ignoto", disputed: "in disaccordo" },
    reported: "detto dal pilota, non confermato",
    why: {
      "nothing was set": "In questo weekend su questa bici non è stato regolato niente.",
      "no course": "La pista non è stata inserita, quindi non c’è una base con cui confrontare.",
      "no conditions": "Nessuna sessione ha condizioni, quindi non c’è una base con cui confrontare.",
    },
  },
  times: {
    title: "Tempi delle run, più basso è più veloce",
    changed: "modifica",
    run: (number: number) => `Run ${number}`,
    described: (facts: { count: number; fastest: string; fastestRun: number; slowest: string; slowestRun: number }) =>
      `${facts.count} run con un tempo, la più veloce la run ${facts.fastestRun} in ${facts.fastest}, la più lenta la run ${facts.slowestRun} in ${facts.slowest}.`,
    changes: (runs: string, count: number) =>
      count === 0
        ? "Tra loro non è stato cambiato niente."
        : count === 1
          ? `La prima con una modifica sulla bici: run ${runs} (nera).`
          : `Le prime con una modifica sulla bici: run ${runs} (nere).`,
  },
  settings: {
    title: "Regolazioni cambiate, run per run",
    described: (adjuster: string, values: string) => `${adjuster}: ${values}.`,
    atRun: (value: string, run: number) => `${value} dalla run ${run}`,
    unknown: "ignoto",
  },
};
