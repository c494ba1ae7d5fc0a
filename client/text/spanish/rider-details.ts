/** Spanish texts of what is known of a rider's body and stance. */
import type { riderDetails as model } from "../english/rider-details.ts";
import type { Said } from "../spoken.ts";

export const riderDetails: Said<typeof model> = {
  summary: (mass: string, share: string) => `Piloto: ${mass}, peso delante ${share}`,
  notMeasured: "sin medir",
  about:
    "La masa es con todo lo que lleva puesto y encima. Si no es la de la base, la hoja de reglajes corrige los muelles para que el sag no cambie.",
  mass: "Masa con equipación",
  share: "Parte del peso delante",
  shareUnit: "de 1",
  shareAbout: (assumed: string) =>
    `La parte del peso que lleva la rueda delantera en posición de bajada. Déjalo vacío mientras no esté medido: entonces se supone ${assumed}.`,
  style: "Cómo va ahora el piloto",
  styles: { calm: "tranquilo", usual: "como siempre", hard: "fuerte" },
  styleAbout: "Si no es como en una base, la hoja de reglajes dice qué cambia. En caso de duda, no elijas nada.",
  save: "Guardar el piloto",
  saved: (name: string, mass: string, share: string) => `Guardado: ${name}, ${mass}, peso delante ${share}`,
  needsMass: "Masa con equipación: escribe la masa.",
  disputed: "Dos personas han puesto aquí valores distintos. Lo que guardes lo resuelve.",
  changedMeanwhile:
    "Otra persona lo ha cambiado mientras estaba abierto aquí. Guarda otra vez para poner lo tuyo en su lugar.",
  ofRider: "Los datos del piloto: dos personas han puesto valores distintos",
};
