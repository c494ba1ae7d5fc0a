import type { Adjustment, ProposedSetting } from "#core/advice/adjustment.ts";
import type { ForceCurves } from "#core/advice/force-curves.ts";
import { describeHindrance } from "#core/advice/hindrance.ts";
import type { Prediction } from "#core/advice/prediction.ts";
import { ruleWords } from "#core/advice/rule-words.ts";
import type { TakenAdjustment } from "#scenarios/player/acts/act.ts";
import type { Naming } from "./naming.ts";

/** An adjustment that was taken, with what the physics foretold. */
export interface ReportedAdjustment {
  readonly run: string;
  readonly rule: string;
  readonly symptoms: Adjustment["symptoms"];
  readonly setting: ProposedSetting;
  readonly coupled: readonly ProposedSetting[];
  readonly sizedBy: Adjustment["sizedBy"];
  readonly fitted: boolean;
  readonly before: ReportedPrediction | undefined;
  readonly after: ReportedPrediction | undefined;
  /** Force over stroke before and after, while riding; absent for dampers and tyres. */
  readonly curves: ReportedCurves | undefined;
  readonly reason: string;
  readonly notice: string;
  readonly limits: readonly string[];
}

/** Points of [stroke in mm, force in N]. */
export interface ReportedCurves {
  readonly before: readonly (readonly [number, number])[];
  readonly after: readonly (readonly [number, number])[];
}

/** A prediction along the part, rounded to what its inputs carry. */
export interface ReportedPrediction {
  readonly sagMm: number | undefined;
  readonly forceAtHalfN: number;
  readonly forceAtNineTenthsN: number;
  readonly forceAtFullN: number;
  readonly rateAtSagNPerMm: number | undefined;
  readonly frequencyHz: number | undefined;
  readonly strokeUsedMm: number | undefined;
  readonly bottomsOut: boolean | undefined;
}

/** The adjustments that were taken for a rider, oldest first. */
export function reportAdjustments(
  taken: readonly TakenAdjustment[],
  naming: Naming,
  riderId: string,
): readonly ReportedAdjustment[] {
  return taken
    .filter((entry) => entry.riderId === riderId)
    .map(({ runId, adjustment, curves }) => ({
      run: naming.run(runId),
      rule: adjustment.rule,
      symptoms: adjustment.symptoms,
      setting: adjustment.setting,
      coupled: adjustment.coupled,
      sizedBy: adjustment.sizedBy,
      fitted: adjustment.fitted,
      before: adjustment.before && rounded(adjustment.before),
      after: adjustment.after && rounded(adjustment.after),
      curves: curves && { before: pointsOf(curves.before), after: pointsOf(curves.after) },
      reason: ruleWords(adjustment.rule)?.reason ?? "",
      notice: ruleWords(adjustment.rule)?.notice ?? "",
      limits: adjustment.limits.map((hindrance) => describeHindrance(hindrance)),
    }));
}

function pointsOf(curve: ForceCurves["before"]): readonly (readonly [number, number])[] {
  return curve.map(({ stroke, force }) => [Number((stroke * 1000).toFixed(1)), Math.round(force)]);
}

function rounded(prediction: Prediction): ReportedPrediction {
  return {
    sagMm: atDecimals(prediction.sag, 1, 1000),
    forceAtHalfN: Math.round(prediction.forceAtHalf),
    forceAtNineTenthsN: Math.round(prediction.forceAtNineTenths),
    forceAtFullN: Math.round(prediction.forceAtFull),
    rateAtSagNPerMm: atDecimals(prediction.rateAtSag, 2, 0.001),
    frequencyHz: atDecimals(prediction.frequency, 2, 1),
    strokeUsedMm: atDecimals(prediction.strokeUsed, 1, 1000),
    bottomsOut: prediction.bottomsOut,
  };
}

function atDecimals(value: number | undefined, decimals: number, factor: number): number | undefined {
  return value === undefined ? undefined : Number((value * factor).toFixed(decimals));
}
