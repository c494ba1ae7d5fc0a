/** French texts of what is known of a rider's body and stance. */
import type { riderDetails as english } from "../english/rider-details.ts";
import type { Said } from "../spoken.ts";

export const riderDetails: Said<typeof english> = {
  summary: (mass: string, share: string) => `Pilote : ${mass}, part avant ${share}`,
  notMeasured: "non mesurée",
  about:
    "La masse comprend tout ce qui est porté. Quand elle diffère de celle de la base, la fiche de réglages corrige les ressorts pour que le sag reste le même.",
  mass: "Masse équipée",
  share: "Part du poids à l’avant",
  shareUnit: "de 1",
  shareAbout: (assumed: string) =>
    `La part du poids que porte la roue avant en position de pilotage. Laisse vide tant qu’elle n’est pas mesurée : ${assumed} est alors supposé.`,
  style: "Comment le pilote roule en ce moment",
  styles: { calm: "calme", usual: "comme d’habitude", hard: "engagé" },
  styleAbout:
    "Quand ce n’est pas comme à la base, la fiche de réglages dit ce que cela change. Laisse ouvert en cas de doute.",
  save: "Enregistrer le pilote",
  saved: (name: string, mass: string, share: string) => `Enregistré : ${name}, ${mass}, part avant ${share}`,
  needsMass: "Masse équipée : entre la masse.",
  disputed: "Deux personnes ont saisi ici des valeurs différentes. Ce que tu enregistres tranche.",
  changedMeanwhile:
    "Quelqu’un d’autre a modifié ceci pendant que c’était ouvert ici. Enregistre encore une fois pour mettre tes valeurs à la place.",
  ofRider: "Les données du pilote : deux personnes ont saisi des valeurs différentes",
};
