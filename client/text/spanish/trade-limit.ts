import { CHAMBER_MARGIN, type LimitProblem } from "#core/advice/limits.ts";
import { quantityText } from "../quantity-text.ts";
import { adjusterName } from "./trade-names.ts";

/** A limit in one Spanish sentence: what, where, and what is allowed. */
export function limit(problem: LimitProblem): string {
  const name = adjusterName(problem.path);
  switch (problem.type) {
    case "no such adjuster":
      return `${name}: la bici ${problem.bike} no tiene este ajuste.`;
    case "wrong unit":
      return `${name}: ${quantityText(problem.value)} no tiene aquí la unidad correcta; hace falta una de ${dimensionName(problem.allowed)}.`;
    case "out of range":
      return `${name}: ${quantityText(problem.value)} está fuera del margen de la pieza, de ${quantityText(problem.minimum)} a ${quantityText(problem.maximum)}.`;
    case "not a step":
      return `${name}: ${quantityText(problem.value)} no se puede poner; va en pasos de ${quantityText(problem.step)}.`;
    case "above marked maximum":
      return `${name}: ${quantityText(problem.value)} pasa del máximo de ${quantityText(problem.maximum)} marcado en la ${problem.of === "tyre" ? "cubierta" : "llanta"}.`;
    case "chambers too close":
      return `${name}: la cámara secundaria (${quantityText(problem.secondary)}) debe quedar al menos ${quantityText(CHAMBER_MARGIN)} por encima de la principal (${quantityText(problem.main)}).`;
  }
}

function dimensionName(dimension: string): string {
  const names: Readonly<Record<string, string>> = {
    pressure: "presión",
    "spring rate": "dureza de muelle",
    clicks: "clics",
    turns: "vueltas",
    spacers: "espaciadores",
  };
  return names[dimension] ?? dimension;
}
