/** French texts about who has what is on a bike. */
import type { whoHas as english } from "../english/who-has.ts";
import type { Said } from "../spoken.ts";

export const whoHas: Said<typeof english> = {
  title: "Qui a ce qui est sur le vélo",
  all: (names: string) => `Arrivé, c’est prouvé, chez ${names}.`,
  notYet: (names: string) => `Pas encore chez ${names}.`,
  part: (name: string, missing: number, settings: number) => `${name} (manque ${missing} sur ${settings})`,
  hint: "Prouvé veut dire que l’appareil l’a dit après l’avoir enregistré. Cela ne veut pas dire que quelqu’un a regardé.",
};
