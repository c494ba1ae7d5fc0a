/** Italian texts of entering course and conditions. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";

export const course: Said<typeof english.course> = {
  title: "Pista e condizioni",
  mix: "Quanta parte della pista è…",
  mixHint: "In parti di 1: metà ripida è 0,5.",
  parts: { steep: "Ripida", jumpy: "Con salti", wet: "Bagnata" },
  partUnit: "su 1",
  sum: (sum: string) => `La somma è ${sum}.`,
  sumMust: (sum: string) => `La somma è ${sum}; deve essere 1.`,
  altitude: "Altitudine",
  air: "Aria alla sessione",
  bench: "Aria al banco",
  benchHint: "Lascia vuoto il banco se lì fa caldo come alla sessione.",
  ground: "Terreno",
  sameForAll: "Uguale per tutte le sessioni",
  disputed: "Qui due persone hanno inserito valori diversi. Vale quello che salvi.",
  needsAir: (session: string) => `${session}: inserisci la temperatura dell’aria.`,
  needsGround: (session: string) => `${session}: scegli il terreno.`,
  needsPart: (part: string) => `${part}: inserisci una parte di 1, oppure 0.`,
  needsAltitude: "Altitudine: inserisci l’altezza sul livello del mare.",
  needsFix: (field: string) => `${field}: correggi prima quello che c’è scritto.`,
  theCourse: "pista",
  theConditions: (session: string) => `condizioni (${session})`,
  changedMeanwhile: (what: string) =>
    `Qualcun altro ha fatto modifiche (${what}) mentre questa pagina era aperta. Salva di nuovo per sostituirle con le tue.`,
  saved: (what: string) => `Salvato: ${what}.`,
  unchanged: "Non è cambiato niente.",
};
