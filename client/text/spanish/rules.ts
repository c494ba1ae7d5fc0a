/** Spanish texts of the rule book's page. */
import type { rulesText as model } from "../english/rules.ts";
import type { Said } from "../spoken.ts";

export const rulesText: Said<typeof model> = {
  title: "Las reglas de los consejos",
  link: "Las reglas de los consejos",
  find: "Buscar por palabras",
  none: "Ninguna regla tiene todas estas palabras.",
  when: "Cuándo",
  moves: "Qué hace, por orden de preferencia",
};
