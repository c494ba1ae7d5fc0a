/** French texts of the pages that are printed, and of the screens that show them before. */
import type { print as english } from "../english/print.ts";
import type { Said } from "../spoken.ts";
import { chosen } from "./plural.ts";

export const print: Said<typeof english> = {
  links: { sheet: "Imprimer la fiche de réglages", team: "Imprimer la fiche de séance", report: "Rapport du week-end" },
  who: "Qui es-tu ?",
  forWhom: "Dis d’abord qui tu es : la page porte le nom de qui l’a imprimée.",
  forTeam: "Cette page contient tous les pilotes : c’est un mécano ou un manager qui l’imprime.",
  noWeekend: "Pas encore de week-end de course sur cet appareil.",
  weekend: "Week-end",
  session: "Séance",
  paper: "Papier",
  print: "Imprimer",
  hint: "Dans la fenêtre d’impression du navigateur, laisse l’échelle à 100 %. Tout est noir sur blanc ; aucun fond n’est nécessaire.",
  preview: "La page telle qu’elle sera imprimée",
  back: { pit: "Retour à l’équipe", rider: "Retour au pilote", review: "Retour au bilan" },
  sheetTitle: "Fiche de réglages",
  teamTitle: "Fiche de séance",
  plate: (plate: number) => `N° ${plate}`,
  mass: (mass: string) => `pilote ${mass}`,
  sessionAt: (session: string, start: string) => `${session}, ${start}`,
  course: (steep: string, jumpy: string, wet: string, altitude: string) =>
    `Raide ${steep}, à sauts ${jumpy}, mouillée ${wet}, à ${altitude}`,
  conditions: (air: string, bench: string | undefined, ground: string) =>
    bench === undefined ? `Air ${air}, sol ${ground}` : `Air ${air}, à l’établi ${bench}, sol ${ground}`,
  printed: (moment: string, who: string) => `Imprimé le ${moment} par ${who}.`,
  state: (moment: string, entries: number) =>
    `Peut être dépassé : état du ${moment}, la plus récente de ${entries} ${chosen(entries, "saisie", "saisies")} sur cet appareil.`,
  noState: "Peut être dépassé : il n’y a aucune saisie sur cet appareil.",
  ends: { front: "Avant : fourche et pneu", rear: "Arrière : amortisseur et pneu" },
  columns: {
    adjuster: "Réglage",
    baseline: "Base",
    weekend: "À la séance",
    bench: "À régler à l’établi",
    onTheBike: "Sur le vélo",
    read: "Lu",
    step: "Étape",
    from: "De",
    to: "Régler à",
    first: "Première lecture",
    again: "Relecture",
    most: "Jamais plus que",
    rider: "Pilote",
  },
  states: {
    "to set": "",
    set: "",
    adjusted: "ajusté",
    reported: "le pilote le dit",
    disputed: "regarde le vélo",
    "no value": "",
  },
  tyrePressure: "Pression du pneu",
  inDispute: "en désaccord",
  none: "–",
  notKnown: "inconnu",
  leakBelow: (reading: string) => `sous ${reading}, perte d’air`,
  now: (value: string) => `maintenant ${value}`,
  blend: "La base est un mélange des bases propres du pilote, selon les parts de la piste.",
  missingTypes: (types: string) => `Pas de base propre pour piste ${types} : les autres bases la remplacent.`,
  notFitted:
    "Pas calé sur un sag mesuré : les corrections par la physique ont le bon sens et l’ordre de grandeur seulement.",
  noBaseline: "Ce vélo n’a pas encore de base : il n’y a rien sur quoi le régler.",
  refused: (adjuster: string, limit: string) => `${adjuster} : ${limit}`,
  sag: {
    title: "Sag",
    atBaseline: (end: string, value: string) => `${end} ${value} à la base, maintenant`,
    unmeasured: (end: string) => `${end} : jamais mesuré, maintenant`,
    millimetres: "mm",
  },
  bench: {
    title: "À mettre sur le vélo, dans cet ordre",
    order:
      "L’ordre respecte toutes les limites après chaque étape. À lire à la température de l’établi ; écris ce que tu lis.",
    nothing: "La fiche ne laisse plus rien à régler.",
    blocked: "Aucun ordre sûr ne mène au tout :",
    cautionsTitle: "Avant de toucher au vélo",
    cautions: [
      "Le gaz est sous pression et les ressorts sont sous charge : garde le visage à l’écart, et reste sous le maximum marqué sur la pièce.",
      "Relâche toute la pression avant d’ouvrir quoi que ce soit ; n’ouvre jamais une cartouche d’amortissement ni une chambre sous pression.",
      "Une pièce usée, abîmée ou dont la révision est dépassée va chez un mécanicien qualifié : ne compense pas par les réglages.",
      "Le premier run après un changement est lent et court.",
      "La notice du fabricant et le règlement de l’épreuve passent avant cette fiche.",
    ],
    steps: (numbers: string, count: number, caution: string) =>
      `${chosen(count, "Étape", "Étapes")} ${numbers} : ${caution}`,
    stepCautions: {
      "gas under pressure": "gaz sous pression, reste sous le maximum marqué sur la pièce.",
      "release all air before opening": "vide l’air de toutes les chambres avant d’ouvrir la pièce.",
      "spring under load": "décharge le ressort avant de tourner ou d’enlever quoi que ce soit.",
      "count clicks from closed": "tourne doucement jusqu’à fermé, puis compte les clics en ouvrant.",
      "lower of tyre and rim maximum": "reste sous le plus bas des deux maxima marqués sur le pneu et sur la jante.",
    },
  },
  first: "Gaz sous pression, ressorts sous charge : lis d’abord « Avant de toucher au vélo ».",
  notes: "Notes",
  team: {
    hint: "En grand : ce qu’il faut régler à l’établi. En petit : ce qui est sur le vélo. La case est pour ce que tu lis.",
  },
};
