/** German texts of a setup that was sent back instead of approved. */
import type { sentBack as model } from "../english/sent-back.ts";
import type { Said } from "../spoken.ts";

export const sentBack: Said<typeof model> = {
  open: "Mit Notiz zurückgeben",
  note: "Was zu tun ist, bevor es Basis-Setup werden kann",
  send: "Zurückgeben",
  needsNote: "Schreib, was zu tun ist: Der Mechaniker sieht es an der Werkbank des Fahrers.",
  sent: (type: string) =>
    `Zurückgegeben: Es ist nicht das Basis-Setup „${type}“. Der Mechaniker sieht die Notiz an der Werkbank des Fahrers.`,
  already: "Es wurde mit dieser Notiz schon zurückgegeben: Nichts musste geschrieben werden.",
  undoSendBack: "Rückgängig: Notiz zurücknehmen",
  undoneSendBack: "Rückgängig gemacht: Die Notiz ist zurückgenommen.",
  title: (type: string) => `Zurückgegeben: noch nicht Basis-Setup „${type}“`,
  by: (who: string, moment: string) => `${who}, ${moment}`,
  until: "Die Notiz verschwindet, wenn am Bike etwas geändert, ein neuer Sag gemessen oder das Setup freigegeben wird.",
  ofDispute: (type: string) =>
    `Zwei haben das Setup „${type}“ mit verschiedenen Notizen zurückgegeben. Beide bleiben sichtbar, bis die Teamleitung erneut antwortet.`,
};
