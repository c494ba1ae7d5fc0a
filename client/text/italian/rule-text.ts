/** The rules in Italian, made from the rules themselves as the English ones are. */
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
    title: "Prima del weekend: la fisica",
    about: "Che cosa corregge le basi proprie del pilota, calcolato per ogni bici.",
  },
  conditions: {
    title: "Prima del weekend: terreno e pista",
    about:
      "Quello che le basi proprie del pilota non contengono ancora. Un passo percepibile è la più piccola modifica che si sente sul componente.",
  },
  feedback: {
    title: "Dopo una run: feedback",
    about:
      "Una modifica alla volta, in quest’ordine: danni, sag, escursione, sensazione della molla, idraulica, grip, equilibrio.",
  },
  questions: {
    title: "Dopo una run: domande",
    about: "Sintomi che si escludono. Si chiede prima di cambiare qualcosa.",
  },
};

function feltText(ends: readonly End[], all: readonly Symptom[], none: readonly Symptom[]): string {
  const not = none.length > 0 ? `, e non: ${none.map((symptom) => symptomNames[symptom]).join(", ")}` : "";
  return `${endsText(ends)}: ${all.map((symptom) => symptomNames[symptom]).join(", ")}${not}`;
}

const sizingText: Record<Sizing, string> = {
  "sag to target": "quanto basta perché il sag torni nell’obiettivo",
  "hit within travel": "quanto basta perché il colpo più forte resti nell’escursione",
  "hit uses travel": "quanto basta perché il colpo misurato usi l’escursione",
  "balance as before": "quanto basta perché l’equilibrio tra davanti e dietro sia quello della base",
  felt: "della più piccola modifica che si sente",
};

const directionText: Record<Direction, string> = {
  raise: "aumentare",
  lower: "abbassare",
  open: "aprire",
  close: "chiudere",
};

function moveText({ at, end, adjuster, direction, size }: Move, reboundFollows: boolean): string {
  const name = at === "tyre" ? "pressione della gomma" : common.adjusters[adjuster].toLowerCase();
  const where = end === "other" ? " all’altra estremità" : "";
  const follows = reboundFollows ? "; il ritorno segue" : "";
  return `${name}${where}: ${directionText[direction]}, ${sizingText[size]}${follows}`;
}

function heldByText(courseType: CourseType): string {
  return `; solo per la parte di pista che la base propria per pista ${common.courseTypes[courseType]} non contiene`;
}

function conditionText(when: ConditionRule["when"]): string {
  switch (when.type) {
    case "ground":
      return `il terreno è ${when.grounds.map((ground) => common.grounds[ground]).join(" o ")}`;
    case "no own baseline":
      return `una parte della pista è ${common.courseTypes[when.courseType]} e il pilota non ha una base per questo`;
    case "cold":
      return `l’aria è sotto ${numberText(when.belowCelsius)} °C, e più fredda che alla base di ${numberText(when.colderBy)} °C o più`;
    case "riding style":
      return `stile del pilota adesso: ${riderDetails.styles[when.style]}, e non alla base`;
  }
}

function conditionMoveText({ places, adjuster, felt }: ConditionMove): string {
  const size = Math.abs(felt);
  const steps = size === 1 ? "di un passo percepibile" : size === 0.5 ? "di mezzo passo percepibile" : undefined;
  const by = steps ?? `di ${numberText(size)} passi percepibili`;
  // A damper's clicks are counted from closed: more of them is more open.
  const [up, down] = isDamperAdjuster(adjuster) ? ["aprire", "chiudere"] : ["aumentare", "abbassare"];
  const where = places.map((place) => common.places[place].toLowerCase()).join(" e ");
  return `${where}, ${common.adjusters[adjuster].toLowerCase()}: ${felt > 0 ? up : down} ${by}`;
}

function conflictText(ends: readonly End[], all: readonly Symptom[]): string {
  return `${endsText(ends)}: ${all.map((symptom) => symptomNames[symptom]).join(", eppure ")}`;
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
