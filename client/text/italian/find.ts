/** Italian texts of looking for something. */
import type { find as english } from "../english/find.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const find: Said<typeof english> = {
  title: "Cerca",
  hint: "Nomi, numeri, regolazioni, valori, motivi, note: deve esserci ogni parola.",
  field: "Parole",
  searching: "Cerco tra i dati…",
  none: "Niente contiene tutte queste parole.",
  count: (count: number) => plural(count, "risultato", "risultati"),
  cut: (count: number) => `Si vedono i ${count} più recenti. Con più parole se ne trovano meno.`,
  kinds: { rider: "Pilota", weekend: "Weekend", change: "Modifica", run: "Run", service: "Revisione" },
  plate: (plate: number) => `numero ${plate}`,
  rider: (name: string, facts: string) => `${name}, ${facts}`,
  weekend: (name: string, venue: string) => `${name}, ${venue}`,
  change: (rider: string, adjuster: string, from: string, to: string) => `${rider}: ${adjuster}, ${from} → ${to}`,
  run: (rider: string, session: string) => `${rider}: ${session}`,
  service: (rider: string, part: string, work: string) => `${rider}: ${part}, ${work}`,
  works: { "bath oil": "olio di lubrificazione", complete: "revisione completa" },
  notYet: "Prima di’ chi sei.",
};
