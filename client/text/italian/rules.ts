/** Italian texts of the rule book's page. */
import type { rulesText as english } from "../english/rules.ts";
import type { Said } from "../spoken.ts";

export const rulesText: Said<typeof english> = {
  title: "Le regole dei consigli",
  link: "Le regole dei consigli",
  find: "Cerca per parole",
  none: "Nessuna regola contiene tutte queste parole.",
  when: "Quando",
  moves: "Che cosa fa, in ordine di preferenza",
};
