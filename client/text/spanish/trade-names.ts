/** Spanish names of adjusters in a sentence, and of symptoms. */
import type { Symptom } from "#core/advice/symptom.ts";
import { type AdjusterPath, parseAdjusterPath } from "#core/team/adjuster.ts";
import type { Place } from "#core/team/place.ts";
import { common } from "./common.ts";
import { trackside } from "./trackside.ts";

const ofPlace: Record<Place, string> = {
  fork: "de la horquilla",
  shock: "del amortiguador",
  "front-tyre": "de la cubierta delantera",
  "rear-tyre": "de la cubierta trasera",
};

/** "Rebote de la horquilla": without an article, since its gender changes with the adjuster. */
export function adjusterName(path: AdjusterPath): string {
  const address = parseAdjusterPath(path);
  return address ? `${common.adjusters[address.kind]} ${ofPlace[address.place]}` : path;
}

/** As they are listed after the end that they are of: "Delante: sag por encima del objetivo, resbala". */
export const symptomNames: Readonly<Record<Symptom, string>> = {
  ...trackside.noticed,
  "sag above target": "sag por encima del objetivo",
  "sag below target": "sag por debajo del objetivo",
  "sag on target": "sag en el objetivo",
  "all travel used too easily": "todo el recorrido usado con demasiada facilidad",
  "travel left over": "recorrido sin usar",
  "softer than the other end": "más blando que el otro tren",
  "firmer than the other end": "más firme que el otro tren",
  "confidence low": "confianza baja",
  "start harsh": "inicio seco",
  "start too soft": "inicio muy blando",
  "middle harsh": "medio recorrido seco",
  "middle dives": "se hunde a medio recorrido",
  "end hits hard": "golpea fuerte al final",
  "end never reached": "no llega nunca al final",
  "returns too slowly": "vuelve muy lento",
  "returns too fast": "vuelve muy rápido",
  slides: "resbala",
};
