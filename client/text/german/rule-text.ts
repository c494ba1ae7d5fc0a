/** The rules in German, made from the rules themselves as the English ones are. */
import type { ConditionMove, ConditionRule } from "#core/advice/condition-rules.ts";
import type { Direction, Move, Sizing } from "#core/advice/feedback-rule.ts";
import type { ChapterName } from "#core/advice/rule-book.ts";
import { ruleInWords } from "#core/advice/rule-in-words.ts";
import type { Symptom } from "#core/advice/symptom.ts";
import { isDamperAdjuster } from "#core/team/adjuster.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { End } from "#core/team/place.ts";
import type { RidingStyle } from "#core/team/riding-style.ts";
import { numberText } from "../quantity-text.ts";
import { common } from "./common.ts";
import { ruleWords } from "./rule-words.ts";
import { physicsWords } from "./rule-words-physics.ts";
import { trackside } from "./trackside.ts";
import { symptomNames } from "./trade-names.ts";

export const chapterText: Readonly<Record<ChapterName, { readonly title: string; readonly about: string }>> = {
  physics: {
    title: "Vor dem Wochenende: die Physik",
    about: "Wodurch die eigenen Basis-Setups des Fahrers korrigiert werden, für jedes Bike berechnet.",
  },
  conditions: {
    title: "Vor dem Wochenende: Boden und Strecke",
    about:
      "Was die eigenen Basis-Setups des Fahrers noch nicht enthalten. Ein spürbarer Schritt ist die kleinste Änderung, die man an diesem Teil spürt.",
  },
  feedback: {
    title: "Nach einem Lauf: Feedback",
    about:
      "Eine Änderung nach der anderen, in dieser Reihenfolge: Schaden, Sag, Federweg, Gefühl der Feder, Dämpfung, Grip, Balance.",
  },
  questions: {
    title: "Nach einem Lauf: Fragen",
    about: "Symptome, die sich ausschließen. Danach wird gefragt, bevor etwas geändert wird.",
  },
};

function feltText(ends: readonly End[], all: readonly Symptom[], none: readonly Symptom[]): string {
  const not = none.length > 0 ? `, und nicht: ${none.map((symptom) => symptomNames[symptom]).join(", ")}` : "";
  return `${endsText(ends)}: ${all.map((symptom) => symptomNames[symptom]).join(", ")}${not}`;
}

const sizingText: Record<Sizing, string> = {
  "sag to target": "so viel, dass der Sag ins Ziel kommt",
  "hit within travel": "so viel, dass der härteste Schlag im Federweg bleibt",
  "hit uses travel": "so viel, dass der gemessene Schlag den Federweg nutzt",
  "balance as before": "so viel, dass die Balance der beiden Enden wie im Basis-Setup ist",
  felt: "um die kleinste spürbare Änderung",
};

const directionText: Record<Direction, string> = {
  raise: "erhöhen",
  lower: "senken",
  open: "öffnen",
  close: "schließen",
};

function moveText({ at, end, adjuster, direction, size }: Move, reboundFollows: boolean): string {
  const name = at === "tyre" ? "Reifendruck" : common.adjusters[adjuster];
  const where = end === "other" ? " am anderen Ende" : "";
  const follows = reboundFollows ? "; die Zugstufe folgt" : "";
  return `${name}${where} ${directionText[direction]}, ${sizingText[size]}${follows}`;
}

function heldByText(courseType: CourseType): string {
  return `; nur für den Teil der Strecke, den das eigene Basis-Setup „${common.courseTypes[courseType]}“ nicht enthält`;
}

const styleText: Record<RidingStyle, string> = { calm: "ruhig", usual: "wie immer", hard: "hart" };

function conditionText(when: ConditionRule["when"]): string {
  switch (when.type) {
    case "ground":
      return `der Boden: ${when.grounds.map((ground) => common.grounds[ground]).join(" oder ")}`;
    case "no own baseline":
      return `ein Teil der Strecke ist ${common.courseTypes[when.courseType]}, und der Fahrer hat dafür kein Basis-Setup`;
    case "cold":
      return `die Luft ist kälter als ${numberText(when.belowCelsius)} °C und um ${numberText(when.colderBy)} °C oder mehr kälter als beim Basis-Setup`;
    case "riding style":
      return `der Fahrer fährt jetzt ${styleText[when.style]}, und beim Basis-Setup nicht`;
  }
}

function conditionMoveText({ places, adjuster, felt }: ConditionMove): string {
  const size = Math.abs(felt);
  const steps = size === 1 ? "einen spürbaren Schritt" : size === 0.5 ? "einen halben spürbaren Schritt" : undefined;
  const by = steps ?? `${numberText(size)} spürbare Schritte`;
  // A damper's clicks are counted from closed: more of them is more open.
  const [up, down] = isDamperAdjuster(adjuster) ? ["öffnen", "schließen"] : ["erhöhen", "senken"];
  const name = `${places.map((place) => common.places[place]).join(" und ")}: ${common.adjusters[adjuster]}`;
  return `${name} um ${by} ${felt > 0 ? up : down}`;
}

function conflictText(ends: readonly End[], all: readonly Symptom[]): string {
  return `${endsText(ends)}: ${all.map((symptom) => symptomNames[symptom]).join(", und doch ")}`;
}

function endsText(ends: readonly End[]): string {
  return ends.map((end) => trackside.ends[end].toLowerCase()).join(" oder ");
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
