/** German texts of how old a baseline is, what stands behind it, and how far it is from those of the others. */
import type { baselineReview as model } from "../english/baseline-review.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const baselineReview: Said<typeof model> = {
  age: {
    today: "von heute",
    ahead: "der Uhr dieses Geräts voraus",
    days: (count: number) => `${plural(count, "Tag", "Tage")} alt`,
    weeks: (count: number) => `${plural(count, "Woche", "Wochen")} alt`,
    months: (count: number) => `${plural(count, "Monat", "Monate")} alt`,
    years: (count: number) => `${plural(count, "Jahr", "Jahre")} alt`,
  },
  evidence: {
    none: "noch kein Lauf mit diesen Werten",
    ridden: (runs: number, weekends: number) =>
      `${plural(runs, "Lauf", "Läufe")} an ${plural(weekends, "Wochenende", "Wochenenden")}`,
  },
  facts: (age: string, evidence: string) => `${age}, ${evidence}`,
  how: "Wie Läufe gezählt und Fahrer verglichen werden",
  explained:
    "Ein Lauf zählt für ein Basis-Setup, wenn alle seine Werte am Bike waren, jeder um weniger als einen spürbaren Schritt daneben. Federn und Drücke werden je Kilogramm Fahrer mit den Teamkollegen verglichen, die Teile derselben Art und denselben Streckentyp haben, ab fünf Fahrern; Drücke so, wie sie bei 20 °C auf Meereshöhe anzeigen würden.",
  outlier: {
    high: "Schau hin: hoch für das Gewicht des Fahrers.",
    low: "Schau hin: niedrig für das Gewicht des Fahrers.",
    sentence: (adjuster: string, value: string, median: string, riders: number) =>
      `${adjuster} ${value} je Kilogramm; die Mitte von ${riders} Fahrern ist ${median}.`,
  },
};
