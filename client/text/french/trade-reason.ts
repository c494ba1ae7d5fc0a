/** Why a value is what it is, and why a change was made, in one French sentence each. */
import type { Because } from "#core/advice/reason.ts";
import type { Change } from "#core/weekend/changelog.ts";
import { quantityText } from "../quantity-text.ts";
import { common } from "./common.ts";
import { ruleWords } from "./rule-words.ts";

export function reason(because: Because): string {
  switch (because.type) {
    case "own baseline":
      return `Sa propre base piste ${common.courseTypes[because.courseType]} : ${quantityText(because.value)}.`;
    case "blend":
      return `Mélange de ses propres bases : ${because.parts
        .map((part) => `${part.percent} % ${common.courseTypes[part.courseType]} à ${quantityText(part.value)}`)
        .join(", ")}.`;
    case "condition rule": {
      const sentence = ruleWords(because.rule)?.reason ?? `Selon la règle « ${because.rule} ».`;
      return because.percent === undefined ? sentence : `${sentence} Pour ${because.percent} % de la piste.`;
    }
    case "rider mass":
      return `Pilote à ${quantityText(because.now)}, base à ${quantityText(because.atBaseline)} : le sag reste le même.`;
    case "altitude": {
      const air = because.now.value > because.atBaseline.value ? "plus léger" : "plus dense";
      return `Base à ${quantityText(because.atBaseline)}, aujourd’hui ${quantityText(because.now)} : air ${air}, même soutien en fin de course.`;
    }
    case "rebound follows":
      return `La détente suit le ressort plus ${because.spring === "softer" ? "souple" : "raide"} : le taux d’amortissement de la base reste.`;
    case "temperature":
      return `Réglé à ${quantityText(because.bench)} pour lire ${quantityText(because.value)} à ${quantityText(because.course)}.`;
  }
}

export function cause({ cause: why, voided }: Pick<Change, "cause" | "voided">): string {
  if (voided !== undefined) return voided;
  switch (why?.type) {
    case undefined:
      return "Aucune raison donnée.";
    case "advice":
      return ruleWords(why.rule)?.reason ?? `Selon la règle « ${why.rule} ».`;
    case "own baseline":
      return `Retour à sa propre base piste ${why.courseTypes.map(courseTypeName).join(", ")}.`;
    case "conditions":
      return "Des réglages du week-end pour la piste et les conditions.";
    case "own change":
      return "Changé par le pilote lui-même sur la piste.";
    case "by hand":
      return why.note === undefined || why.note === "" ? "Réglé à la main." : `Réglé à la main : ${why.note}`;
    case "revert":
      return "Annulé : retour à la valeur d’avant.";
    case "resolution":
      return "Un désaccord, tranché en regardant le vélo.";
    case "carry-over":
      return "Repris de la saison d’avant.";
    case "confirmation":
      return "Signalé par le pilote, confirmé sur le vélo.";
    case "approval":
      return "Validé comme base.";
    case "setup":
      return "Première saisie.";
  }
}

/** A record of a later version may name a type that this one does not have. */
function courseTypeName(type: string): string {
  const names: Readonly<Record<string, string>> = common.courseTypes;
  return names[type] ?? type;
}
