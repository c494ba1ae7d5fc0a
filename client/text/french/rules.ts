/** French texts of the rule book's page. */
import type { rulesText as english } from "../english/rules.ts";
import type { Said } from "../spoken.ts";

export const rulesText: Said<typeof english> = {
  title: "Les règles des conseils",
  link: "Les règles des conseils",
  find: "Chercher par mots",
  none: "Aucune règle n’a tous ces mots.",
  when: "Quand",
  moves: "Ce qu’elle fait, par ordre de préférence",
};
