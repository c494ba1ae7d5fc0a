/** The rules in German, made from the rules themselves as the English ones are. */
import type { ConditionMove, ConditionRule } from "#core/advice/condition-rules.ts";
import type { ConflictRule, Direction, FeedbackRule, Move, Sizing } from "#core/advice/feedback-rule.ts";
import type { ChapterName } from "#core/advice/rule-book.ts";
import type { RuleEntry, RuleText } from "#core/advice/rule-entry.ts";
import { isDamperAdjuster } from "#core/team/adjuster.ts";
import type { End } from "#core/team/place.ts";
import type { RidingStyle } from "#core/team/riding-style.ts";
import { numberText } from "../quantity-text.ts";
import { common } from "./common.ts";
import { ruleWords } from "./rule-words.ts";
import { conditionWords } from "./rule-words-conditions.ts";
import { physicsWords } from "./rule-words-physics.ts";
import { questionWords } from "./rule-words-questions.ts";
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

/** A rule in words. */
export function ruleText(entry: RuleEntry): RuleText {
  switch (entry.type) {
    case "physics": {
      const { id, provenance } = entry.rule;
      const { when, move, reason } = physicsWords[id] ?? { ...entry.rule };
      return { id, when, moves: [move], reason, provenance };
    }
    case "condition":
      return conditionText(entry.rule);
    case "feedback":
      return feedbackText(entry.rule);
    case "question":
      return questionText(entry.rule);
  }
}

function feedbackText(rule: FeedbackRule): RuleText {
  const { id, ends, when, moves, coupled, provenance } = rule;
  const none = when.none?.length ? `, und nicht: ${when.none.map((symptom) => symptomNames[symptom]).join(", ")}` : "";
  const { reason, notice = rule.notice, otherwise = rule.otherwise } = ruleWords(id) ?? rule;
  return {
    id,
    when: `${endsText(ends)}: ${when.all.map((symptom) => symptomNames[symptom]).join(", ")}${none}`,
    moves: moves.map((move) => moveText(move, coupled !== undefined)),
    reason,
    notice,
    otherwise,
    provenance,
  };
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

function moveText({ at, end, adjuster, direction, size }: Move, coupled: boolean): string {
  const name = at === "tyre" ? "Reifendruck" : common.adjusters[adjuster];
  const where = end === "other" ? " am anderen Ende" : "";
  const follows = coupled && at === "suspension" && adjuster !== "rebound" ? "; die Zugstufe folgt" : "";
  return `${name}${where} ${directionText[direction]}, ${sizingText[size]}${follows}`;
}

function conditionText({ id, when, heldBy, moves, reason }: ConditionRule): RuleText {
  const held =
    heldBy === undefined
      ? ""
      : `; nur für den Teil der Strecke, den das eigene Basis-Setup „${common.courseTypes[heldBy]}“ nicht enthält`;
  return {
    id,
    when: `${whenText(when)}${held}`,
    moves: moves.map(conditionMoveText),
    reason: conditionWords[id] ?? reason,
    provenance: "common practice",
  };
}

const styleText: Record<RidingStyle, string> = { calm: "ruhig", usual: "wie immer", hard: "hart" };

function whenText(when: ConditionRule["when"]): string {
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

function questionText({ id, ends, all, question }: ConflictRule): RuleText {
  return {
    id,
    when: `${endsText(ends)}: ${all.map((symptom) => symptomNames[symptom]).join(", und doch ")}`,
    moves: [],
    reason: questionWords[id] ?? question,
    provenance: "common practice",
  };
}

function endsText(ends: readonly End[]): string {
  return ends.map((end) => trackside.ends[end].toLowerCase()).join(" oder ");
}
