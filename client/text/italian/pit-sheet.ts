/** Italian texts of the setup sheet, and of the ways back to it. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const sheet: Said<typeof english.sheet> = {
  title: "Scheda assetto",
  difference: "weekend rispetto alla base",
  noDifference: "nessun valore",
  baseline: "Base",
  blend: "Miscela di basi",
  weekend: "Weekend",
  bench: "Al banco",
  onTheBike: "Sulla bici",
  unknown: "ignoto",
  inDispute: "in disaccordo",
  readsNow: "Adesso segna",
  riderSays: "Il pilota dice",
  why: (count: number) => `Perché: ${plural(count, "motivo", "motivi")}`,
  whyNone: "Perché e modifica",
  refused: (limit: string) => `Non fatto, lo ferma un limite: ${limit}`,
  states: {
    "to set": "Da regolare",
    set: "Sulla bici",
    adjusted: "Corretto: non come la scheda",
    reported: "Segnalato dal pilota",
    disputed: "In disaccordo",
    "no value": "Nessun valore",
  },
  provenance: {
    "own baseline": "base propria",
    "blend of own baselines": "miscela di basi proprie",
    "common practice": "pratica comune",
    physics: "fisica",
  },
  notFitted:
    "Non tarato: alla base non è stato misurato il sag, quindi le correzioni della fisica sono giuste nel verso e approssimative nella misura.",
  missingTypes: (types: string) => `Nessuna base propria per pista ${types}: la sostituiscono le altre basi.`,
  noBaseline: "Questa bici non ha ancora una base: non c’è niente su cui regolarla.",
  setByHand: "Imposta un altro valore",
  backToWeekend: (value: string) => `Torna all’assetto del weekend: ${value}`,
  backToBaseline: (value: string) => `Torna alla base: ${value}`,
};

export const goBack: Said<typeof english.goBack> = {
  title: "Torna indietro, tutta la bici",
  weekend: "Torna all’assetto del weekend",
  baseline: "Torna alla base",
  steps: (count: number) => `Cambia ${settingsText(count)}, in quest’ordine`,
  already: "È già sulla bici.",
  leftOut: (adjusters: string) => `Lasciato fuori, perché in disaccordo: ${adjusters}.`,
  doneWeekend: (count: number) => `Tornato all’assetto del weekend: ${settingsText(count)} sulla bici`,
  doneBaseline: (count: number) => `Tornato alla base: ${settingsText(count)} sulla bici`,
  adjuster: (adjuster: string, value: string) => `${adjuster} di nuovo a ${value}`,
};
