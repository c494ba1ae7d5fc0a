/** French texts of why something cannot be written down. */
import type { recordProblems as english } from "../english/record-problems.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const recordProblems: Said<typeof english> = {
  sentence: (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
  field: (name: string, fault: string) => `${name} : ${fault}`,
  wholeValue: (fault: string) => `La valeur : ${fault}`,
  quoted: (text: string) => `« ${text} »`,
  given: "ce qui est donné",
  types: {
    int: "un nombre entier",
    number: "un nombre",
    string: "un texte",
    array: "une liste",
    object: "un objet",
    boolean: "oui ou non",
  },
  faults: {
    missing: "manque",
    missingOf: (allowed: string) => `manque ; permis : ${allowed}`,
    wrongType: (given: string, expected: string) => `${given} n’est pas ${expected}`,
    notOneOf: (given: string, allowed: string) => `${given} n’en fait pas partie ; permis : ${allowed}`,
    tooMany: {
      characters: (most: number) => `dépasse la limite de ${plural(most, "caractère", "caractères")}`,
      entries: (most: number) => `dépasse la limite de ${plural(most, "élément", "éléments")}`,
    },
    tooFew: {
      characters: (least: number) => `demande au moins ${plural(least, "caractère", "caractères")}`,
      entries: (least: number) => `demande au moins ${plural(least, "élément", "éléments")}`,
    },
    beyond: {
      above: (given: string, limit: string) => `${given} dépasse le maximum permis, ${limit}`,
      below: (given: string, limit: string) => `${given} est en dessous du minimum permis, ${limit}`,
    },
    notWithin: {
      above: (given: string, limit: string) => `${given} n’est pas en dessous de ${limit}`,
      below: (given: string, limit: string) => `${given} n’est pas au-dessus de ${limit}`,
    },
    outside: (given: string, minimum: string, maximum: string) => `${given} n’est pas entre ${minimum} et ${maximum}`,
    notMultiple: (given: string, step: string) => `${given} n’est pas un multiple de ${step}`,
    wrongForm: (given: string) => `${given} n’a pas la forme permise ici`,
    unknownFields: (names: string) => `a des champs qui ne sont pas permis : ${names}`,
    noAllowedForm: (given: string) => `${given} n’a aucune des formes permises`,
    badEntry: "a un élément qui n’est pas permis",
    notAllowed: (given: string) => `${given} n’est pas permis`,
  },
  notPlain:
    "Il y a là quelque chose qui ne peut pas être gardé ; sont permis les textes, les nombres, oui ou non, les listes et les objets.",
  tooLarge: (bytes: number, allowed: number) => `Cela prend ${bytes} octets ; au plus ${allowed} sont permis.`,
  otherVersion: "C’est écrit par une autre version de Pitslate.",
  unknownKind: (kind: string) => `Cette version de Pitslate ne connaît pas les saisies du genre « ${kind} ».`,
  wrongDocument: (document: string) => `Cela n’a pas sa place dans le document « ${document} ».`,
  conflicting:
    "La même saisie existe avec des contenus différents ; aucun n’est utilisé, alors saisis la valeur à nouveau.",
  badKey: (key: string, kind: string) =>
    `« ${key} » ne peut pas servir de nom (${kind}) ; sont permis 1 à 200 lettres, chiffres et . _ ~ / -`,
  unknownRecord: "Cette saisie n’est pas sur cet appareil, ou est illisible.",
  noSinglePrevious: "Il n’y avait pas de valeur unique avant cette saisie ; choisis la valeur à la main.",
  previousNotHere:
    "La valeur d’avant cette saisie n’est pas sur cet appareil, ou est illisible ; choisis la valeur à la main.",
  nothingToVoid: "Il n’y a aucune valeur à retirer.",
  twice: "La même valeur est donnée deux fois dans une saisie ; chacune ne peut l’être qu’une fois.",
};
