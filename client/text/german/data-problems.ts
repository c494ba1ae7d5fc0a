/** German texts of where something stands in a file, and why it cannot be taken in. */
import type { dataProblems as model } from "../english/data-problems.ts";
import type { Said } from "../spoken.ts";

export const dataProblems: Said<typeof model> = {
  place: {
    line: (line: number) => `Zeile ${line}`,
    lines: (first: number, last: number) => `Zeile ${first} bis ${last}`,
    of: {
      rider: (lines: string, name: string) => `${lines}, Fahrer „${name}“`,
      baseline: (lines: string, name: string) => `${lines}, Basis-Setup ${name}`,
      adjuster: (lines: string, name: string) => `${lines}, ${name}`,
      person: (lines: string, name: string) => `${lines}, ${name}`,
    },
    kind: (kind: string) => `„${kind}“`,
    value: (kind: string, key: string) => `${kind} „${key}“`,
  },
  row: {
    givenTwice: "Das kommt zweimal vor; jedes darf einmal vorkommen.",
    disputedHere: "Das ist hier strittig. Klär das zuerst, dann lies die Datei noch einmal ein.",
    disputedInFile:
      "Das ist in der Datei strittig: Es gibt keinen eindeutigen Wert zum Einlesen. Gib von Hand ein, was stimmt.",
    nothingToLeanOn: (kind: string, key: string) =>
      `${kind} „${key}“ gibt es nicht, weder hier noch in der Datei, soweit sie sich einlesen lässt.`,
    bikeOfAnother: (bike: string, owner: string) => `Das Bike ${bike} gehört ${owner}.`,
    partOfAnotherPlace: (part: string, place: string, given: string) =>
      `Das Teil ${part} gehört woandershin: Sein Platz ist „${place}“, nicht „${given}“.`,
    noSettingKey: "Der Schlüssel hat nicht die Form Fahrer/Bike/Platz.Einstellpunkt.",
    adjusterTwice: (adjuster: string, baseline: string) => `${adjuster} kommt für ${baseline} zweimal vor.`,
    lineRefused: "Eine der Zeilen wird abgelehnt, also wird keine übernommen.",
    noSettledBaseline:
      "Hier gilt kein solches Basis-Setup. Ein neues braucht Gewicht, Temperatur und Höhe, bei denen es gefunden wurde: Gib es aus einem Wochenende frei oder lies es als JSON ein.",
    unknownKind: (allowed: string) => `Diese Art gibt es nicht; erlaubt sind ${allowed}.`,
    noObject: "Was hier steht, ist kein Objekt; erlaubt sind Werte nach Schlüssel.",
    plateOfAnother: (plate: string, rider: string, said: string) =>
      `Startnummer ${plate} ist hier ${rider}, und in der Datei steht „${said}“.`,
    plateOfSeveral: (plate: string, riders: string) => `Startnummer ${plate} haben hier mehrere: ${riders}.`,
    noRider: (who: string) => `Niemand im Team passt: ${who}.`,
    severalRiders: (who: string) => `Mehr als ein Fahrer im Team passt: ${who}.`,
    plate: (plate: string) => `Startnummer ${plate}`,
    nobodyNamed: "keine Startnummer und kein Name",
    noSessionChosen: (sessions: string) => `Wähl die Session, aus der die Zeiten sind; es gibt: ${sessions}.`,
    unknownSession: (said: string, sessions: string) =>
      `An diesem Wochenende gibt es keine Session „${said}“; es gibt: ${sessions}.`,
    noSessions: "keine",
    noTime: (said: string) =>
      `„${said}“ ist keine Laufzeit; erlaubt ist 1:23.456, 83.456 oder 1'23"456, mit Punkt oder Komma, über 0 und höchstens 60 Minuten.`,
    disputedRun:
      "Ein Lauf dieses Fahrers in dieser Session ist strittig. Klär das zuerst, dann lies die Datei noch einmal ein.",
  },
  file: {
    notJson: "Diese Datei ist kein JSON oder abgeschnitten. Wähl eine Datei mit den Daten des Teams.",
    otherFormat: (allowed: string) =>
      `Das ist keine Datei mit den Daten eines Teams: Ihr „format“ muss „${allowed}“ sein.`,
    otherVersion: (version: string, allowed: number) =>
      `Diese Datei hat die Version ${version}; dieses Programm liest Version ${allowed}.`,
    noVersion: (allowed: number) => `Diese Datei hat keine Version; dieses Programm liest Version ${allowed}.`,
    noValues: "In dieser Datei fehlt „values“; erlaubt ist ein Objekt mit den Arten.",
    tooManyValues: (most: number) => `Diese Datei hat mehr als ${most} Werte; lies sie in mehreren Dateien ein.`,
    tooManyRows: (most: number) => `Diese Tabelle hat mehr als ${most} Zeilen; lies sie in mehreren Dateien ein.`,
    otherTable: (allowed: string) =>
      `Die erste Zeile nennt nicht die Spalten einer Tabelle, die sich einlesen lässt. Erlaubt: ${allowed}.`,
  },
};
