import { CHAMBER_MARGIN, type LimitProblem } from "#core/advice/limits.ts";
import { quantityText } from "../quantity-text.ts";
import { adjusterName } from "./trade-names.ts";

/** A limit in one French sentence: what, where, and what is allowed. */
export function limit(problem: LimitProblem): string {
  const name = adjusterName(problem.path);
  switch (problem.type) {
    case "no such adjuster":
      return `${name} : le vélo ${problem.bike} n’a pas ce réglage.`;
    case "wrong unit":
      return `${name} : ${quantityText(problem.value)} n’a pas la bonne unité ; il en faut une de ${dimensionName(problem.allowed)}.`;
    case "out of range":
      return `${name} : ${quantityText(problem.value)} est hors de la plage de la pièce, de ${quantityText(problem.minimum)} à ${quantityText(problem.maximum)}.`;
    case "not a step":
      return `${name} : ${quantityText(problem.value)} ne peut pas être réglé ; un pas fait ${quantityText(problem.step)}.`;
    case "above marked maximum":
      return `${name} : ${quantityText(problem.value)} dépasse le maximum de ${quantityText(problem.maximum)} marqué sur ${problem.of === "tyre" ? "le pneu" : "la jante"}.`;
    case "chambers too close":
      return `${name} : la chambre secondaire (${quantityText(problem.secondary)}) doit rester au moins ${quantityText(CHAMBER_MARGIN)} au-dessus de la chambre principale (${quantityText(problem.main)}).`;
  }
}

function dimensionName(dimension: string): string {
  const names: Readonly<Record<string, string>> = {
    pressure: "pression",
    "spring rate": "raideur",
    clicks: "clics",
    turns: "tours",
    spacers: "cales",
  };
  return names[dimension] ?? dimension;
}
