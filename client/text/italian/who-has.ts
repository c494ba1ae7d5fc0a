/** Italian texts about who has what is on a bike. */
import type { whoHas as english } from "../english/who-has.ts";
import type { Said } from "../spoken.ts";

export const whoHas: Said<typeof english> = {
  title: "Chi ha quello che è sulla bici",
  all: (names: string) => `Arrivato di sicuro a: ${names}.`,
  notYet: (names: string) => `Non ancora arrivato a: ${names}.`,
  part: (name: string, missing: number, settings: number) => `${name} (${missing} su ${settings} mancano)`,
  hint: "Di sicuro vuol dire che il dispositivo l’ha detto dopo averlo salvato. Non vuol dire che qualcuno abbia guardato.",
};
