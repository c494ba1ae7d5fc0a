/** Spanish texts of looking for something. */
import type { find as model } from "../english/find.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const find: Said<typeof model> = {
  title: "Buscar",
  hint: "Nombres, dorsales, ajustes, valores, motivos, notas: tienen que salir todas las palabras.",
  field: "Palabras",
  searching: "Buscando en los apuntes…",
  none: "Nada tiene todas estas palabras.",
  count: (count: number) => plural(count, "resultado", "resultados"),
  cut: (count: number) => `Se ven los ${count} últimos. Con más palabras salen menos.`,
  kinds: { rider: "Piloto", weekend: "Fin de semana", change: "Cambio", run: "Bajada", service: "Mantenimiento" },
  plate: (plate: number) => `dorsal ${plate}`,
  rider: (name: string, facts: string) => `${name}, ${facts}`,
  weekend: (name: string, venue: string) => `${name}, ${venue}`,
  change: (rider: string, adjuster: string, from: string, to: string) => `${rider}: ${adjuster}, ${from} → ${to}`,
  run: (rider: string, session: string) => `${rider}: ${session}`,
  service: (rider: string, part: string, work: string) => `${rider}: ${part}, ${work}`,
  works: { "bath oil": "aceite de lubricación", complete: "mantenimiento completo" },
  notYet: "Di antes quién eres.",
};
