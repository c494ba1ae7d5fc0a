/** French texts of where something stands in a file, and why it cannot be taken in. */
import type { dataProblems as english } from "../english/data-problems.ts";
import type { Said } from "../spoken.ts";

export const dataProblems: Said<typeof english> = {
  place: {
    line: (line: number) => `Ligne ${line}`,
    lines: (first: number, last: number) => `Lignes ${first} à ${last}`,
    of: {
      rider: (lines: string, name: string) => `${lines}, pilote « ${name} »`,
      baseline: (lines: string, name: string) => `${lines}, base ${name}`,
      adjuster: (lines: string, name: string) => `${lines}, ${name}`,
      person: (lines: string, name: string) => `${lines}, ${name}`,
    },
    kind: (kind: string) => `« ${kind} »`,
    value: (kind: string, key: string) => `${kind} « ${key} »`,
  },
  row: {
    givenTwice: "C’est donné deux fois ; chaque valeur ne peut l’être qu’une fois.",
    disputedHere: "C’est en désaccord ici. Tranche d’abord, puis importe de nouveau le fichier.",
    disputedInFile:
      "C’est en désaccord dans le fichier : il n’y a pas de valeur unique à importer. Saisis ce qui est vrai à la main.",
    nothingToLeanOn: (kind: string, key: string) =>
      `${kind} « ${key} » n’existe pas, ni ici ni dans ce qui peut être importé du fichier.`,
    bikeOfAnother: (bike: string, owner: string) => `Le vélo ${bike} est celui de ${owner}.`,
    partOfAnotherPlace: (part: string, place: string, given: string) =>
      `La pièce ${part} va ailleurs : sa place est « ${place} », pas « ${given} ».`,
    noSettingKey: "Sa clé n’a pas la forme pilote/vélo/place.réglage.",
    adjusterTwice: (adjuster: string, baseline: string) => `${adjuster} est donné deux fois pour ${baseline}.`,
    lineRefused: "Une de ses lignes est refusée, donc aucune n’est prise.",
    noSettledBaseline:
      "Aucune base de ce nom ne fait foi ici. Une nouvelle demande la masse, la température et l’altitude où elle a été trouvée : valide-la depuis un week-end, ou importe-la en JSON.",
    unknownKind: (allowed: string) => `Ce genre n’existe pas ; sont permis ${allowed}.`,
    noObject: "Ce qui est là n’est pas un objet ; sont permises des valeurs par clé.",
    plateOfAnother: (plate: string, rider: string, said: string) =>
      `La plaque ${plate} est ici celle de ${rider}, et le fichier dit « ${said} ».`,
    plateOfSeveral: (plate: string, riders: string) => `Plusieurs ont ici la plaque ${plate} : ${riders}.`,
    noRider: (who: string) => `Personne de l’équipe ne correspond : ${who}.`,
    severalRiders: (who: string) => `Plus d’un pilote de l’équipe correspond : ${who}.`,
    plate: (plate: string) => `plaque ${plate}`,
    nobodyNamed: "ni plaque ni nom",
    noSessionChosen: (sessions: string) => `Choisis la séance d’où viennent les temps ; il y a : ${sessions}.`,
    unknownSession: (said: string, sessions: string) =>
      `Il n’y a pas de séance « ${said} » ce week-end ; il y a : ${sessions}.`,
    noSessions: "aucune",
    noTime: (said: string) =>
      `« ${said} » n’est pas le temps d’un run ; sont permis 1:23.456, 83.456 ou 1'23"456, avec un point ou une virgule, au-dessus de 0 et au plus 60 minutes.`,
    disputedRun:
      "Un run de ce pilote dans cette séance est en désaccord. Tranche d’abord, puis importe de nouveau le fichier.",
  },
  file: {
    notJson: "Ce fichier n’est pas du JSON, ou il est coupé. Choisis un fichier avec les données de l’équipe.",
    otherFormat: (allowed: string) =>
      `Ce n’est pas un fichier de données d’une équipe : son « format » doit être « ${allowed} ».`,
    otherVersion: (version: string, allowed: number) =>
      `Ce fichier a la version ${version} ; ce programme lit la version ${allowed}.`,
    noVersion: (allowed: number) => `Ce fichier n’a pas de version ; ce programme lit la version ${allowed}.`,
    noValues: "Il manque « values » dans ce fichier ; un objet de genres est permis.",
    tooManyValues: (most: number) => `Ce fichier contient plus de ${most} valeurs ; importe-le en plusieurs fichiers.`,
    tooManyRows: (most: number) => `Ce tableau a plus de ${most} lignes ; importe-le en plusieurs fichiers.`,
    otherTable: (allowed: string) =>
      `La première ligne ne nomme pas les colonnes d’un tableau qui peut être importé. Permis : ${allowed}.`,
  },
};
