/** French texts about putting cautions out of the way. */
import type { cautions as english } from "../english/cautions.ts";
import type { Said } from "../spoken.ts";

export const cautions: Said<typeof english> = {
  fold: "Lu : replier pour l’instant",
  folded: "Repliées jusqu’à la prochaine ouverture de cet écran.",
  show: "Montrer les mises en garde",
};
