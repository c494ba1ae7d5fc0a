/** Spanish texts about the screen that stays on. */
import type { screenAwake as model } from "../english/screen-awake.ts";
import type { Said } from "../spoken.ts";

export const screenAwake: Said<typeof model> = {
  on: "La pantalla no se apaga mientras esta lista esté abierta.",
  asking: "La pantalla puede apagarse.",
  refused: "El navegador no mantiene ahora la pantalla encendida, quizá para ahorrar batería: puede apagarse.",
  unavailable:
    "Este navegador no sabe mantener la pantalla encendida: pon un tiempo más largo en los ajustes del propio dispositivo.",
};
