/** Why a value is what it is, and why a change was made, in one Italian sentence each. */
import type { Because } from "#core/advice/reason.ts";
import type { Change } from "#core/weekend/changelog.ts";
import { quantityText } from "../quantity-text.ts";
import { common } from "./common.ts";
import { ruleWords } from "./rule-words.ts";

export function reason(because: Because): string {
  switch (because.type) {
    case "own baseline":
      return `Base propria per pista ${common.courseTypes[because.courseType]}: ${quantityText(because.value)}.`;
    case "blend":
      return `Miscela di basi proprie: ${because.parts
        .map((part) => `${part.percent} % ${common.courseTypes[part.courseType]} a ${quantityText(part.value)}`)
        .join(", ")}.`;
    case "condition rule": {
      const sentence = ruleWords(because.rule)?.reason ?? `Secondo la regola «${because.rule}».`;
      return because.percent === undefined ? sentence : `${sentence} Per il ${because.percent} % della pista.`;
    }
    case "rider mass":
      return `Pilota a ${quantityText(because.now)}, base a ${quantityText(because.atBaseline)}: il sag resta.`;
    case "altitude": {
      const air = because.now.value > because.atBaseline.value ? "più rarefatta" : "più densa";
      return `Base a ${quantityText(because.atBaseline)}, oggi ${quantityText(because.now)}: aria ${air}, stesso sostegno verso fine corsa.`;
    }
    case "rebound follows":
      return `Il ritorno segue la molla più ${because.spring === "softer" ? "morbida" : "dura"}: resta il rapporto di smorzamento della base.`;
    case "temperature":
      return `Regolato a ${quantityText(because.bench)} perché segni ${quantityText(because.value)} a ${quantityText(because.course)}.`;
  }
}

export function cause({ cause: why, voided }: Pick<Change, "cause" | "voided">): string {
  if (voided !== undefined) return voided;
  switch (why?.type) {
    case undefined:
      return "Nessun motivo indicato.";
    case "advice":
      return ruleWords(why.rule)?.reason ?? `Secondo la regola «${why.rule}».`;
    case "own baseline":
      return `Tornato alla base propria per pista ${why.courseTypes.map(courseTypeName).join(", ")}.`;
    case "conditions":
      return "Dall’assetto del weekend per pista e condizioni.";
    case "own change":
      return "Cambiato in pista dal pilota stesso.";
    case "by hand":
      return why.note === undefined || why.note === "" ? "Regolato a mano." : `Regolato a mano: ${why.note}`;
    case "revert":
      return "Annullato: tornato al valore di prima.";
    case "resolution":
      return "Un disaccordo, chiarito guardando la bici.";
    case "carry-over":
      return "Ripreso dalla stagione precedente.";
    case "confirmation":
      return "Segnalato dal pilota, confermato sulla bici.";
    case "approval":
      return "Approvato come base.";
    case "setup":
      return "Prima voce.";
  }
}

/** A record of a later version may name a type that this one does not have. */
function courseTypeName(type: string): string {
  const names: Readonly<Record<string, string>> = common.courseTypes;
  return names[type] ?? type;
}
