import type { RuleWords } from "#core/advice/rule-words.ts";

const backToBaseline = "Reviens à la base aux deux bouts et repars de là.";

/** What the rules of grip and of the balance of the two ends say. */
export const gripWords: Readonly<Record<string, RuleWords>> = {
  "front-slides": {
    reason: "L’avant glisse : que le pneu et la fourche suivent mieux le sol.",
    notice: "L’avant tient sa ligne dans les virages à plat.",
    otherwise: "Attention à la jante : ne baisse pas plus le pneu là où des pierres la tapent.",
  },
  "front-pushes-wide": {
    reason: "L’avant élargit en virage : mets-y plus de poids et laisse-le céder à l’entrée.",
    notice: "L’avant entre dans le virage et y reste.",
    otherwise: "Un arrière trop bas enlève du poids à l’avant : regarde son sag.",
  },
  "rear-slides": {
    reason: "L’arrière glisse : que le pneu et l’amortisseur suivent mieux le sol.",
    notice: "L’arrière suit en virage et au freinage.",
    otherwise: "Compare les deux bouts : un arrière haut et raide a moins de charge pour accrocher.",
  },
  "rear-steps-out": {
    reason: "L’arrière décroche en virage : laisse-le s’y poser et garder sa charge.",
    notice: "L’arrière reste derrière l’avant en virage.",
    otherwise: "Regarde l’avant : s’il plonge, il soulève l’arrière.",
  },
  "tyre-squirms": {
    reason: "Le pneu se plie en virage : sa carcasse demande plus de pression avant de pouvoir accrocher.",
    notice: "Les virages se prennent sur les crampons, et le vélo répond tout de suite.",
    otherwise: "Une jante plus large ou une carcasse plus ferme tient le pneu là où la pression coûte du grip.",
  },
  "front-firmer-pushes-wide": {
    reason: "L’avant élargit et est devenu plus ferme par rapport à l’arrière que dans la base du pilote.",
    notice: "L’avant entre en virage comme avant.",
    otherwise: backToBaseline,
  },
  "front-softer-dives": {
    reason: "L’avant plonge et est devenu plus mou par rapport à l’arrière que dans la base du pilote.",
    notice: "Le vélo est de nouveau à plat dans le raide.",
    otherwise: backToBaseline,
  },
  "rear-firmer-steps-out": {
    reason: "L’arrière décroche et est devenu plus ferme par rapport à l’avant que dans la base du pilote.",
    notice: "L’arrière suit comme avant.",
    otherwise: backToBaseline,
  },
  "unsure-and-softer": {
    reason: "Le pilote manque de confiance, et ce bout est devenu plus mou par rapport à l’autre que dans sa base.",
    notice: "Le vélo est de nouveau à plat et familier.",
    otherwise: backToBaseline,
  },
  "unsure-and-firmer": {
    reason: "Le pilote manque de confiance, et ce bout est devenu plus ferme par rapport à l’autre que dans sa base.",
    notice: "Le vélo est de nouveau à plat et familier.",
    otherwise: backToBaseline,
  },
};
