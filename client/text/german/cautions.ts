/** German texts about putting cautions out of the way. */
import type { cautions as model } from "../english/cautions.ts";
import type { Said } from "../spoken.ts";

export const cautions: Said<typeof model> = {
  fold: "Gelesen: vorerst einklappen",
  folded: "Eingeklappt, bis diese Seite wieder geöffnet wird.",
  show: "Sicherheitshinweise zeigen",
};
