/** French texts of entering course and conditions. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";

export const course: Said<typeof english.course> = {
  title: "Piste et conditions",
  mix: "Quelle part de la piste est…",
  mixHint: "En parts de 1 : à moitié raide, c’est 0,5.",
  parts: { steep: "Raide", jumpy: "À sauts", wet: "Mouillée" },
  partUnit: "de 1",
  sum: (sum: string) => `Leur somme est ${sum}.`,
  sumMust: (sum: string) => `Leur somme est ${sum} ; elle doit être 1.`,
  altitude: "Altitude",
  air: "Air à la séance",
  bench: "Air à l’établi",
  benchHint: "Laisse l’établi vide s’il y fait la même température qu’à la séance.",
  ground: "Sol",
  sameForAll: "Pareil pour toutes les séances",
  disputed: "Deux personnes ont saisi ici des valeurs différentes. Ce que tu enregistres tranche.",
  needsAir: (session: string) => `${session} : entre la température de l’air.`,
  needsGround: (session: string) => `${session} : choisis le sol.`,
  needsPart: (part: string) => `${part} : entre une part de 1, ou 0.`,
  needsAltitude: "Altitude : entre la hauteur au-dessus de la mer.",
  needsFix: (field: string) => `${field} : corrige d’abord ce qui y est écrit.`,
  theCourse: "piste",
  theConditions: (session: string) => `conditions (${session})`,
  changedMeanwhile: (what: string) =>
    `Quelqu’un d’autre a modifié ceci pendant que cette page était ouverte : ${what}. Enregistre encore une fois pour mettre tes valeurs à la place.`,
  saved: (what: string) => `Enregistré : ${what}.`,
  unchanged: "Rien n’a été modifié.",
};
