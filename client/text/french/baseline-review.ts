/** French texts of how old a baseline is, what stands behind it, and how far it is from those of the others. */
import type { baselineReview as english } from "../english/baseline-review.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const baselineReview: Said<typeof english> = {
  age: {
    today: "date d’aujourd’hui",
    ahead: "date en avance sur l’horloge de cet appareil",
    days: (count: number) => `il y a ${plural(count, "jour", "jours")}`,
    weeks: (count: number) => `il y a ${plural(count, "semaine", "semaines")}`,
    months: (count: number) => `il y a ${count} mois`,
    years: (count: number) => `il y a ${plural(count, "an", "ans")}`,
  },
  evidence: {
    none: "aucun run avec ces valeurs pour l’instant",
    ridden: (runs: number, weekends: number) =>
      `${plural(runs, "run", "runs")} sur ${plural(weekends, "week-end", "week-ends")}`,
  },
  facts: (age: string, evidence: string) => `${age}, ${evidence}`,
  how: "Comment les runs sont comptés et les pilotes comparés",
  explained:
    "Un run compte pour une base quand toutes ses valeurs étaient sur le vélo, chacune à moins du plus petit écart qui se sent. Raideurs et pressions sont comparées par kilo de pilote avec les coéquipiers qui ont le même genre de pièce et de piste, à partir de cinq pilotes ; les pressions telles qu’on les lirait à 20 °C au niveau de la mer.",
  outlier: {
    high: "À regarder : haut pour la masse du pilote.",
    low: "À regarder : bas pour la masse du pilote.",
    sentence: (adjuster: string, value: string, median: string, riders: number) =>
      `${adjuster} : ${value} par kilo ; le milieu de ${plural(riders, "pilote", "pilotes")} est à ${median}.`,
  },
};
