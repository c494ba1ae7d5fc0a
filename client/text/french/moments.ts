/** French texts of the filters of a changelog, of two moments compared, and of the way back to one. */
import type { moments as english } from "../english/moments.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const moments: Said<typeof english> = {
  adjuster: "Réglage",
  everyAdjuster: "Tous les réglages",
  weekend: "Week-end",
  everyWeekend: "Tous les week-ends",
  noneOfThese: "Aucun changement de ce genre.",
  title: "Comparer deux moments",
  earlier: "Alors",
  later: "Comparé à",
  before: (weekend: string) => `Avant le week-end ${weekend}`,
  now: "Maintenant",
  after: (moment: string, what: string, who: string) => `${moment} : ${what}, ${who}`,
  several: settingsText,
  one: (adjuster: string, value: string) => `${adjuster} ${value}`,
  same: "Rien ne diffère entre les deux.",
  differ: (count: number) => plural(count, "réglage diffère.", "réglages diffèrent."),
  atTheBench: "Pressions telles qu’on les lit à l’établi de la séance choisie.",
  asTyped: "Pressions telles qu’elles ont été écrites : les conditions de la séance ne sont pas saisies.",
  difference: "Écart",
  more: (size: string) => `${size} de plus`,
  less: (size: string) => `${size} de moins`,
  unknown: "inconnu",
  disputed: "en désaccord",
  backTitle: (moment: string) => `Revenir à : ${moment}`,
  back: "Tout est sur le vélo comme alors",
  done: (count: number) => `Retour à ce moment : ${settingsText(count)} sur le vélo`,
  note: (moment: string) => `Retour à : ${moment}.`,
  already: "Le vélo est comme alors.",
  needsConditions: "Pour revenir, saisis d’abord piste et conditions : ce qu’une pression doit montrer en dépend.",
  order:
    "Fais les étapes dans cet ordre, puis dis que c’est fait : toutes les limites restent respectées après chaque étape.",
  unknownThen: (adjusters: string) => `Reste tel quel, car on n’en sait rien à ce moment : ${adjusters}.`,
  leftOut: (adjusters: string) => `Laissé de côté, car en désaccord alors ou maintenant : ${adjusters}.`,
};
