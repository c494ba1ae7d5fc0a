/** Spanish texts of the pit: the setup sheet, values set by hand, and the changelog of a bike. */
import type { pit as model } from "../english/pit.ts";
import type { Said } from "../spoken.ts";

export const sheet: Said<(typeof model)["sheet"]> = {
  title: "Hoja de reglajes",
  difference: "fin de semana frente a base",
  noDifference: "ningún valor",
  baseline: "Base",
  blend: "Mezcla de bases",
  weekend: "Fin de semana",
  bench: "En el banco",
  onTheBike: "En la bici",
  unknown: "no se sabe",
  inDispute: "con discrepancia",
  readsNow: "Ahora marca",
  riderSays: "El piloto dice",
  why: (count: number) => (count === 1 ? "Por qué: 1 motivo" : `Por qué: ${count} motivos`),
  whyNone: "Por qué y cambiar",
  refused: (limit: string) => `No se ha hecho, lo impide un límite: ${limit}`,
  states: {
    "to set": "Por poner",
    set: "En la bici",
    adjusted: "Cambiado: no como la hoja",
    reported: "Lo dice el piloto",
    disputed: "Con discrepancia",
    "no value": "Sin valor",
  },
  provenance: {
    "own baseline": "base propia",
    "blend of own baselines": "mezcla de bases propias",
    "common practice": "práctica habitual",
    physics: "física",
  },
  notFitted:
    "Sin ajustar a medidas: en la base no se midió el sag, así que lo que corrige la física acierta en la dirección y solo más o menos en la cantidad.",
  missingTypes: (types: string) => `Sin base propia para pista ${types}: en su lugar valen las otras bases.`,
  noBaseline: "Esta bici no tiene base todavía: no hay reglaje que ponerle.",
  setByHand: "Poner otro valor",
  backToWeekend: (value: string) => `Volver al reglaje del fin de semana: ${value}`,
  backToBaseline: (value: string) => `Volver a la base: ${value}`,
};

export const reported: Said<(typeof model)["reported"]> = {
  title: "Lo dice el piloto",
  hint: "Cambiado en el monte. Mira la bici y después confirma.",
  confirm: (value: string) => `Confirmar: la bici lleva ${value}`,
  other: "Poner otro valor",
  confirmed: (adjuster: string, value: string) => `Confirmado: ${adjuster}, ${value}`,
};

export const byHand: Said<(typeof model)["byHand"]> = {
  title: "Poner otro valor",
  adjuster: "Ajuste",
  value: "Valor",
  now: (value: string) => `Ahora marca: ${value}`,
  note: "Nota, si quieres",
  save: "Está en la bici",
  saved: (adjuster: string, value: string) => `Puesto a mano: ${adjuster}, ${value}`,
};

export const changelog: Said<(typeof model)["changelog"]> = {
  title: "Historial",
  none: "Todavía no se ha puesto nada en esta bici.",
  line: (from: string, to: string) => `${from} → ${to}`,
  nothing: "ningún valor",
  inDispute: "con discrepancia",
  forRun: (run: string) => `Responde a la bajada: ${run}`,
  standings: { "on the bike": "en la bici", reported: "dicho por el piloto" },
  current: "Vigente",
  undo: (value: string) => `Deshacer: volver a ${value}`,
  undoNone: "Deshacer: sin valor, como antes",
  back: (value: string) => `Volver a ${value}, como antes de esto`,
  undone: (adjuster: string, value: string) => `${adjuster}: de vuelta a ${value}`,
  more: (count: number) => `Mostrar ${count} más`,
};
