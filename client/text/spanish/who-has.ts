/** Spanish texts about who has what is on a bike. */
import type { whoHas as model } from "../english/who-has.ts";
import type { Said } from "../spoken.ts";
import { chosen } from "./plural.ts";

export const whoHas: Said<typeof model> = {
  title: "Quién tiene lo que lleva la bici",
  all: (names: string) => `Comprobado que lo tiene: ${names}.`,
  notYet: (names: string) => `Todavía no lo tiene: ${names}.`,
  part: (name: string, missing: number, settings: number) =>
    `${name} (${chosen(missing, "falta", "faltan")} ${missing} de ${settings})`,
  hint: "Comprobado quiere decir que el dispositivo lo ha dicho después de guardarlo. No quiere decir que alguien lo haya mirado.",
};
