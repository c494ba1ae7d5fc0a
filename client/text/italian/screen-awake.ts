/** Italian texts about the screen that stays on. */
import type { screenAwake as english } from "../english/screen-awake.ts";
import type { Said } from "../spoken.ts";

export const screenAwake: Said<typeof english> = {
  on: "Lo schermo resta acceso finché questa lista è aperta.",
  asking: "Lo schermo può spegnersi.",
  refused: "Adesso il browser non tiene acceso lo schermo, forse per risparmiare energia: può spegnersi.",
  unavailable:
    "Questo browser non può tenere acceso lo schermo: imposta un tempo più lungo nelle impostazioni del dispositivo.",
};
