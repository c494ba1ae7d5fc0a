import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of damage and of the travel say. */
export const travelWords: Readonly<Record<string, RuleWords>> = {
  knocks: {
    reason: "Un claquement, c’est du jeu ou une pièce desserrée : aucun réglage ne le guérit.",
    notice: "Rien avant qu’il soit trouvé.",
    otherwise:
      "Arrête de rouler avec : regarde jeu de direction, bagues, roulements, vis et roue, et laisse un mécanicien qualifié juger.",
  },
  "oil-on-the-shaft": {
    reason: "L’huile dehors manque dedans : un joint ou un amortissement lâche.",
    notice: "Rien avant la révision.",
    otherwise: "Note les réglages et donne la pièce à réviser avant de rouler fort à nouveau.",
  },
  "loses-air": {
    reason: "Une chambre qui perd de l’air n’a pas de réglage : ce qui est réglé aujourd’hui est parti demain.",
    notice: "Rien avant qu’elle tienne sa pression.",
    otherwise:
      "Compare la première lecture de la pompe à celle attendue ; si elle est basse, regarde valve et joints, ou donne la pièce à réviser.",
  },
  "rim-strikes": {
    reason: "La jante tape à travers le pneu : plus de pression avant de perdre une jante ou un pneu.",
    notice: "Les pierres ne sonnent plus sur la jante.",
    otherwise:
      "Regarde les bosses sur la jante et la ligne ; une carcasse plus ferme fait ce que la pression ne peut pas.",
  },
  "rim-strikes-and-slides": {
    reason:
      "La jante tape et la roue glisse : le pneu ne peut pas donner les deux, donc d’abord la jante, et le grip par le ressort.",
    notice: "Les pierres ne sonnent plus sur la jante ; le grip vient avec le changement suivant.",
    otherwise: "D’autres crampons ou une carcasse plus ferme sont la réponse que la pression ne donne pas.",
  },
  "worn-damper": {
    reason:
      "Sag juste, et pourtant trop rapide et à bout de débattement : l’amortissement fait moins que ses clics ne disent.",
    notice: "Rien avant la révision.",
    otherwise: "Regarde les heures de révision ; une huile vieille ou qui mousse donne la même sensation.",
  },
  sticks: {
    reason: "Sag juste, dur au début et jamais à la fin : ça colle en chemin.",
    notice: "Rien avant d’avoir regardé.",
    otherwise:
      "Nettoie et huile les joints, contrôle bagues et alignement, et regarde les heures de l’huile de graissage.",
  },
  "soft-all-along": {
    reason:
      "Il plonge au milieu et utilise tout son débattement : mou partout, donc le ressort principal et pas sa fin.",
    notice: "Il se tient plus haut en virage et au freinage, et garde du débattement pour les gros chocs.",
    otherwise: "Ensuite la pression secondaire, ou une cale.",
  },
  "full-travel-too-easily": {
    reason: "Tout le débattement sert trop souvent alors que le sag est juste : d’abord du soutien en fin de course.",
    notice: "Les gros chocs ne vont plus au bout de la course ; le début se sent comme avant.",
    otherwise: "Ensuite augmente la pression principale ; après, plus de compression haute vitesse.",
  },
  "end-hits-hard": {
    reason: "Le bout de la course arrive trop durement : plus de soutien juste avant.",
    notice: "La dernière partie de la course arrive plus doucement.",
    otherwise: "Contrôle la butée de fin de course, et si le pneu touche le cadre ou le té.",
  },
  "firm-start-soft-end": {
    reason: "Dur au début et qui tape à la fin : le ressort doit devenir plus souple d’abord et plus ferme au bout.",
    notice: "La fin arrive plus doucement ; le début s’assouplit au changement d’après.",
    otherwise: "Quand la fin tient, baisse la pression principale d’un pas pour le début.",
  },
  "firm-all-along": {
    reason: "Dur au milieu et jamais au bout : ferme partout, donc d’abord le ressort principal.",
    notice: "Les chocs francs sont plus ronds et le joint témoin va plus loin.",
    otherwise: "Ensuite moins de pression secondaire, ou une cale de moins.",
  },
  "travel-never-used": {
    reason:
      "Le sag est juste, et des chocs qui devraient utiliser le débattement ne le font pas : moins de soutien en fin de course.",
    notice: "Les gros chocs vont plus loin et se sentent moins dans les mains et les pieds.",
    otherwise: "Ensuite baisse la pression principale ; une pièce qui colle en fin de course va en révision.",
  },
  "soft-start-firm-end": {
    reason: "Mou au début et jamais au bout : le ressort monte trop en chemin.",
    notice: "Le débattement sert de façon plus égale.",
    otherwise: "Quand le bout est atteint, augmente la pression principale d’un pas pour le début.",
  },
  "end-never-reached": {
    reason:
      "Le pilote dit que le bout de la course n’est jamais atteint : un petit pas de soutien en moins à cet endroit.",
    notice: "Les réceptions dures utilisent un peu plus de débattement.",
    otherwise: "Mesure le débattement utilisé avec le joint témoin au prochain run avant d’aller plus loin.",
  },
};
