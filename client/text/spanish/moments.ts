/** Spanish texts of the filters of a changelog, of two moments compared, and of the way back to one. */
import type { moments as model } from "../english/moments.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const moments: Said<typeof model> = {
  adjuster: "Ajuste",
  everyAdjuster: "Todos los ajustes",
  weekend: "Fin de semana",
  everyWeekend: "Todos los fines de semana",
  noneOfThese: "Ningún cambio de estos.",
  title: "Comparar dos momentos",
  earlier: "Entonces",
  later: "Comparado con",
  before: (weekend: string) => `Antes del fin de semana ${weekend}`,
  now: "Ahora",
  after: (moment: string, what: string, who: string) => `${moment}: ${what}, ${who}`,
  several: settingsText,
  one: (adjuster: string, value: string) => `${adjuster}: ${value}`,
  same: "No hay ninguna diferencia entre los dos.",
  differ: (count: number) => `${plural(count, "ajuste es distinto", "ajustes son distintos")}.`,
  atTheBench: "Presiones como se leen en el banco de la sesión elegida.",
  asTyped: "Presiones como se escribieron: faltan por apuntar las condiciones de la sesión.",
  difference: "Diferencia",
  more: (size: string) => `${size} más`,
  less: (size: string) => `${size} menos`,
  unknown: "no se sabe",
  disputed: "con discrepancia",
  backTitle: (moment: string) => `Volver a: ${moment}`,
  back: "Todo está en la bici como entonces",
  done: (count: number) => `De vuelta a ese momento: ${settingsText(count)} en la bici`,
  note: (moment: string) => `De vuelta a: ${moment}.`,
  already: "La bici está como entonces.",
  needsConditions:
    "Para volver, apunta antes la pista y las condiciones: de ellas depende lo que debe marcar una presión.",
  order: "Haz los pasos en este orden y después di que está hecho: así se respetan todos los límites en cada paso.",
  unknownThen: (adjusters: string) => `Se queda como está, porque no se sabe cómo estaba entonces: ${adjusters}.`,
  leftOut: (adjusters: string) => `Queda fuera, por discrepancia entonces o ahora: ${adjusters}.`,
};
