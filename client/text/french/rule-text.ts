/** The rules in French, made from the rules themselves as the English ones are. */
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
    title: "Avant le week-end : la physique",
    about: "Ce qui corrige les bases propres du pilote, calculé pour chaque vélo.",
  },
  conditions: {
    title: "Avant le week-end : sol et piste",
    about:
      "Ce que les bases propres du pilote ne contiennent pas encore. Un pas sensible est le plus petit changement qui se sent sur la pièce.",
  },
  feedback: {
    title: "Après un run : ressenti",
    about:
      "Un changement à la fois, dans cet ordre : dégâts, sag, débattement, sensation du ressort, amortissement, grip, équilibre.",
  },
  questions: {
    title: "Après un run : questions",
    about: "Symptômes qui s’excluent. On les éclaircit avant de changer quoi que ce soit.",
  },
};

function feltText(ends: readonly End[], all: readonly Symptom[], none: readonly Symptom[]): string {
  const not = none.length > 0 ? `, et pas : ${none.map((symptom) => symptomNames[symptom]).join(", ")}` : "";
  return `${endsText(ends)} : ${all.map((symptom) => symptomNames[symptom]).join(", ")}${not}`;
}

const sizingText: Record<Sizing, string> = {
  "sag to target": "de quoi ramener le sag à sa cible",
  "hit within travel": "de quoi garder le plus gros choc dans le débattement",
  "hit uses travel": "de quoi faire utiliser le débattement au choc mesuré",
  "balance as before": "de quoi retrouver l’équilibre de la base entre les deux bouts",
  felt: "du plus petit changement qui se sent",
};

const directionText: Record<Direction, string> = {
  raise: "augmenter",
  lower: "baisser",
  open: "ouvrir",
  close: "fermer",
};

function moveText({ at, end, adjuster, direction, size }: Move, reboundFollows: boolean): string {
  const name = at === "tyre" ? "pression du pneu" : common.adjusters[adjuster].toLowerCase();
  const where = end === "other" ? " à l’autre bout" : "";
  const follows = reboundFollows ? " ; la détente suit" : "";
  return `${name}${where} : ${directionText[direction]}, ${sizingText[size]}${follows}`;
}

function heldByText(courseType: CourseType): string {
  return ` ; seulement pour la part de la piste que la base propre piste ${common.courseTypes[courseType]} ne contient pas`;
}

function conditionText(when: ConditionRule["when"]): string {
  switch (when.type) {
    case "ground":
      return `le sol est ${when.grounds.map((ground) => common.grounds[ground]).join(" ou ")}`;
    case "no own baseline":
      return `une part de la piste est ${common.courseTypes[when.courseType]} et le pilote n’a pas de base pour cela`;
    case "cold":
      return `l’air est sous ${numberText(when.belowCelsius)} °C, et plus froid qu’à la base de ${numberText(when.colderBy)} °C ou plus`;
    case "riding style":
      return `style du pilote maintenant : ${riderDetails.styles[when.style]}, et pas à la base`;
  }
}

function conditionMoveText({ places, adjuster, felt }: ConditionMove): string {
  const size = Math.abs(felt);
  const steps = size === 1 ? "d’un pas sensible" : size === 0.5 ? "d’un demi-pas sensible" : undefined;
  const by = steps ?? `de ${numberText(size)} pas sensibles`;
  // A damper's clicks are counted from closed: more of them is more open.
  const [up, down] = isDamperAdjuster(adjuster) ? ["ouvrir", "fermer"] : ["augmenter", "baisser"];
  const where = places.map((place) => common.places[place].toLowerCase()).join(" et ");
  return `${where}, ${common.adjusters[adjuster].toLowerCase()} : ${felt > 0 ? up : down} ${by}`;
}

function conflictText(ends: readonly End[], all: readonly Symptom[]): string {
  return `${endsText(ends)} : ${all.map((symptom) => symptomNames[symptom]).join(", et pourtant ")}`;
}

function endsText(ends: readonly End[]): string {
  return ends.map((end) => trackside.ends[end].toLowerCase()).join(" ou ");
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
