/** Why a value is what it is, and why a change was made, in one Spanish sentence each. */
import type { Because } from "#core/advice/reason.ts";
import type { Change } from "#core/weekend/changelog.ts";
import { quantityText } from "../quantity-text.ts";
import { common } from "./common.ts";
import { ruleWords } from "./rule-words.ts";

export function reason(because: Because): string {
  switch (because.type) {
    case "own baseline":
      return `Base propia para pista ${common.courseTypes[because.courseType]}: ${quantityText(because.value)}.`;
    case "blend":
      return `Mezcla de bases propias: ${because.parts
        .map((part) => `${part.percent} % ${common.courseTypes[part.courseType]} con ${quantityText(part.value)}`)
        .join(", ")}.`;
    case "condition rule": {
      const sentence = ruleWords(because.rule)?.reason ?? `Según la regla «${because.rule}».`;
      return because.percent === undefined ? sentence : `${sentence} Para el ${because.percent} % de la pista.`;
    }
    case "rider mass":
      return `Piloto de ${quantityText(because.now)}, base de ${quantityText(because.atBaseline)}: el sag no cambia.`;
    case "altitude": {
      const air = because.now.value > because.atBaseline.value ? "menos denso" : "más denso";
      return `Base a ${quantityText(because.atBaseline)}, hoy ${quantityText(because.now)}: aire ${air}, el mismo apoyo al final del recorrido.`;
    }
    case "rebound follows":
      return `El rebote sigue al muelle, que es más ${because.spring === "softer" ? "blando" : "duro"}: el grado de amortiguación de la base no cambia.`;
    case "temperature":
      return `Se pone a ${quantityText(because.bench)} para que marque ${quantityText(because.value)} a ${quantityText(because.course)}.`;
  }
}

export function cause({ cause: why, voided }: Pick<Change, "cause" | "voided">): string {
  if (voided !== undefined) return voided;
  switch (why?.type) {
    case undefined:
      return "Sin motivo apuntado.";
    case "advice":
      return ruleWords(why.rule)?.reason ?? `Según la regla «${why.rule}».`;
    case "own baseline":
      return `De vuelta a la base propia para pista ${why.courseTypes.map(courseTypeName).join(", ")}.`;
    case "conditions":
      return "Del reglaje del fin de semana para la pista y las condiciones.";
    case "own change":
      return "Cambiado por el propio piloto a pie de pista.";
    case "by hand":
      return why.note === undefined || why.note === "" ? "Puesto a mano." : `Puesto a mano: ${why.note}`;
    case "revert":
      return "Deshecho: de vuelta al valor de antes.";
    case "resolution":
      return "Una discrepancia, resuelta mirando la bici.";
    case "carry-over":
      return "Traído de la temporada anterior.";
    case "confirmation":
      return "Dicho por el piloto, confirmado en la bici.";
    case "approval":
      return "Aprobado como base.";
    case "setup":
      return "Primer apunte.";
  }
}

/** A record of a later version may name a type that this one does not have. */
function courseTypeName(type: string): string {
  const names: Readonly<Record<string, string>> = common.courseTypes;
  return names[type] ?? type;
}
