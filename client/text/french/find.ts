/** French texts of looking for something. */
import type { find as english } from "../english/find.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const find: Said<typeof english> = {
  title: "Chercher",
  hint: "Noms, plaques, réglages, valeurs, raisons, notes : chaque mot doit y être.",
  field: "Mots",
  searching: "Recherche dans les saisies…",
  none: "Rien ne contient tous ces mots.",
  count: (count: number) => plural(count, "trouvé", "trouvés"),
  cut: (count: number) => `Seuls les ${count} plus récents s’affichent. Plus de mots en trouvent moins.`,
  kinds: { rider: "Pilote", weekend: "Week-end", change: "Changement", run: "Run", service: "Révision" },
  plate: (plate: number) => `plaque ${plate}`,
  rider: (name: string, facts: string) => `${name}, ${facts}`,
  weekend: (name: string, venue: string) => `${name}, ${venue}`,
  change: (rider: string, adjuster: string, from: string, to: string) => `${rider} : ${adjuster}, ${from} → ${to}`,
  run: (rider: string, session: string) => `${rider} : ${session}`,
  service: (rider: string, part: string, work: string) => `${rider} : ${part}, ${work}`,
  works: { "bath oil": "huile de graissage", complete: "révision complète" },
  notYet: "Dis d’abord qui tu es.",
};
