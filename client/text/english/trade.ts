/** English words of the trade: what the core tells as facts. Their wording stands in the core, beside what they tell of. */
import { adjusterName } from "#core/advice/adjuster-names.ts";
import { describeReferralAction, describeReferralReason, describeWaitsFor } from "#core/advice/advice-in-words.ts";
import { describeHindrance, type Hindrance } from "#core/advice/hindrance.ts";
import { describeLimitProblem, type LimitProblem } from "#core/advice/limits.ts";
import { type Because, type Provenance, provenances } from "#core/advice/reason.ts";
import { describeReason } from "#core/advice/reason-in-words.ts";
import { chapterText, ruleText } from "#core/advice/rule-text.ts";
import { ruleWords } from "#core/advice/rule-words.ts";
import { type Symptom, symptoms } from "#core/advice/symptom.ts";
import { describeSetupProblem, type SetupProblem } from "#core/advice/weekend-setup.ts";
import { describeProposalObstacle } from "#core/planning/baseline-review.ts";
import { describeCause } from "#core/planning/changelog-text.ts";
import { describeEntryProblem, type EntryProblem } from "#core/planning/entries.ts";
import { describeSheetProblem } from "#core/planning/setup-sheet.ts";
import { feelings } from "#core/weekend/run.ts";
import { quantityText } from "../quantity-text.ts";

/** Every answer that one of the questions about an end has. */
type Feeling = (typeof feelings)[keyof typeof feelings][number];
const said: readonly Feeling[] = Object.values(feelings).flat();

export const trade = {
  /** "Fork main pressure". */
  adjuster: adjusterName,
  /** As they are listed after the end that they are of: "Front: sag above target, slides". */
  symptoms: Object.fromEntries(symptoms.map((symptom) => [symptom, symptom])) as Record<Symptom, string>,
  /** What a rider can say of one question about an end. */
  feelings: Object.fromEntries(said.map((feeling) => [feeling, feeling])) as Record<Feeling, string>,
  /** What an adjustment goes by, after "Source: ". */
  provenances: Object.fromEntries(provenances.map((each) => [each, each])) as Record<Provenance, string>,
  /** Reason, what to notice and what to do otherwise; undefined for a rule that this version does not have. */
  rule: ruleWords,
  reason: (because: Because) => describeReason(because, quantityText),
  limit: (problem: LimitProblem) => describeLimitProblem(problem, quantityText),
  setupProblem: (problem: SetupProblem) => describeSetupProblem(problem, quantityText),
  hindrance: (hindrance: Hindrance) => describeHindrance(hindrance, quantityText),
  referralReason: describeReferralReason,
  referralAction: describeReferralAction,
  waitsFor: describeWaitsFor,
  /** Why a change was made. */
  cause: describeCause,
  sheetProblem: describeSheetProblem,
  entryProblem: (problem: EntryProblem) => describeEntryProblem(problem, quantityText),
  proposalObstacle: describeProposalObstacle,
  ruleChapters: chapterText,
  ruleText,
};
