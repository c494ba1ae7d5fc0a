/** French texts of the weekend report. */
import type { End } from "#core/team/place.ts";
import type { weekendReport as english } from "../english/weekend-report.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";

const atEnd = { front: "à l’avant", rear: "à l’arrière" } satisfies Record<End, string>;

export const weekendReport: Said<typeof english> = {
  title: "Rapport du week-end",
  sessions: {
    title: "Séances",
    session: "Séance",
    start: "Départ",
    air: "Air",
    bench: "À l’établi",
    ground: "Sol",
    runs: "Runs",
    notEntered: "pas saisi",
    noCourse: "La piste n’a pas été saisie.",
  },
  rider: (name: string, plate: number | undefined) => (plate === undefined ? name : `${name}, n° ${plate}`),
  bike: (bike: string, mass: string) => `${bike} ; pilote ${mass}`,
  noRiders: "Pas encore de pilote avec un vélo dans l’équipe.",
  nothing: "Aucun run n’a été noté et rien n’a été réglé sur ce vélo.",
  runs: {
    title: "Runs",
    none: "Aucun run n’a été noté.",
    run: "Run",
    session: "Séance",
    time: "Temps",
    front: "Avant",
    rear: "Arrière",
    confidence: "Confiance",
    note: "Note",
    complaints: (count: number | undefined) =>
      count === undefined ? "rien dit" : count === 0 ? "bien" : plural(count, "plainte", "plaintes"),
    confidences: { low: "faible", fair: "moyenne", high: "bonne" },
    empty: "–",
  },
  changes: {
    title: "Ce qui a été changé, et ce que cela a donné",
    none: "Rien n’a été changé.",
    when: "Quand",
    who: "Qui",
    what: "Quoi",
    why: "Pourquoi",
    outcome: "Ensuite",
    line: (adjuster: string, from: string, to: string) => `${adjuster} : ${from} → ${to}`,
    first: (adjuster: string, to: string) => `${adjuster} : ${to}, première valeur`,
    still: (adjuster: string, value: string) => `${adjuster} : toujours ${value}`,
    withdrawn: "retiré",
    more: (count: number) => `et ${plural(count, "autre", "autres")}`,
    answers: (run: number) => `Répond au run ${run}.`,
    careful: "Un seul run prouve peu : la piste, la météo et le pilote changent aussi.",
  },
  outcome: {
    start: "Sur le vélo pour le premier run.",
    "taken back": "Annulé ensuite.",
    "not ridden": "Aucun run avec, ce week-end.",
    compared: (before: number, after: number) => `Run ${after} par rapport au run ${before} :`,
    seconds: (seconds: string, isFaster: boolean) => `${seconds} s ${isFaster ? "plus vite" : "plus lent"}`,
    sameTime: "le même temps",
    noTimes: "pas deux temps",
    otherSession: "dans une autre séance",
    noComplaints: "aucune plainte dans les deux",
    complaints: (end: End, { before, after }: { before: number | undefined; after: number | undefined }) =>
      `plaintes ${atEnd[end]} ${before ?? "non dit"} → ${after ?? "non dit"}`,
  },
  end: {
    title: "Où cela a fini",
    holds: (session: string, air: string) => `Pressions telles qu’on les lit à la séance ${session}, à ${air}.`,
    adjuster: "Réglage",
    baseline: "Base",
    ended: "À la fin",
    difference: "Écart",
    same: (count: number) => plural(count, "réglage a fini à la base.", "réglages ont fini à la base."),
    allSame: "Tous ont fini à la base.",
    states: { unknown: "inconnu", disputed: "en désaccord" },
    reported: "dit par le pilote, pas confirmé",
    why: {
      "nothing was set": "Rien n’a été réglé sur ce vélo ce week-end.",
      "no course": "La piste n’a pas été saisie, donc il n’y a pas de base à laquelle comparer.",
      "no conditions": "Aucune séance n’a de conditions, donc il n’y a pas de base à laquelle comparer.",
    },
  },
  times: {
    title: "Temps des runs, plus bas est plus vite",
    changed: "changé",
    run: (number: number) => `Run ${number}`,
    described: (facts: { count: number; fastest: string; fastestRun: number; slowest: string; slowestRun: number }) =>
      `${plural(facts.count, "run chronométré", "runs chronométrés")}, le plus rapide est le run ${facts.fastestRun} en ${facts.fastest}, le plus lent le run ${facts.slowestRun} en ${facts.slowest}.`,
    changes: (runs: string, count: number) =>
      count === 0
        ? "Rien n’a été changé entre eux."
        : `${chosen(count, "Le premier avec un changement sur le vélo : run", "Les premiers avec un changement sur le vélo : runs")} ${runs} (en noir).`,
  },
  settings: {
    title: "Réglages changés, run par run",
    described: (adjuster: string, values: string) => `${adjuster} : ${values}.`,
    atRun: (value: string, run: number) => `${value} dès le run ${run}`,
    unknown: "inconnu",
  },
};
