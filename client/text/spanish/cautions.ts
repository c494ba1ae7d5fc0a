/** Spanish texts about putting cautions out of the way. */
import type { cautions as model } from "../english/cautions.ts";
import type { Said } from "../spoken.ts";

export const cautions: Said<typeof model> = {
  fold: "Leídos: plegar por ahora",
  folded: "Plegados hasta que esta pantalla se abra otra vez.",
  show: "Mostrar los avisos",
};
