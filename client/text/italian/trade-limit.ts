import { CHAMBER_MARGIN, type LimitProblem } from "#core/advice/limits.ts";
import { quantityText } from "../quantity-text.ts";
import { adjusterName } from "./trade-names.ts";

/** A limit in one Italian sentence: what, where, and what is allowed. */
export function limit(problem: LimitProblem): string {
  const name = adjusterName(problem.path);
  switch (problem.type) {
    case "no such adjuster":
      return `${name}: la bici ${problem.bike} non ha questa regolazione.`;
    case "wrong unit":
      return `${name}: ${quantityText(problem.value)} ha l’unità sbagliata; ne serve una per ${dimensionName(problem.allowed)}.`;
    case "out of range":
      return `${name}: ${quantityText(problem.value)} è fuori dal campo del componente, da ${quantityText(problem.minimum)} a ${quantityText(problem.maximum)}.`;
    case "not a step":
      return `${name}: ${quantityText(problem.value)} non si può regolare; un passo è ${quantityText(problem.step)}.`;
    case "above marked maximum":
      return `${name}: ${quantityText(problem.value)} supera il massimo di ${quantityText(problem.maximum)} indicato ${problem.of === "tyre" ? "sulla gomma" : "sul cerchio"}.`;
    case "chambers too close":
      return `${name}: la camera secondaria (${quantityText(problem.secondary)}) deve restare almeno ${quantityText(CHAMBER_MARGIN)} sopra la camera principale (${quantityText(problem.main)}).`;
  }
}

function dimensionName(dimension: string): string {
  const names: Readonly<Record<string, string>> = {
    pressure: "la pressione",
    "spring rate": "la durezza della molla",
    clicks: "i clic",
    turns: "i giri",
    spacers: "gli spaziatori",
  };
  return names[dimension] ?? dimension;
}
