/** The rules in French, made from the rules themselves as the English ones are. */
import type { ConditionMove, ConditionRule } from "#core/advice/condition-rules.ts";
import type { ConflictRule, Direction, FeedbackRule, Move, Sizing } from "#core/advice/feedback-rule.ts";
import type { ChapterName } from "#core/advice/rule-book.ts";
import type { RuleEntry, RuleText } from "#core/advice/rule-entry.ts";
import { isDamperAdjuster } from "#core/team/adjuster.ts";
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

/** A rule in words. */
export function ruleText(entry: RuleEntry): RuleText {
  switch (entry.type) {
    case "physics": {
      const { id, provenance } = entry.rule;
      const { when, move, reason } = physicsWords[id] ?? entry.rule;
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
  const none = when.none?.length ? `, et pas : ${when.none.map((symptom) => symptomNames[symptom]).join(", ")}` : "";
  const { reason, notice = rule.notice, otherwise = rule.otherwise } = ruleWords(id) ?? rule;
  return {
    id,
    when: `${endsText(ends)} : ${when.all.map((symptom) => symptomNames[symptom]).join(", ")}${none}`,
    moves: moves.map((move) => moveText(move, coupled !== undefined)),
    reason,
    notice,
    otherwise,
    provenance,
  };
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

function moveText({ at, end, adjuster, direction, size }: Move, coupled: boolean): string {
  const name = at === "tyre" ? "pression du pneu" : common.adjusters[adjuster].toLowerCase();
  const where = end === "other" ? " à l’autre bout" : "";
  const follows = coupled && at === "suspension" && adjuster !== "rebound" ? " ; la détente suit" : "";
  return `${name}${where} : ${directionText[direction]}, ${sizingText[size]}${follows}`;
}

function conditionText({ id, when, heldBy, moves, reason }: ConditionRule): RuleText {
  const held =
    heldBy === undefined
      ? ""
      : ` ; seulement pour la part de la piste que la base propre piste ${common.courseTypes[heldBy]} ne contient pas`;
  return {
    id,
    when: `${whenText(when)}${held}`,
    moves: moves.map(conditionMoveText),
    reason: ruleWords(id)?.reason ?? reason,
    provenance: "common practice",
  };
}

function whenText(when: ConditionRule["when"]): string {
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

function questionText({ id, ends, all, question }: ConflictRule): RuleText {
  return {
    id,
    when: `${endsText(ends)} : ${all.map((symptom) => symptomNames[symptom]).join(", et pourtant ")}`,
    moves: [],
    reason: ruleWords(id)?.reason ?? question,
    provenance: "common practice",
  };
}

function endsText(ends: readonly End[]): string {
  return ends.map((end) => trackside.ends[end].toLowerCase()).join(" ou ");
}
