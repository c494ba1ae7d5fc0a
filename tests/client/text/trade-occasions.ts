/** Facts of the trade, each kind that the core tells at least once, for the texts that put them into words. */
import type { Referral, WaitsFor } from "#core/advice/adjustment.ts";
import type { Hindrance } from "#core/advice/hindrance.ts";
import type { LimitProblem } from "#core/advice/limits.ts";
import type { Because } from "#core/advice/reason.ts";
import { chapterEntries, chapterNames } from "#core/advice/rule-book.ts";
import type { SetupProblem } from "#core/advice/weekend-setup.ts";
import type { ProposalObstacle } from "#core/planning/baseline-review.ts";
import type { EntryProblem } from "#core/planning/entries.ts";
import type { SheetProblem } from "#core/planning/setup-sheet.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { type AdjusterPath, adjusterKinds, adjusterPath } from "#core/team/adjuster.ts";
import { places } from "#core/team/place.ts";
import type { Change } from "#core/weekend/changelog.ts";

const rules = chapterNames.flatMap((chapter) => chapterEntries(chapter));
const ruleIds = rules.map(({ rule }) => rule.id);
const psi = (value: number): TypedQuantity => ({ value, unit: "psi" });
const metres = (value: number): TypedQuantity => ({ value, unit: "m" });
const path: AdjusterPath = "fork.rebound";
const limits: readonly LimitProblem[] = [
  { type: "no such adjuster", path, bike: "‹0›" },
  { type: "wrong unit", path, value: psi(7100), allowed: "clicks" },
  { type: "out of range", path, value: psi(7100), minimum: psi(7101), maximum: psi(7102) },
  { type: "not a step", path, value: psi(7100), step: psi(7101) },
  { type: "above marked maximum", path: "front-tyre.tyre-pressure", value: psi(7100), maximum: psi(7101), of: "tyre" },
  { type: "above marked maximum", path: "rear-tyre.tyre-pressure", value: psi(7100), maximum: psi(7101), of: "rim" },
  { type: "chambers too close", path, main: psi(7100), secondary: psi(7101) },
];
const limit: LimitProblem = { type: "not a step", path, value: psi(7100), step: psi(7101) };
const reasons: readonly Because[] = [
  { type: "own baseline", courseType: "steep", value: psi(7100) },
  {
    type: "blend",
    parts: [
      { courseType: "steep", percent: 7100, value: psi(7101) },
      { courseType: "wet", percent: 7102, value: psi(7103) },
    ],
  },
  ...ruleIds.map((rule): Because => ({ type: "condition rule", rule, percent: 7100 })),
  { type: "condition rule", rule: "‹0›" },
  { type: "rider mass", now: psi(7100), atBaseline: psi(7101) },
  { type: "altitude", now: metres(7100), atBaseline: metres(7101) },
  { type: "altitude", now: metres(7101), atBaseline: metres(7100) },
  { type: "rebound follows", spring: "softer" },
  { type: "rebound follows", spring: "stiffer" },
  { type: "temperature", bench: psi(7100), course: psi(7101), value: psi(7102) },
];
const hindrances: readonly Hindrance[] = [
  { type: "changed for this already", path },
  { type: "reading not known", path },
  { type: "enough by now", path },
  { type: "sag out of reach", path },
  { type: "limit", problem: limit },
  { type: "held to a large step", asked: psi(7100), most: psi(7101) },
  { type: "held to a large step", most: psi(7101) },
  { type: "no adjuster for it" },
];
const referrals = ruleIds.flatMap((rule): readonly Referral[] => [
  { rule, end: "front", symptoms: [], cause: "nothing to tune" },
  { rule, end: "front", symptoms: [], cause: "two changes did not help" },
]);
const waits: readonly WaitsFor[] = [
  { type: "another change", path },
  {
    type: "a look at the bike",
    referral: { rule: "knocks", end: "front", symptoms: [], cause: "two changes did not help" },
  },
];
const causes: readonly Pick<Change, "cause" | "voided">[] = [
  { voided: "‹0›", cause: undefined },
  ...(
    [
      undefined,
      { type: "advice", rule: "knocks", run: "" },
      { type: "advice", rule: "‹0›", run: "" },
      { type: "own baseline", courseTypes: ["steep", "wet"] },
      { type: "conditions", session: "" },
      { type: "own change" },
      { type: "by hand" },
      { type: "by hand", note: "‹0›" },
      { type: "revert", record: "" },
      { type: "resolution", records: [] },
      { type: "carry-over", record: "" },
      { type: "confirmation", record: "" },
      { type: "approval", weekend: "" },
      { type: "setup" },
    ] as const
  ).map((cause) => ({ cause, voided: undefined })),
];
const setupProblems: readonly SetupProblem[] = [
  { type: "no baseline has it" },
  { type: "limit", problem: limit },
  { type: "limit at the bench", problem: limit },
];
const sheetProblems: readonly SheetProblem[] = [
  { type: "unknown weekend", weekendId: "‹0›" },
  { type: "unknown session", sessionId: "‹0›", allowed: ["‹1›", "‹2›"] },
  { type: "unknown session", sessionId: "‹0›", allowed: [] },
  { type: "unknown rider", riderId: "‹0›" },
  { type: "no course", weekend: "‹0›" },
  { type: "no conditions", session: "‹0›" },
];
const entryProblems: readonly EntryProblem[] = [
  { type: "limits", problems: limits },
  { type: "no value", path },
  { type: "nothing reported" },
  { type: "no such service", place: "fork", bike: "‹0›", what: "bath oil" },
];
const obstacles: readonly ProposalObstacle[] = [
  { type: "disputed", path },
  { type: "reported", path },
  { type: "nothing known" },
];

const each = (facts: readonly unknown[]): readonly (readonly unknown[])[] => facts.map((fact) => [fact]);

/** By the path of the text. */
export const tradeOccasions: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  "trade.adjuster": each(places.flatMap((place) => adjusterKinds.map((kind) => adjusterPath(place, kind)))),
  "trade.rule": each(ruleIds),
  "trade.ruleText": each(rules),
  "trade.reason": each(reasons),
  "trade.limit": each(limits),
  "trade.setupProblem": each(setupProblems),
  "trade.hindrance": each(hindrances),
  "trade.referralReason": each(referrals),
  "trade.referralAction": each(referrals),
  "trade.waitsFor": each(waits),
  "trade.cause": each(causes),
  "trade.sheetProblem": each(sheetProblems),
  "trade.entryProblem": each(entryProblems),
  "trade.proposalObstacle": each(obstacles),
};
