/** Italian texts of the advice on a run. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const advice: Said<typeof english.advice> = {
  referrals: "Non è questione di regolazioni: guarda prima qui",
  questions: "Prima da chiedere al pilota",
  first: "Prima correzione",
  others: (count: number) => plural(count, "altra correzione", "altre correzioni"),
  none: "Nessuna regola dei consigli risponde a questa run.",
  opens: "più aperto",
  closes: "più chiuso",
  put: "Metti sulla bici",
  putDone: (adjuster: string, value: string) => `Sulla bici: ${adjuster} ${value}`,
  cause: (end: string, symptoms: string) => `${end}: ${symptoms}`,
  sizedBy: {
    measured: "Dimensionata su quello che è stato misurato",
    "felt step": "Dimensionata sulla più piccola modifica che si sente",
  },
  fitted: "Tarata sul sag misurato",
  notFitted: "Non tarata: solo verso e ordine di grandezza",
  reason: "Perché",
  notice: "Il pilota dovrebbe notare",
  otherwise: "Se non serve",
  limits: "Limiti",
  coupled: "Insieme",
  provenance: (provenance: string) => `Fonte: ${provenance}`,
  prediction: "Che cosa prevede la fisica",
  now: "Adesso",
  afterwards: "Dopo",
  sag: "Sag",
  travel: "Escursione usata con lo stesso colpo",
  bottomsOut: (length: string) => `${length}, va a fondo corsa`,
  forceHalf: "Forza a metà corsa",
  forceNineTenths: "Forza al 90 % della corsa",
  forceFull: "Forza a fine corsa",
  frequency: "Frequenza propria",
  unanswered: "A che cosa i consigli non hanno risposta",
};
