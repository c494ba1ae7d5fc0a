/** French texts about the screen that stays on. */
import type { screenAwake as english } from "../english/screen-awake.ts";
import type { Said } from "../spoken.ts";

export const screenAwake: Said<typeof english> = {
  on: "L’écran reste allumé tant que cette liste est ouverte.",
  asking: "L’écran peut s’éteindre.",
  refused:
    "Le navigateur ne garde pas l’écran allumé pour l’instant, peut-être pour économiser la batterie : il peut s’éteindre.",
  unavailable:
    "Ce navigateur ne sait pas garder l’écran allumé : choisis une durée plus longue dans les réglages de l’appareil.",
};
