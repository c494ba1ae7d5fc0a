/** Spanish texts of where something stands in a file, and why it cannot be taken in. */
import type { dataProblems as model } from "../english/data-problems.ts";
import type { Said } from "../spoken.ts";

export const dataProblems: Said<typeof model> = {
  place: {
    line: (line: number) => `Línea ${line}`,
    lines: (first: number, last: number) => `Líneas ${first} a ${last}`,
    of: {
      rider: (lines: string, name: string) => `${lines}, piloto «${name}»`,
      baseline: (lines: string, name: string) => `${lines}, base ${name}`,
      adjuster: (lines: string, name: string) => `${lines}, ${name}`,
      person: (lines: string, name: string) => `${lines}, ${name}`,
    },
    kind: (kind: string) => `«${kind}»`,
    value: (kind: string, key: string) => `${kind} «${key}»`,
  },
  row: {
    givenTwice: "Viene dos veces; cada valor puede venir una vez.",
    disputedHere: "Aquí hay discrepancia. Resuélvela antes y luego importa el archivo otra vez.",
    disputedInFile:
      "En el archivo hay discrepancia: no hay un solo valor que importar. Apunta a mano lo que sea cierto.",
    nothingToLeanOn: (kind: string, key: string) =>
      `${kind} «${key}» no existe, ni aquí ni en lo que se puede importar del archivo.`,
    bikeOfAnother: (bike: string, owner: string) => `La bici ${bike} es de ${owner}.`,
    partOfAnotherPlace: (part: string, place: string, given: string) =>
      `La pieza ${part} va en otro sitio: en «${place}», no en «${given}».`,
    noSettingKey: "Su clave no tiene la forma piloto/bici/sitio.ajuste.",
    adjusterTwice: (adjuster: string, baseline: string) => `${adjuster} viene dos veces para ${baseline}.`,
    lineRefused: "Una de sus líneas se rechaza, así que no se toma ninguna.",
    noSettledBaseline:
      "Aquí no hay una base así en vigor. Una nueva necesita la masa, la temperatura y la altitud en que se encontró: apruébala desde un fin de semana o impórtala como JSON.",
    unknownKind: (allowed: string) => `No existe ese tipo; valen ${allowed}.`,
    noObject: "Lo que hay aquí no es un objeto; valen valores por clave.",
    plateOfAnother: (plate: string, rider: string, said: string) =>
      `El dorsal ${plate} es aquí de ${rider}, y el archivo dice «${said}».`,
    plateOfSeveral: (plate: string, riders: string) => `El dorsal ${plate} lo llevan aquí varios: ${riders}.`,
    noRider: (who: string) => `Nadie del equipo encaja: ${who}.`,
    severalRiders: (who: string) => `Encaja más de un piloto del equipo: ${who}.`,
    plate: (plate: string) => `dorsal ${plate}`,
    nobodyNamed: "sin dorsal ni nombre",
    noSessionChosen: (sessions: string) => `Elige la sesión de los tiempos; hay: ${sessions}.`,
    unknownSession: (said: string, sessions: string) =>
      `En este fin de semana no hay ninguna sesión «${said}»; hay: ${sessions}.`,
    noSessions: "ninguna",
    noTime: (said: string) =>
      `«${said}» no es el tiempo de una bajada; vale 1:23.456, 83.456 o 1'23"456, con punto o coma, por encima de 0 y 60 minutos como mucho.`,
    disputedRun:
      "Hay discrepancia en una bajada de este piloto en esta sesión. Resuélvela antes y luego importa el archivo otra vez.",
  },
  file: {
    notJson: "Este archivo no es JSON o está cortado. Elige un archivo con los datos del equipo.",
    otherFormat: (allowed: string) =>
      `Este no es un archivo con los datos de un equipo: su «format» tiene que ser «${allowed}».`,
    otherVersion: (version: string, allowed: number) =>
      `Este archivo tiene la versión ${version}; este programa lee la versión ${allowed}.`,
    noVersion: (allowed: number) => `Este archivo no tiene versión; este programa lee la versión ${allowed}.`,
    noValues: "A este archivo le falta «values»; vale un objeto de tipos.",
    tooManyValues: (most: number) => `Este archivo tiene más de ${most} valores; impórtalo en varios archivos.`,
    tooManyRows: (most: number) => `Esta tabla tiene más de ${most} filas; impórtala en varios archivos.`,
    otherTable: (allowed: string) =>
      `La primera fila no nombra las columnas de una tabla que se pueda importar. Vale: ${allowed}.`,
  },
};
