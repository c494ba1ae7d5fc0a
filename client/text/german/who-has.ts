/** German texts about who has what is on a bike. */
import type { whoHas as model } from "../english/who-has.ts";
import type { Said } from "../spoken.ts";

export const whoHas: Said<typeof model> = {
  title: "Wer hat, was am Bike ist",
  all: (names: string) => `Nachweislich bei ${names}.`,
  notYet: (names: string) => `Noch nicht bei ${names}.`,
  part: (name: string, missing: number, settings: number) =>
    `${name} (${missing} von ${settings} ${missing === 1 ? "fehlt" : "fehlen"})`,
  hint: "Nachweislich heißt: Das Gerät hat es nach dem Speichern gemeldet. Es heißt nicht, dass jemand hingeschaut hat.",
};
