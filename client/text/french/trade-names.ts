/** French names of adjusters in a sentence, and of symptoms. */
import type { Symptom } from "#core/advice/symptom.ts";
import { type AdjusterPath, parseAdjusterPath } from "#core/team/adjuster.ts";
import { common } from "./common.ts";
import { placeForms } from "./place-forms.ts";
import { trackside } from "./trackside.ts";

/** "Détente de la fourche": without an article, since its gender changes with the adjuster. */
export function adjusterName(path: AdjusterPath): string {
  const address = parseAdjusterPath(path);
  return address ? `${common.adjusters[address.kind]} ${placeForms[address.place].of}` : path;
}

/** As they are listed after the end that they are of: "Avant : sag au-dessus de la cible, glisse". */
export const symptomNames: Readonly<Record<Symptom, string>> = {
  ...trackside.noticed,
  "sag above target": "sag au-dessus de la cible",
  "sag below target": "sag sous la cible",
  "sag on target": "sag dans la cible",
  "all travel used too easily": "débattement utilisé trop facilement",
  "travel left over": "débattement restant",
  "softer than the other end": "plus mou que l’autre bout",
  "firmer than the other end": "plus ferme que l’autre bout",
  "confidence low": "confiance faible",
  "start harsh": "début dur",
  "start too soft": "début trop mou",
  "middle harsh": "milieu dur",
  "middle dives": "milieu qui plonge",
  "end hits hard": "fin qui tape fort",
  "end never reached": "fin jamais atteinte",
  "returns too slowly": "retour trop lent",
  "returns too fast": "retour trop rapide",
  slides: "glisse",
};
