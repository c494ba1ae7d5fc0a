/** French texts of why the advice does not propose a change that somebody has in mind. */
import type { whyNot as english } from "../english/why-not.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const whyNot: Said<typeof english> = {
  title: "Pourquoi pas un autre changement ?",
  hint: "Choisis un réglage et un sens. Les règles répondent.",
  adjuster: "Réglage",
  choose: "Choisis un réglage",
  direction: "Dans quel sens",
  directions: {
    damper: { up: "plus ouvert", down: "plus fermé" },
    other: { up: "plus", down: "moins" },
  },
  noAdjuster: "Ce vélo n’a pas ce réglage.",
  proposed: "C’est le premier ajustement ci-dessus.",
  proposedLater: (waitsFor: string) => `C’est proposé, mais pas tout de suite. ${waitsFor}`,
  noRule: "Aucune règle ne répond par ce changement à quelque chose que dit un pilote.",
  opposite: (setting: string) => `Les conseils vont dans l’autre sens : ${setting}.`,
  wouldIf: (end: string, reason: string) => `${end} : ${reason}`,
  notSaid: (symptoms: string) => `Pas maintenant : personne n’a dit ni mesuré « ${symptoms} ».`,
  spokenAgainst: (symptoms: string) => `Pas maintenant : « ${symptoms} » parle contre.`,
  inQuestion: (symptoms: string) =>
    `Pas avant d’avoir demandé au pilote : « ${symptoms} » contredit ce qui a été dit d’autre.`,
  anotherWay: (adjuster: string) => `La même règle passe d’abord par ceci : ${adjuster}.`,
  twoChanges: "Deux changements pour la même plainte n’ont pas aidé : regarde la révision et les dégâts.",
  more: (count: number) => plural(count, "autre règle", "autres règles"),
};
