/** The rules in Spanish, made from the rules themselves as the English ones are. */
import type { ConditionMove, ConditionRule } from "#core/advice/condition-rules.ts";
import type { Direction, Move, Sizing } from "#core/advice/feedback-rule.ts";
import type { ChapterName } from "#core/advice/rule-book.ts";
import { ruleInWords } from "#core/advice/rule-in-words.ts";
import type { Symptom } from "#core/advice/symptom.ts";
import { isDamperAdjuster } from "#core/team/adjuster.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { End } from "#core/team/place.ts";
import { numberText } from "../quantity-text.ts";
import { common } from "./common.ts";
import { riderDetails } from "./rider-details.ts";
import { ruleWords } from "./rule-words.ts";
import { physicsWords } from "./rule-words-physics.ts";
import { trackside } from "./trackside.ts";
import { symptomNames } from "./trade-names.ts";

export const chapterText: Readonly<Record<ChapterName, { readonly title: string; readonly about: string }>> = {
  physics: {
    title: "Antes del fin de semana: la física",
    about: "Con qué se corrigen las bases propias del piloto, calculado para cada bici.",
  },
  conditions: {
    title: "Antes del fin de semana: terreno y pista",
    about:
      "Lo que las bases propias del piloto no contienen todavía. Un paso perceptible es el menor cambio que se nota en esa pieza.",
  },
  feedback: {
    title: "Después de una bajada: sensaciones",
    about:
      "Un solo cambio cada vez, en este orden: daños, sag, recorrido, tacto del muelle, amortiguación, agarre, equilibrio.",
  },
  questions: {
    title: "Después de una bajada: preguntas",
    about: "Síntomas que se excluyen. Se pregunta por ellos antes de cambiar nada.",
  },
};

function feltText(ends: readonly End[], all: readonly Symptom[], none: readonly Symptom[]): string {
  const not = none.length > 0 ? `, y no: ${none.map((symptom) => symptomNames[symptom]).join(", ")}` : "";
  return `${endsText(ends)}: ${all.map((symptom) => symptomNames[symptom]).join(", ")}${not}`;
}

const sizingText: Record<Sizing, string> = {
  "sag to target": "lo que lleve el sag a su objetivo",
  "hit within travel": "lo que deje el golpe más fuerte dentro del recorrido",
  "hit uses travel": "lo que haga que el golpe medido use el recorrido",
  "balance as before": "lo que devuelva el equilibrio de los dos trenes en la base",
  felt: "el menor cambio que se nota",
};

const directionText: Record<Direction, string> = { raise: "subir", lower: "bajar", open: "abrir", close: "cerrar" };

function moveText({ at, end, adjuster, direction, size }: Move, reboundFollows: boolean): string {
  const name = at === "tyre" ? "presión de la cubierta" : common.adjusters[adjuster].toLowerCase();
  const where = end === "other" ? " en el otro tren" : "";
  const follows = reboundFollows ? "; el rebote lo sigue" : "";
  return `${name}${where}: ${directionText[direction]}, ${sizingText[size]}${follows}`;
}

function heldByText(courseType: CourseType): string {
  return `; solo para la parte de la pista que no contiene la base propia para pista ${common.courseTypes[courseType]}`;
}

function conditionText(when: ConditionRule["when"]): string {
  switch (when.type) {
    case "ground":
      return `terreno: ${when.grounds.map((ground) => common.grounds[ground]).join(" o ")}`;
    case "no own baseline":
      return `una parte de la pista es ${common.courseTypes[when.courseType]} y el piloto no tiene base para eso`;
    case "cold":
      return `el aire está por debajo de ${numberText(when.belowCelsius)} °C, y ${numberText(when.colderBy)} °C o más por debajo del de la base`;
    case "riding style":
      return `el piloto va ahora ${riderDetails.styles[when.style]}, y en la base no`;
  }
}

function conditionMoveText({ places, adjuster, felt }: ConditionMove): string {
  const size = Math.abs(felt);
  const steps = size === 1 ? "un paso perceptible" : size === 0.5 ? "medio paso perceptible" : undefined;
  const by = steps ?? `${numberText(size)} pasos perceptibles`;
  // A damper's clicks are counted from closed: more of them is more open.
  const [up, down] = isDamperAdjuster(adjuster) ? ["abrir", "cerrar"] : ["subir", "bajar"];
  const where = places.map((place) => common.places[place].toLowerCase()).join(" y ");
  return `${where}, ${common.adjusters[adjuster].toLowerCase()}: ${felt > 0 ? up : down} ${by}`;
}

function conflictText(ends: readonly End[], all: readonly Symptom[]): string {
  return `${endsText(ends)}: ${all.map((symptom) => symptomNames[symptom]).join(", y sin embargo ")}`;
}

function endsText(ends: readonly End[]): string {
  return ends.map((end) => trackside.ends[end].toLowerCase()).join(" o ");
}

/** A rule in words. */
export const ruleText = ruleInWords({
  words: ruleWords,
  physics: (id) => physicsWords[id],
  felt: feltText,
  move: moveText,
  condition: conditionText,
  heldBy: heldByText,
  conditionMove: conditionMoveText,
  conflict: conflictText,
});
