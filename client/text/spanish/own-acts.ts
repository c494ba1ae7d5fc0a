/** Spanish names of what one did oneself and can take back. */
import type { ownActs as english } from "../english/own-acts.ts";
import type { Said } from "../spoken.ts";

export const ownActs: Said<typeof english> = {
  run: (session) => `tu bajada en ${session}`,
  course: "pista y condiciones",
  weekend: "el fin de semana y sus sesiones",
  rider: (name) => `los datos de ${name}`,
  noRun: (name) => `${name}: no hay bajada que esperar`,
};
