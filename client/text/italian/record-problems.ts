/** Italian texts of why something cannot be written down. */
import type { recordProblems as english } from "../english/record-problems.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const recordProblems: Said<typeof english> = {
  sentence: (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
  field: (name: string, fault: string) => `${name}: ${fault}`,
  wholeValue: (fault: string) => `Il valore: ${fault}`,
  quoted: (text: string) => `«${text}»`,
  given: "quello che c’è scritto",
  types: {
    int: "un numero intero",
    number: "un numero",
    string: "un testo",
    array: "un elenco",
    object: "un oggetto",
    boolean: "sì o no",
  },
  faults: {
    missing: "manca",
    missingOf: (allowed: string) => `manca; ammesso: ${allowed}`,
    wrongType: (given: string, expected: string) => `${given} non va bene; serve ${expected}`,
    notOneOf: (given: string, allowed: string) => `${given} non va bene; ammesso: ${allowed}`,
    tooMany: {
      characters: (most: number) => `ha più di ${plural(most, "carattere", "caratteri")}, il massimo ammesso`,
      entries: (most: number) => `ha più di ${plural(most, "elemento", "elementi")}, il massimo ammesso`,
    },
    tooFew: {
      characters: (least: number) => `servono almeno ${plural(least, "carattere", "caratteri")}`,
      entries: (least: number) => `servono almeno ${plural(least, "elemento", "elementi")}`,
    },
    beyond: {
      above: (given: string, limit: string) => `${given} supera il massimo ammesso, ${limit}`,
      below: (given: string, limit: string) => `${given} è sotto il minimo ammesso, ${limit}`,
    },
    notWithin: {
      above: (given: string, limit: string) => `${given} non è sotto ${limit}`,
      below: (given: string, limit: string) => `${given} non è sopra ${limit}`,
    },
    outside: (given: string, minimum: string, maximum: string) =>
      `${given} è fuori dal campo ammesso, da ${minimum} a ${maximum}`,
    notMultiple: (given: string, step: string) => `${given} non è un multiplo di ${step}`,
    wrongForm: (given: string) => `${given} non ha la forma ammessa qui`,
    unknownFields: (names: string) => `ha campi che non sono ammessi: ${names}`,
    noAllowedForm: (given: string) => `${given} non ha nessuna delle forme ammesse`,
    badEntry: "ha un elemento che non è ammesso",
    notAllowed: (given: string) => `${given} non è ammesso`,
  },
  notPlain: "Contiene qualcosa che non si può salvare; sono ammessi testi, numeri, sì o no, elenchi e oggetti.",
  tooLarge: (bytes: number, allowed: number) =>
    `Occupa ${plural(bytes, "byte", "byte")}; il massimo ammesso è ${allowed}.`,
  otherVersion: "È stato scritto da un’altra versione di Pitslate.",
  unknownKind: (kind: string) => `Questa versione di Pitslate non conosce voci del tipo «${kind}».`,
  wrongDocument: (document: string) => `Non va nel documento «${document}».`,
  conflicting:
    "La stessa voce esiste con contenuti diversi; non ne vale nessuno, quindi inserisci il valore un’altra volta.",
  badKey: (key: string, kind: string) =>
    `«${key}» non va bene come nome (${kind}); sono ammessi da 1 a 200 tra lettere, cifre e . _ ~ / -`,
  unknownRecord: "Quella voce non è su questo dispositivo, oppure non si legge.",
  noSinglePrevious: "Prima di quella voce non c’era un valore solo; scegli il valore a mano.",
  previousNotHere:
    "Il valore prima di quella voce non è su questo dispositivo, oppure non si legge; scegli il valore a mano.",
  nothingToVoid: "Non c’è un valore che si possa ritirare.",
  twice: "Lo stesso valore compare due volte in una voce; ognuno può comparire una volta sola.",
};
