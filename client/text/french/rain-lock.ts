/** French texts of the lock against rain. */
import type { rainLock as english } from "../english/rain-lock.ts";
import type { Said } from "../spoken.ts";

export const rainLock: Said<typeof english> = {
  lock: "Verrou pluie",
  locked: "Verrouillé contre la pluie : seulement des valeurs, rien ne peut changer ici.",
  open: "Appuyer longtemps pour ouvrir",
  holding: "Continue d’appuyer…",
  short: "Trop court : appuie pendant une seconde.",
  confirm: "Cet appui est venu sans doigt ni touche. Pour ouvrir l’écran, confirme-le.",
  confirmed: "Ouvrir l’écran",
  toSet: "À régler, dans cet ordre",
  nothingToSet: "La fiche ne laisse plus rien à régler.",
  onTheBike: (place: string) => `Sur le vélo : ${place.toLowerCase()}`,
  from: (value: string) => `avant : ${value}`,
  fromUnknown: "valeur d’avant inconnue",
};
