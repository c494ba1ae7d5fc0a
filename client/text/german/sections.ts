/** German texts of the named sections of a course. */
import type { sections as model } from "../english/sections.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const sections: Said<typeof model> = {
  shape: "Profil aus einer GPX-Datei und benannte Abschnitte",
  count: (count: number) => plural(count, "Abschnitt", "Abschnitte"),
  title: "Abschnitte der Strecke",
  theSections: "Abschnitte",
  hint: "Gib dem einen Namen, wovon die Fahrer reden, etwa einem Steinfeld. Dann können sie sagen, wo etwas war. Anfang und Ende können offen bleiben.",
  none: "Kein Abschnitt hat einen Namen.",
  add: "Abschnitt hinzufügen",
  full: (most: number) => `Mehr als ${most} Abschnitte gehen nicht.`,
  position: (position: number) => `Abschnitt ${position}`,
  name: "Name",
  from: "Von",
  to: "Bis",
  remove: (name: string) => `${name} entfernen`,
  fieldOf: (section: string, field: string) => `${section}: ${field}`,
  problems: {
    noName: (section: string) => `${section}: Gib ihm einen Namen mit 1 bis 80 Zeichen, oder entferne ihn.`,
    twice: (name: string) => `Zwei Abschnitte heißen ${name}. Die Fahrer könnten sie nicht unterscheiden.`,
    oneEnd: (name: string) => `${name}: Trag Anfang und Ende ein, oder keines von beiden.`,
    backwards: (name: string, from: string, to: string) =>
      `${name}: Er endet bei ${to} m, das liegt nicht hinter ${from} m, wo er anfängt.`,
    beyond: (name: string, to: string, length: string) =>
      `${name}: Er endet bei ${to} m, die Strecke aber bei ${length} m.`,
    gone: (name: string) =>
      `Den Abschnitt ${name} gibt es auf dieser Strecke nicht mehr. Wähl noch einmal, wo es war, und speichere dann.`,
  },
  where: "Wo war es?",
  whole: "der ganze Lauf",
  stretch: (name: string, from: string, to: string) => `${name}, ${from} bis ${to} m`,
  at: (section: string) => `Wo: ${section}`,
};
