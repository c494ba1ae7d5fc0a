/** German texts of a course's profile, and of the file that it comes from. */
import { STEEP_FROM } from "#core/course/course-facts.ts";
import { SHORTEST_TRACK, SMOOTHED_OVER } from "#core/course/track-limits.ts";
import { heightsOnEarth, LONGEST_COURSE } from "#core/weekend/course-shape.ts";
import type { courseProfile as model } from "../english/course-profile.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

const steepPercent = Math.round(STEEP_FROM * 100);
const unchanged = "Geändert wurde nichts.";

export const courseProfile: Said<typeof model> = {
  title: "Profil der Strecke",
  theProfile: "Profil",
  summary: (length: string, drop: string) => `Profil: ${length} m lang, Gefälle ${drop} m`,
  none: "Noch kein Profil. Sprünge und Nässe schätzt du auf jeden Fall selbst ein.",
  choose: "GPX-Datei wählen",
  chooseHint: (megabytes: string) =>
    `GPX 1.1 mit Höhen, bis ${megabytes} MB. Gespeichert wird erst, wenn du auf Speichern drückst.`,
  reading: "Lese die Datei …",
  taken: (file: string) => `Aus ${file}, noch nicht gespeichert.`,
  leave: "Profil lassen, wie es war",
  remove: "Profil entfernen",
  track: "Spur in der Datei",
  unnamed: (position: number) => `Spur ${position}`,
  route: (name: string) => `${name} (eine geplante Route)`,
  uphill: (metres: string) => `Diese Linie geht ${metres} m bergauf.`,
  turn: "Umdrehen",
  filled: {
    gaps: (count: number, metres: string) =>
      `${plural(count, "Lücke", "Lücken")} in der Spur, mit geraden Linien von zusammen ${metres} m überbrückt.`,
    withoutHeight: (count: number) => `${plural(count, "Punkt hat", "Punkte haben")} keine Höhe.`,
    skipped: (count: number) => `${plural(count, "Punkt", "Punkte")} ohne Ort weggelassen.`,
  },
  facts: {
    length: "Länge",
    slope: "Am Boden entlang",
    drop: "Gefälle",
    climb: "Anstiege unterwegs",
    mean: "Gefälle im Mittel",
    steepest: "Am steilsten",
  },
  metres: (value: string) => `${value} m`,
  percent: (value: string) => `${value} %`,
  stretch: (from: string, to: string) => `${from} bis ${to} m`,
  steepestAt: (percent: string, from: string, to: string) => `${percent} % bei ${from} bis ${to} m`,
  chart: {
    title: "Höhe über die Strecke",
    height: "Höhe, m",
    along: "Entlang der Strecke, m",
    thick: "dicke Linie: steil",
    sections: "Balken: Abschnitte mit ihrer Nummer",
    described: (first: string, last: string, length: string, steep: readonly string[]) =>
      `Höhe über die Strecke: von ${first} m am Start bis ${last} m im Ziel, ${length} m weiter. ${
        steep.length === 0 ? "Nirgends steil." : `Steil: ${steep.join(", ")}.`
      }`,
    more: (count: number) => `${count} weitere`,
  },
  rule: `Steil ist, was um ${steepPercent} % oder mehr fällt (${steepPercent} m auf 100 m), die Höhen über ${SMOOTHED_OVER} m geglättet; eine eigene Regel. Kürzere Stufen sieht man darin nicht.`,
  proposed: (share: string, part: string) => `${share} % der Länge sind steil. Vorgeschlagener Teil: ${part}.`,
  take: (part: string) => `Steil ${part} nehmen`,
  isTaken: (part: string) => `Steil ist ${part}, wie vorgeschlagen. Sprunglastig und nass schätzt du selbst ein.`,
  problems: {
    tooLarge: (file: string, allowed: string) => `Die Datei hat ${file} MB; erlaubt sind ${allowed} MB. ${unchanged}`,
    unreadable: `Die Datei lässt sich nicht lesen. Wähl sie noch einmal. ${unchanged}`,
    notText: `Die Datei ist kein Text in UTF-8, wie GPX es sein muss. ${unchanged}`,
    noReader:
      "Der Programmteil für GPX-Dateien ist noch nicht auf diesem Gerät. Versuch es wieder, sobald der Laptop erreichbar ist.",
    notXml: `Die Datei ist kaputt oder kein GPX: Sie lässt sich nicht als XML lesen. ${unchanged}`,
    declares: `Die Datei bringt einen eigenen Dokumenttyp oder eigene Entitäten mit, die es in GPX nicht gibt. ${unchanged}`,
    notGpx: (root: string) => `In der Datei steht „${root}“, nicht GPX. ${unchanged}`,
    badOrder: `In dieser Datei stecken Spuren oder Punkte ineinander, was GPX nicht erlaubt. ${unchanged}`,
    noTrack: `In der Datei ist keine Spur und keine Route mit zwei Punkten oder mehr. ${unchanged}`,
    tooManyPoints: (count: string, allowed: string) =>
      `Die Datei hat ${count} Punkte; erlaubt sind ${allowed}. Speichere nur den Lauf, ohne den Rest des Tages. ${unchanged}`,
    tooManyTracks: (count: string, allowed: string) =>
      `Die Datei hat ${count} Spuren; erlaubt sind ${allowed}. ${unchanged}`,
    badPlace: (track: string, point: number) =>
      `${track}, Punkt ${point}: Die Breite geht von −90 bis 90, die Länge von −180 bis 180. ${unchanged}`,
    badHeight: (track: string, point: number) =>
      `${track}, Punkt ${point}: Die Höhe liegt nicht zwischen ${heightsOnEarth.lowest} und ${heightsOnEarth.highest} m. ${unchanged}`,
    noHeight: (track: string) => `${track} hat keine Höhen und sagt so nichts über das Gefälle. Nimm mit Höhen auf.`,
    tooShort: (track: string, metres: string) =>
      `${track} ist ${metres} m lang; für ein Profil braucht es ${SHORTEST_TRACK} m.`,
    tooLong: (track: string, metres: string) =>
      `${track} ist ${metres} m lang; eine Strecke hat höchstens ${LONGEST_COURSE} m. Speichere nur den Lauf.`,
  },
};
