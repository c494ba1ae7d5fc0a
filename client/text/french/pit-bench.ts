/** French texts of the work at the bench: what goes on the bike, in which order, with which cautions. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const bench: Said<typeof english.bench> = {
  title: "À mettre sur le vélo",
  order: "Dans cet ordre : toutes les limites restent respectées après chaque étape.",
  none: "La fiche ne laisse plus rien à régler.",
  tick: "Sur le vélo",
  tickLabel: (adjuster: string, value: string) => `${adjuster} ${value} : sur le vélo`,
  all: "Tout est sur le vélo",
  ticked: (adjuster: string, value: string) => `Sur le vélo : ${adjuster} ${value}`,
  tickedAll: (count: number) => `Sur le vélo : ${settingsText(count)}`,
  from: (value: string) => `avant : ${value}`,
  fromUnknown: "inconnu avant",
  blocked: "Aucun ordre sûr ne mène au tout :",
  cautionsTitle: "Avant de toucher au vélo",
  cautions: [
    "Le gaz est sous pression et les ressorts sont sous charge : garde le visage à l’écart, et reste sous le maximum marqué sur la pièce.",
    "Relâche toute la pression avant d’ouvrir quoi que ce soit ; n’ouvre jamais une cartouche d’amortissement.",
    "Le premier run après un changement est lent et court.",
    "La notice du fabricant et le règlement de l’épreuve passent avant cet outil.",
  ],
  how: (count: number) => `Comment : ${plural(count, "opération", "opérations")}`,
  firstReading: (value: string, leak: string) =>
    `Première lecture attendue : ${value}. Sous ${leak}, il y a eu perte d’air.`,
  operations: {
    "unload the wheel": "Roue en l’air, pièce déchargée.",
    "clean around the valve": "Nettoie autour de la valve, puis enlève le bouchon.",
    "connect the pump": "Branche la pompe.",
    "take the pump off fast": "Débranche vite la pompe : ce qui siffle est le flexible, pas la chambre.",
    "cycle the part": "Comprime la pièce plusieurs fois sur sa course, doucement au début.",
    "close the cap": "Remets le bouchon.",
    "write it down": "Coche ici.",
    "release all air": "Vide l’air de toutes les chambres de la pièce.",
    "open the part": "Ouvre-la comme le dit la notice du fabricant.",
    "close the part": "Referme-la au couple marqué.",
    "turn to closed": "Tourne doucement jusqu’à fermé.",
    "unload the spring": "Dévisse la bague jusqu’à ce que le ressort soit libre.",
  },
  setTo: (adjuster: string, value: string) => `${adjuster} : règle ${value}.`,
  checkAgain: (value: string) => `Rebranche la pompe une fois : elle doit montrer ${value}.`,
  spacersTo: (value: string) => `Passe à ${value}.`,
  springTo: (value: string) => `Monte le ressort de ${value}.`,
  collarTo: (value: string) => `Tourne la bague jusqu’à ${value} de précontrainte.`,
  clicksTo: (value: string) => `Ouvre en comptant ${value}.`,
  stepCautions: {
    "gas under pressure": "Gaz sous pression : reste sous le maximum marqué sur la pièce.",
    "release all air before opening": "Vide l’air de toutes les chambres avant d’ouvrir la pièce.",
    "spring under load": "Le ressort est sous charge : décharge-le avant de tourner ou d’enlever quoi que ce soit.",
    "count clicks from closed": "Tourne doucement jusqu’à fermé, puis compte les clics en ouvrant.",
    "lower of tyre and rim maximum": "Reste sous le plus bas des deux maxima marqués sur le pneu et sur la jante.",
  },
};
