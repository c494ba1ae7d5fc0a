/** Spanish texts of why something cannot be written down. */
import type { recordProblems as model } from "../english/record-problems.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const recordProblems: Said<typeof model> = {
  sentence: (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
  field: (name: string, fault: string) => `${name}: ${fault}`,
  wholeValue: (fault: string) => `El valor: ${fault}`,
  quoted: (text: string) => `«${text}»`,
  given: "lo que hay",
  types: {
    int: "un número entero",
    number: "un número",
    string: "un texto",
    array: "una lista",
    object: "un objeto",
    boolean: "sí o no",
  },
  faults: {
    missing: "falta",
    missingOf: (allowed: string) => `falta; vale: ${allowed}`,
    wrongType: (given: string, expected: string) => `${given} no es ${expected}`,
    notOneOf: (given: string, allowed: string) => `${given} no vale; vale: ${allowed}`,
    tooMany: {
      characters: (most: number) => `pasa del máximo de ${plural(most, "carácter", "caracteres")}`,
      entries: (most: number) => `pasa del máximo de ${plural(most, "elemento", "elementos")}`,
    },
    tooFew: {
      characters: (least: number) => `necesita al menos ${plural(least, "carácter", "caracteres")}`,
      entries: (least: number) => `necesita al menos ${plural(least, "elemento", "elementos")}`,
    },
    beyond: {
      above: (given: string, limit: string) => `${given} pasa del máximo permitido, ${limit}`,
      below: (given: string, limit: string) => `${given} no llega al mínimo permitido, ${limit}`,
    },
    notWithin: {
      above: (given: string, limit: string) => `${given} no es menor que ${limit}`,
      below: (given: string, limit: string) => `${given} no es mayor que ${limit}`,
    },
    outside: (given: string, minimum: string, maximum: string) => `${given} no está entre ${minimum} y ${maximum}`,
    notMultiple: (given: string, step: string) => `${given} no es múltiplo de ${step}`,
    wrongForm: (given: string) => `${given} no tiene la forma que vale aquí`,
    unknownFields: (names: string) => `tiene campos que no se permiten: ${names}`,
    noAllowedForm: (given: string) => `${given} no tiene ninguna de las formas que valen`,
    badEntry: "tiene un elemento que no se permite",
    notAllowed: (given: string) => `${given} no se permite`,
  },
  notPlain: "Contiene algo que no se puede guardar; valen textos, números, sí o no, listas y objetos.",
  tooLarge: (bytes: number, allowed: number) => `Ocupa ${bytes} bytes; se permiten ${allowed} como mucho.`,
  otherVersion: "Lo ha escrito otra versión de Pitslate.",
  unknownKind: (kind: string) => `Esta versión de Pitslate no conoce apuntes del tipo «${kind}».`,
  wrongDocument: (document: string) => `No es del documento «${document}».`,
  conflicting: "El mismo apunte existe con contenidos distintos; no se usa ninguno, así que apunta el valor otra vez.",
  badKey: (key: string, kind: string) =>
    `«${key}» no vale como nombre (${kind}); valen de 1 a 200 letras, cifras y . _ ~ / -`,
  unknownRecord: "Ese apunte no está en este dispositivo o no se puede leer.",
  noSinglePrevious: "Antes de ese apunte no había un solo valor; elige el valor a mano.",
  previousNotHere:
    "El valor anterior a ese apunte no está en este dispositivo o no se puede leer; elige el valor a mano.",
  nothingToVoid: "No hay ningún valor que retirar.",
  twice: "El mismo valor viene dos veces en un apunte; cada uno puede ir una vez.",
};
