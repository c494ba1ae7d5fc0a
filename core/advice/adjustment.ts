/** What advice on a run's feedback consists of. */
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { End } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { Run } from "#core/weekend/run.ts";
import type { Stage } from "./feedback-rule.ts";
import type { Hindrance } from "./hindrance.ts";
import type { Prediction } from "./prediction.ts";
import type { MeasuredSag } from "./suspension-model.ts";
import type { Symptom } from "./symptom.ts";

/** One adjuster to set: readings as they are on the bike and at the bench, in the adjuster's unit. */
export interface ProposedSetting {
  readonly path: AdjusterPath;
  readonly from: TypedQuantity;
  readonly to: TypedQuantity;
}

/** One adjustment, with all that a mechanic needs to judge it. */
export interface Adjustment {
  readonly rule: string;
  readonly end: End;
  readonly stage: Stage;
  /** What the rider said or what was measured that called for it. */
  readonly symptoms: readonly Symptom[];
  readonly setting: ProposedSetting;
  /** Settings that follow from it and are made together with it. */
  readonly coupled: readonly ProposedSetting[];
  readonly sizedBy: "measured" | "felt step";
  /** True when the load on the spring was fitted to a measured sag; else only direction and rough size can be trusted. */
  readonly fitted: boolean;
  readonly before?: Prediction;
  readonly after?: Prediction;
  readonly provenance: "common practice" | "physics";
  /** Limits that shaped it, and moves that came first and could not be made. */
  readonly limits: readonly Hindrance[];
  /** Absent for the first. The others wait: one change at a time. */
  readonly waitsFor?: WaitsFor;
}

/** What comes before an adjustment: a look at what no setting cures, or the first change and a run with it. */
export type WaitsFor =
  | { readonly type: "a look at the bike"; readonly referral: Referral }
  | { readonly type: "another change"; readonly path: AdjusterPath };

/** A rule that applies but has no move left, and why. Reason, notice and what to do otherwise are the rule's own words. */
export interface Unanswered {
  readonly rule: string;
  readonly end: End;
  readonly symptoms: readonly Symptom[];
  readonly why: readonly Hindrance[];
}

/**
 * Something that no setting cures: what to look at, before the end that it is about is tuned any further.
 * - "nothing to tune": the rule has no moves
 * - "two changes did not help": it has, and they were made for the same complaint without curing it
 */
export interface Referral {
  readonly rule: string;
  readonly end: End;
  readonly symptoms: readonly Symptom[];
  readonly cause: "nothing to tune" | "two changes did not help";
}

export interface Question {
  readonly rule: string;
  readonly end: End;
}

export interface Advice {
  /** To look at first: worn, damaged or leaking parts, and complaints that two changes did not cure. */
  readonly referrals: readonly Referral[];
  /** In the order in which to make them; only the first is for now. */
  readonly adjustments: readonly Adjustment[];
  readonly unanswered: readonly Unanswered[];
  /** To ask the rider first. */
  readonly questions: readonly Question[];
}

/** A change that was made before for a rule of advice. */
export interface EarlierMove {
  readonly rule: string;
  readonly path: AdjusterPath;
  /** The run that it answered. */
  readonly run: string;
}

export interface AdviceInput {
  readonly mounted: RiderBike;
  readonly run: Run;
  /** Where and how warm the run was. */
  readonly course: Surroundings;
  /** Settled readings on the bike now, at the bench. */
  readonly onTheBike: SetupValues;
  /** The same at the temperature of the ride; and those that were on the bike at the run. */
  readonly riding: SetupValues;
  readonly ridingAtRun: SetupValues;
  /** The rider's baseline for this course, in the adjusters' units: what the balance of the ends is judged by. */
  readonly baseline: SetupValues;
  /** Sag along the part that the rider's baseline has, m, where measured. */
  readonly baselineSag: Readonly<Partial<Record<"fork" | "shock", number>>>;
  /** Sags of this bike from the baseline and earlier runs, latest first; the run's own is not among them. */
  readonly measuredBefore: Readonly<Record<End, readonly MeasuredSag[]>>;
  /** Changes of this weekend that answered earlier runs, oldest first. */
  readonly earlier: readonly EarlierMove[];
}
