/** German texts of looking for something. */
import type { find as model } from "../english/find.ts";
import type { Said } from "../spoken.ts";

export const find: Said<typeof model> = {
  title: "Suchen",
  hint: "Namen, Startnummern, Einstellpunkte, Werte, Gründe, Notizen: Jedes Wort muss vorkommen.",
  field: "Wörter",
  searching: "Suche in den Einträgen …",
  none: "Nichts hat alle diese Wörter.",
  count: (count: number) => `${count} gefunden`,
  cut: (count: number) => `Gezeigt sind die letzten ${count}. Mehr Wörter finden weniger.`,
  kinds: { rider: "Fahrer", weekend: "Wochenende", change: "Änderung", run: "Lauf", service: "Service" },
  plate: (plate: number) => `Nr. ${plate}`,
  rider: (name: string, facts: string) => `${name}, ${facts}`,
  weekend: (name: string, venue: string) => `${name}, ${venue}`,
  change: (rider: string, adjuster: string, from: string, to: string) => `${rider}: ${adjuster}, ${from} → ${to}`,
  run: (rider: string, session: string) => `${rider}: ${session}`,
  service: (rider: string, part: string, work: string) => `${rider}: ${part}, ${work}`,
  works: { "bath oil": "Schmieröl", complete: "kompletter Service" },
  notYet: "Sag zuerst, wer du bist.",
};
