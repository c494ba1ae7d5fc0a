/** German texts of the rule book's page. */
import type { rulesText as model } from "../english/rules.ts";
import type { Said } from "../spoken.ts";

export const rulesText: Said<typeof model> = {
  title: "Die Regeln der Ratschläge",
  link: "Die Regeln der Ratschläge",
  find: "Nach Wörtern suchen",
  none: "Keine Regel enthält alle diese Wörter.",
  when: "Wann",
  moves: "Was sie tut, Bevorzugtes zuerst",
};
