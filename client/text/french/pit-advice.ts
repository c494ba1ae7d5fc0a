/** French texts of the advice on a run. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const advice: Said<typeof english.advice> = {
  referrals: "Pas une affaire de réglage : regarde ça d’abord",
  questions: "À demander d’abord au pilote",
  first: "Premier ajustement",
  others: (count: number) => plural(count, "autre ajustement", "autres ajustements"),
  none: "Aucune règle des conseils ne parle de ce run.",
  opens: "plus ouvert",
  closes: "plus fermé",
  put: "Mettre sur le vélo",
  putDone: (adjuster: string, value: string) => `Sur le vélo : ${adjuster} ${value}`,
  cause: (end: string, symptoms: string) => `${end} : ${symptoms}`,
  sizedBy: {
    measured: "Taille tirée de ce qui a été mesuré",
    "felt step": "Taille du plus petit changement qui se sent",
  },
  fitted: "Calé sur le sag mesuré",
  notFitted: "Pas calé : sens et ordre de grandeur seulement",
  reason: "Pourquoi",
  notice: "Le pilote devrait remarquer",
  otherwise: "Si ça n’aide pas",
  limits: "Limites",
  coupled: "En même temps",
  provenance: (provenance: string) => `Source : ${provenance}`,
  prediction: "Ce que prédit la physique",
  now: "Maintenant",
  afterwards: "Après",
  sag: "Sag",
  travel: "Débattement utilisé au même choc",
  bottomsOut: (length: string) => `${length}, talonne`,
  forceHalf: "Force à mi-course",
  forceNineTenths: "Force à 90 % de la course",
  forceFull: "Force en fin de course",
  frequency: "Fréquence propre",
  unanswered: "Ce à quoi les conseils n’ont pas de réponse",
};
