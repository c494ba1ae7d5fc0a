/** Italian texts of why the advice does not propose a change that somebody has in mind. */
import type { whyNot as english } from "../english/why-not.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const whyNot: Said<typeof english> = {
  title: "Perché non un’altra modifica?",
  hint: "Scegli una regolazione e il verso. Rispondono le regole.",
  adjuster: "Regolazione",
  choose: "Scegli una regolazione",
  direction: "In che verso",
  directions: {
    damper: { up: "più aperto", down: "più chiuso" },
    other: { up: "di più", down: "di meno" },
  },
  noAdjuster: "Questa bici non ha questa regolazione.",
  proposed: "È la prima correzione qui sopra.",
  proposedLater: (waitsFor: string) => `È proposta, ma non ancora. ${waitsFor}`,
  noRule: "Nessuna regola risponde con questa modifica a qualcosa che dice un pilota.",
  opposite: (setting: string) => `Il consiglio va nell’altro verso: ${setting}.`,
  wouldIf: (end: string, reason: string) => `${end}: ${reason}`,
  notSaid: (symptoms: string) => `Non adesso: nessuno ha detto o misurato «${symptoms}».`,
  spokenAgainst: (symptoms: string) => `Non adesso: «${symptoms}» dice il contrario.`,
  inQuestion: (symptoms: string) =>
    `Non prima di averlo chiesto al pilota: «${symptoms}» contraddice il resto di quello che ha detto.`,
  anotherWay: (adjuster: string) => `La stessa regola passa prima da qui: ${adjuster}.`,
  twoChanges: "Due modifiche per lo stesso problema non sono servite: guarda revisione e danni.",
  more: (count: number) => plural(count, "altra regola", "altre regole"),
};
