/** French texts of the hand-off without a network. */
import type { handOff as english } from "../english/hand-off.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";

export const handOff: Said<typeof english> = {
  link: "Transmettre sans réseau",
  title: "Transmettre sans réseau",
  hint: "Par codes : un appareil les montre à l’écran, l’autre les lit avec sa caméra. Par fichier : un appareil l’enregistre, l’autre le reçoit, par câble, clé USB, ou par ce que les deux téléphones utilisent pour s’envoyer des fichiers. Rien n’est écrasé : ce que deux personnes ont réglé chacune de son côté s’affiche en désaccord.",
  codesNotLoaded: "Impossible de charger la transmission par codes depuis le serveur. Transmets plutôt par fichier.",
  back: "Retour",
  save: {
    title: "Depuis cet appareil",
    action: "Tout enregistrer en fichier",
    byCodes: "Transmettre par codes",
    share: "Passer le fichier",
    busy: "Création du fichier…",
    done: (name: string, entries: number) => `${name} est prêt, avec ${inEntries(entries)}.`,
    incomplete:
      "D’anciens documents de cet appareil n’ont pas pu être lus, ou n’avaient plus de place, et n’y sont pas.",
    where: "Il est là où ce navigateur met ses téléchargements.",
    holds: "Dans le fichier",
    whoFirst:
      "Dis d’abord qui a cet appareil en main. C’est seulement alors que les saisies des pilotes y sont ouvertes.",
    who: "Qui es-tu ?",
    team: "Équipe, vélos, bases et week-ends",
    document: (name: string, entries: number) => `${name} : ${inEntries(entries)}`,
    rider: (name: string, year: number) => `${name}, ${year}`,
    notShared: "Le fichier n’a pas été passé. Tu peux encore l’enregistrer ici.",
  },
  takeIn: {
    title: "Vers cet appareil",
    action: "Recevoir un fichier",
    byCodes: "Recevoir par codes",
    ending: (ending: string) => `Un fichier dont le nom finit par ${ending}`,
    reading: "Lecture du fichier…",
    unreadable: "Cet appareil n’a pas pu ouvrir le fichier. Choisis-le encore une fois.",
    madeBy: (moment: string, name: string | undefined) =>
      name === undefined ? `Créé le ${moment}` : `Créé par ${name}, le ${moment}`,
    holds: (entries: number) => `${inEntries(entries)} dedans`,
    fresh: (entries: number) => `${inEntries(entries)} ${chosen(entries, "nouvelle", "nouvelles")} ici`,
    whose: (name: string, entries: number) => `${name} : ${inEntries(entries)}`,
    span: (first: string, last: string) => (first === last ? `Écrit le ${first}` : `Écrit du ${first} au ${last}`),
    nothingNew: "Rien de nouveau : cet appareil a déjà tout ce qu’il contient.",
    merge: "Fusionner",
    leave: "Laisser",
    merging: "Fusion…",
    merged: (entries: number) =>
      `Fusionné : ${inEntries(entries)} ${chosen(entries, "nouvelle est", "nouvelles sont")} sur cet appareil.`,
    notSaved: (entries: number) =>
      `Fusionné : ${inEntries(entries)} ${chosen(entries, "nouvelle, mais pas encore enregistrée", "nouvelles, mais pas encore enregistrées")} sur cet appareil. Garde cette page ouverte.`,
    onward: "La suite part au serveur dès qu’il est joignable.",
  },
};

function inEntries(count: number): string {
  return plural(count, "saisie", "saisies");
}
