/** Italian texts of where something stands in a file, and why it cannot be taken in. */
import type { dataProblems as english } from "../english/data-problems.ts";
import type { Said } from "../spoken.ts";

export const dataProblems: Said<typeof english> = {
  place: {
    line: (line: number) => `Riga ${line}`,
    lines: (first: number, last: number) => `Righe da ${first} a ${last}`,
    of: {
      rider: (lines: string, name: string) => `${lines}, pilota «${name}»`,
      baseline: (lines: string, name: string) => `${lines}, base ${name}`,
      adjuster: (lines: string, name: string) => `${lines}, ${name}`,
      person: (lines: string, name: string) => `${lines}, ${name}`,
    },
    kind: (kind: string) => `«${kind}»`,
    value: (kind: string, key: string) => `${kind} «${key}»`,
  },
  row: {
    givenTwice: "Compare due volte; può comparire una volta sola.",
    disputedHere: "Qui è in disaccordo. Prima chiariscilo, poi importa di nuovo il file.",
    disputedInFile: "Nel file è in disaccordo: non c’è un valore solo da importare. Inserisci a mano quello che vale.",
    nothingToLeanOn: (kind: string, key: string) =>
      `${kind} «${key}» non c’è, né qui né nel file, per quanto se ne può importare.`,
    bikeOfAnother: (bike: string, owner: string) => `La bici ${bike} è di ${owner}.`,
    partOfAnotherPlace: (part: string, place: string, given: string) =>
      `Il componente ${part} va altrove: il suo posto è «${place}», non «${given}».`,
    noSettingKey: "La sua chiave non ha la forma pilota/bici/posto.regolazione.",
    adjusterTwice: (adjuster: string, baseline: string) => `${adjuster} compare due volte per ${baseline}.`,
    lineRefused: "Una delle sue righe è rifiutata, quindi non se ne importa nessuna.",
    noSettledBaseline:
      "Qui non vale nessuna base così. Una nuova ha bisogno di massa, temperatura e altitudine a cui è stata trovata: approvala da un weekend, oppure importala in JSON.",
    unknownKind: (allowed: string) => `Un tipo così non esiste; sono ammessi ${allowed}.`,
    noObject: "Quello che c’è qui non è un oggetto; sono ammessi valori per chiave.",
    plateOfAnother: (plate: string, rider: string, said: string) =>
      `Il numero ${plate} qui è di ${rider}, e il file dice «${said}».`,
    plateOfSeveral: (plate: string, riders: string) => `Qui più di uno ha il numero ${plate}: ${riders}.`,
    noRider: (who: string) => `Nel team non corrisponde nessuno: ${who}.`,
    severalRiders: (who: string) => `Nel team corrisponde più di un pilota: ${who}.`,
    plate: (plate: string) => `numero ${plate}`,
    nobodyNamed: "né numero né nome",
    noSessionChosen: (sessions: string) => `Scegli la sessione da cui vengono i tempi; ci sono: ${sessions}.`,
    unknownSession: (said: string, sessions: string) =>
      `In questo weekend non c’è una sessione «${said}»; ci sono: ${sessions}.`,
    noSessions: "nessuna",
    noTime: (said: string) =>
      `«${said}» non è il tempo di una run; si scrive 1:23.456, 83.456 o 1'23"456, con il punto o la virgola, sopra 0 e al massimo 60 minuti.`,
    disputedRun:
      "Una run di questo pilota in questa sessione è in disaccordo. Prima chiariscila, poi importa di nuovo il file.",
  },
  file: {
    notJson: "Questo file non è JSON, oppure è incompleto. Scegli un file con i dati del team.",
    otherFormat: (allowed: string) =>
      `Questo non è un file con i dati di un team: il suo «format» deve essere «${allowed}».`,
    otherVersion: (version: string, allowed: number) =>
      `Questo file ha la versione ${version}; questo programma legge la versione ${allowed}.`,
    noVersion: (allowed: number) => `Questo file non ha una versione; questo programma legge la versione ${allowed}.`,
    noValues: "In questo file manca «values»; è ammesso un oggetto con i tipi.",
    tooManyValues: (most: number) => `Questo file ha più di ${most} valori; importalo diviso in più file.`,
    tooManyRows: (most: number) => `Questa tabella ha più di ${most} righe; importala divisa in più file.`,
    otherTable: (allowed: string) =>
      `La prima riga non nomina le colonne di una tabella che si può importare. Ammesso: ${allowed}.`,
  },
};
