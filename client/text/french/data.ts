/** French texts of the data that goes out and comes in. */
import type { data as english } from "../english/data.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";

export const data: Said<typeof english> = {
  link: "Import et export",
  title: "Import et export",
  forWhom: "Seul un mécano ou un manager importe et exporte des données.",
  who: "Qui es-tu ?",
  back: { mechanic: "Au stand", manager: "Au bilan" },
  saved: (name: string) => `${name} est prêt. Il est là où ce navigateur met ses téléchargements.`,
  file: {
    tooLarge: (bytes: number, most: number) =>
      `Ce fichier fait ${megabytes(bytes)} Mo ; on en lit au plus ${megabytes(most)}. Importe-le en plusieurs fichiers.`,
    unreadable: "Cet appareil n’a pas pu ouvrir le fichier. Choisis-le encore une fois.",
    notText:
      "Ce fichier n’est pas du texte en UTF-8. Enregistre-le en UTF-8 (un tableur le propose à côté de CSV) et choisis-le à nouveau.",
    quotes: (line: number) =>
      `Ligne ${line} : un guillemet est ouvert et pas fermé comme le veut le CSV. Enregistre encore une fois le tableau en CSV.`,
    noTable:
      "Il n’y a pas de tableau dans ce fichier : il faut une ligne avec les noms des colonnes, et des lignes dessous.",
    reading: "Lecture du fichier…",
    writing: "Écriture…",
    notLoaded: "Impossible de charger le programme des tableaux depuis le serveur. Réessaie quand il est joignable.",
  },
  team: {
    title: "Toutes les données de l’équipe",
    hint: "Un fichier JSON avec tout ce qui vaut maintenant : personnes, vélos, pièces, bases, week-ends, réglages, runs. D’autres peuvent écrire un tel fichier.",
    schema: "La forme du fichier (JSON Schema)",
    save: "Tout enregistrer en JSON",
    take: "Importer un fichier JSON",
  },
  tables: {
    title: "Tableaux pour un tableur",
    which: "Tableau",
    names: {
      riders: "Pilotes",
      baselines: "Bases",
      settings: "Réglages sur les vélos",
      changelog: "Journal (export seulement)",
      runs: "Runs (export seulement)",
    },
    form: "Le tableur écrit",
    forms: { point: "62.5, virgules entre les cellules", comma: "62,5 ; points-virgules entre les cellules" },
    save: "Enregistrer en CSV",
    take: "Importer un fichier CSV",
    hint: "Pilotes, bases ou réglages : la première ligne le dit. Les réglages importés comptent comme étant maintenant sur le vélo, pour le week-end choisi ici.",
    weekend: "Week-end",
  },
  times: {
    title: "Temps des runs",
    hint: "D’un fichier CSV de chronométrage. Un temps va au run du pilote qui n’en a pas encore, ou fait un run avec seulement un temps. Rien de ce qui a été dit d’un run n’est modifié.",
    take: "Choisir un fichier de temps",
    weekend: "Week-end",
    session: "Séance",
    columns: "Quelle colonne dit quoi",
    column: { plate: "Plaque", name: "Nom", time: "Temps", session: "Séance" },
    none: "aucune colonne",
    sessionHint: "Si aucune colonne ne nomme la séance, celle choisie ci-dessus compte.",
    unnamed: (number: number) => `Colonne ${number}`,
    needs: "Choisis la colonne du temps, et celle de la plaque ou du nom.",
    look: "Montrer ce qui changerait",
    tooMany: (most: number) => `Ce tableau a plus de ${most} lignes ; importe-le en plusieurs fichiers.`,
  },
  preview: {
    title: (name: string) => `Ce que ${name} changerait`,
    counts: (fresh: number, changes: number, same: number, refused: number) =>
      `${plural(fresh, "nouveau", "nouveaux")}, ${plural(changes, "changement", "changements")}, ${plural(same, "identique", "identiques")}, ${plural(refused, "refusé", "refusés")}`,
    nothing: "Rien ne changerait : tout ce qui peut être importé est déjà ainsi.",
    refused: "Refusé",
    changes: "Changements",
    fresh: "Nouveau",
    difference: (field: string, from: string | undefined, to: string | undefined) =>
      `${field} : ${from ?? "rien"} → ${to ?? "rien"}`,
    take: "Importer",
    takeGood: (count: number) => (count < 2 ? "Importer le seul bon" : `Importer les ${count} bons`),
    leave: "Laisser",
    more: (count: number) => `En montrer ${count} ${chosen(count, "autre", "autres")}`,
    line: (place: string, sentence: string) => `${place} : ${sentence}`,
  },
  note: (name: string) => `Du fichier ${name}`,
  done: (count: number) => `${plural(count, "saisie importée", "saisies importées")}.`,
  moved: "Quelque chose a changé ici pendant que tu regardais. Voici ce que le fichier changerait maintenant.",
  undo: "Annuler tout le fichier",
  undone: (count: number, kept: number) =>
    `${plural(count, "saisie annulée", "saisies annulées")}.${kept > 0 ? ` ${plural(kept, "a encore changé depuis, et reste", "ont encore changé depuis, et restent")}.` : ""}`,
};

function megabytes(bytes: number): number {
  return Math.ceil(bytes / 1_000_000);
}
