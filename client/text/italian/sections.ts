/** Italian texts of the named sections of a course. */
import type { sections as english } from "../english/sections.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const sections: Said<typeof english> = {
  shape: "Profilo da un file GPX, e settori con un nome",
  count: (count: number) => plural(count, "settore", "settori"),
  title: "Settori della pista",
  theSections: "settori",
  hint: "Dai un nome a quello di cui parlano i piloti, per esempio una pietraia. Così possono dire dove è successo qualcosa. Le estremità si possono lasciare aperte.",
  none: "Nessun settore ha un nome.",
  add: "Aggiungi un settore",
  full: (most: number) => `Ci sono al massimo ${most} settori.`,
  position: (position: number) => `Settore ${position}`,
  name: "Nome",
  from: "Da",
  to: "A",
  remove: (name: string) => `Togli ${name}`,
  fieldOf: (section: string, field: string) => `${section}: ${field}`,
  problems: {
    noName: (section: string) => `${section}: dagli un nome di 1-80 caratteri, oppure toglilo.`,
    twice: (name: string) => `Due settori si chiamano ${name}. I piloti non potrebbero distinguerli.`,
    oneEnd: (name: string) => `${name}: inserisci tutt’e due le estremità, o nessuna.`,
    backwards: (name: string, from: string, to: string) =>
      `${name}: finisce a ${to} m, che non è dopo ${from} m, dove comincia.`,
    beyond: (name: string, to: string, length: string) =>
      `${name}: finisce a ${to} m, ma la pista finisce a ${length} m.`,
    gone: (name: string) => `Il settore ${name} non c’è più su questa pista. Scegli di nuovo dov’era, poi salva.`,
  },
  where: "Dov’era?",
  whole: "tutta la run",
  stretch: (name: string, from: string, to: string) => `${name}, da ${from} a ${to} m`,
  at: (section: string) => `Dove: ${section}`,
};
