/** German texts of why something cannot be written down. */
import type { recordProblems as model } from "../english/record-problems.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const recordProblems: Said<typeof model> = {
  sentence: (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
  field: (name: string, fault: string) => `${name}: ${fault}`,
  wholeValue: (fault: string) => `Der Wert: ${fault}`,
  quoted: (text: string) => `„${text}“`,
  given: "was da steht",
  types: {
    int: "eine ganze Zahl",
    number: "eine Zahl",
    string: "ein Text",
    array: "eine Liste",
    object: "ein Objekt",
    boolean: "ja oder nein",
  },
  faults: {
    missing: "fehlt",
    missingOf: (allowed: string) => `fehlt; erlaubt: ${allowed}`,
    wrongType: (given: string, expected: string) => `${given} geht nicht; erlaubt: ${expected}`,
    notOneOf: (given: string, allowed: string) => `${given} ist nicht dabei; erlaubt: ${allowed}`,
    tooMany: {
      characters: (most: number) => `hat mehr als die erlaubten ${most} Zeichen`,
      entries: (most: number) => `hat mehr als ${plural(most, "erlaubten Eintrag", "erlaubte Einträge")}`,
    },
    tooFew: {
      characters: (least: number) => `braucht mindestens ${least} Zeichen`,
      entries: (least: number) => `braucht mindestens ${plural(least, "Eintrag", "Einträge")}`,
    },
    beyond: {
      above: (given: string, limit: string) => `${given} liegt über den erlaubten ${limit}`,
      below: (given: string, limit: string) => `${given} liegt unter den erlaubten ${limit}`,
    },
    notWithin: {
      above: (given: string, limit: string) => `${given} liegt nicht unter ${limit}`,
      below: (given: string, limit: string) => `${given} liegt nicht über ${limit}`,
    },
    outside: (given: string, minimum: string, maximum: string) =>
      `${given} liegt außerhalb von ${minimum} bis ${maximum}`,
    notMultiple: (given: string, step: string) => `${given} ist kein Vielfaches von ${step}`,
    wrongForm: (given: string) => `${given} hat nicht die Form, die hier erlaubt ist`,
    unknownFields: (names: string) => `hat Felder, die nicht erlaubt sind: ${names}`,
    noAllowedForm: (given: string) => `${given} hat keine der erlaubten Formen`,
    badEntry: "hat einen Eintrag, der nicht erlaubt ist",
    notAllowed: (given: string) => `${given} ist nicht erlaubt`,
  },
  notPlain:
    "Darin ist etwas, das sich nicht speichern lässt; erlaubt sind Texte, Zahlen, ja oder nein, Listen und Objekte.",
  tooLarge: (bytes: number, allowed: number) => `Das braucht ${bytes} Bytes; erlaubt sind höchstens ${allowed}.`,
  otherVersion: "Das hat eine andere Version von Pitslate geschrieben.",
  unknownKind: (kind: string) => `Diese Version von Pitslate kennt keine Einträge der Art „${kind}“.`,
  wrongDocument: (document: string) => `Das gehört nicht in das Dokument „${document}“.`,
  conflicting:
    "Denselben Eintrag gibt es mit verschiedenem Inhalt; keiner davon gilt, also gib den Wert noch einmal ein.",
  badKey: (key: string, kind: string) =>
    `„${key}“ geht nicht als Name (${kind}); erlaubt sind 1 bis 200 Buchstaben, Ziffern und . _ ~ / -`,
  unknownRecord: "Dieser Eintrag ist nicht auf diesem Gerät oder nicht lesbar.",
  noSinglePrevious: "Vor diesem Eintrag gab es keinen eindeutigen Wert; wähl den Wert von Hand.",
  previousNotHere: "Der Wert vor diesem Eintrag ist nicht auf diesem Gerät oder nicht lesbar; wähl den Wert von Hand.",
  nothingToVoid: "Es gibt keinen Wert, der sich zurücknehmen ließe.",
  twice: "Derselbe Wert steht zweimal in einem Eintrag; jeder darf einmal darin stehen.",
};
