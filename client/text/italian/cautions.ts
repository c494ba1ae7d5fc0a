/** Italian texts about putting cautions out of the way. */
import type { cautions as english } from "../english/cautions.ts";
import type { Said } from "../spoken.ts";

export const cautions: Said<typeof english> = {
  fold: "Letto: chiudi per adesso",
  folded: "Chiuse finché questa schermata non si riapre.",
  show: "Mostra le avvertenze",
};
