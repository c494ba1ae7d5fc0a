/** Italian texts of copying a setup to another bike. */
import type { spareBike as english } from "../english/spare-bike.ts";
import type { Said } from "../spoken.ts";
import { settingsText } from "./settings-count.ts";

export const copy: Said<typeof english.copy> = {
  title: "Copia l’assetto su un’altra bici",
  from: "Da",
  to: "A",
  bike: (bike: string, rider: string) => `${bike} (${rider})`,
  isTheSame: "Scegli due bici diverse.",
  atTheBench: "Pressioni come si leggono al banco della sessione scelta.",
  asTyped: "Pressioni come sono state scritte: le condizioni della sessione non sono inserite.",
  differencesTitle: "Che cosa è diverso sull’altra bici",
  noDifferences: "Le due bici hanno componenti con gli stessi dati.",
  adjuster: "Regolazione",
  value: "Verrebbe regolato a",
  now: "Adesso c’è",
  outcome: "Che cosa ne è",
  unknown: "ignoto",
  inDispute: "in disaccordo",
  outcomes: {
    copied: "Si può regolare.",
    same: "È già così.",
    "no adjuster": "Lasciato fuori: l’altra bici non ha questa regolazione.",
    "only there": "Resta com’è: la prima bici non ha questa regolazione.",
    "in dispute": "Lasciato fuori: è in disaccordo. Guarda la prima bici.",
    "not known": "Lasciato fuori: sulla prima bici è ignoto.",
  },
  refused: (why: string) => `Rifiutato. ${why}`,
  reported: "L’ha detto il pilota; nessun meccanico l’ha visto.",
  measure: {
    sag: "Qui lo stesso numero è un’altra molla: misura il sag.",
    damping: "Qui gli stessi clic possono frenare in modo diverso: provali in una run breve.",
  },
  sameSag: (adjuster: string, value: string) =>
    `${adjuster}: circa ${value} darebbe come sag la stessa parte della corsa, calcolato dai dati delle due bici. Non viene copiato. Misura il sag prima di fidarti.`,
  range: (from: string, to: string) => `Campo ${from}, là ${to}.`,
  span: (low: string, high: string) => `da ${low} a ${high}`,
  step: (from: string, to: string) => `Passi di ${from}, là ${to}.`,
  perClick: (from: string, to: string) => `Smorzamento per clic ${from}, là ${to}.`,
  percent: (value: string) => `${value} %`,
  notMeasured: "non misurato",
  order: "Regola in quest’ordine, poi di’ che è fatto: così ogni limite resta rispettato dopo ogni passo.",
  take: (count: number, bike: string) => `${settingsText(count)} su ${bike}: fatto`,
  nothing: "Non c’è niente da regolare.",
  leave: "Non si scrive niente finché non dici che è fatto.",
  done: (count: number, from: string, to: string) => `Copiato da ${from}: ${settingsText(count)} su ${to}`,
  why: (bike: string) => `Copiato da ${bike}.`,
};
