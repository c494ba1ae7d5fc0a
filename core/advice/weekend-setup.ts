/**
 * The setup to put on a bike for one session: the rider's baselines, blended for
 * the course and corrected for ground, rider and altitude, with a reason for
 * each step; and what to set at the bench so that it is right at the session.
 */
import { fromSi, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type End, ends, suspensionOf } from "#core/team/place.ts";
import { describeQuantity } from "#core/team/quantity-schema.ts";
import { type MountedAdjuster, mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { Conditions } from "#core/weekend/conditions.ts";
import type { Course } from "#core/weekend/course.ts";
import {
  type Baselines,
  type BlendBasis,
  blendBasis,
  blendedAltitude,
  blendedDraft,
  blendedMass,
} from "./baseline-blend.ts";
import { benchReading } from "./bench-reading.ts";
import { applyCorrections, type Correction, type Draft, roundedValues } from "./correction.ts";
import { groundCorrections } from "./ground-corrections.ts";
import { checkValue, describeLimitProblem, type LimitProblem, settable } from "./limits.ts";
import { altitudeCorrection, massCorrection, reboundCorrection } from "./physics-corrections.ts";
import type { Reason } from "./reason.ts";
import { type MeasuredSag, type SuspensionModel, suspensionModel } from "./suspension-model.ts";

export interface SetupRow {
  readonly path: AdjusterPath;
  readonly found: MountedAdjuster;
  /** The blend of own baselines, rounded to the adjuster's step; absent when no baseline has this adjuster. */
  readonly baseline?: TypedQuantity;
  /** For the session, at the session's temperature. */
  readonly weekend?: TypedQuantity;
  /** Weekend less baseline. */
  readonly difference?: TypedQuantity;
  /** What to set at the bench's temperature. */
  readonly bench?: TypedQuantity;
  readonly reasons: readonly Reason[];
  /** Why there is no value, or which limit stopped it. */
  readonly problems: readonly SetupProblem[];
}

/** "limit at the bench": what would have to be set now breaks it, though what it reads at the session would not. */
export type SetupProblem =
  | { readonly type: "no baseline has it" }
  | { readonly type: "limit" | "limit at the bench"; readonly problem: LimitProblem };

/** One sentence for a person; quantities as `quantityText` writes them. */
export function describeSetupProblem(setupProblem: SetupProblem, quantityText = describeQuantity): string {
  switch (setupProblem.type) {
    case "no baseline has it":
      return "No baseline of this bike has a value for it.";
    case "limit":
      return describeLimitProblem(setupProblem.problem, quantityText);
    case "limit at the bench":
      return `At the bench: ${describeLimitProblem(setupProblem.problem, quantityText)}`;
  }
}

export interface WeekendSetup {
  readonly rows: readonly SetupRow[];
  readonly basis: BlendBasis;
  /** Where the weekend values hold. */
  readonly course: Surroundings;
  /** Where the bench values are read. */
  readonly bench: Surroundings;
  /** True when the sag of every suspended end was measured at the baseline. */
  readonly fitted: boolean;
}

export interface WeekendSetupInput {
  readonly mounted: RiderBike;
  readonly baselines: Baselines;
  readonly course: Course;
  readonly conditions: Conditions;
}

/** The weekend setup of one rider for one session. Pure: the same input gives the same setup. */
export function weekendSetup({ mounted, baselines, course, conditions }: WeekendSetupInput): WeekendSetup {
  const basis = blendBasis(baselines, mounted.bikeId, course.mix);
  const onCourse: Surroundings = { temperature: conditions.air, altitude: course.altitude };
  const bench: Surroundings = { temperature: conditions.bench ?? conditions.air, altitude: course.altitude };
  const draft = blendedDraft(basis, mounted.parts);
  const blended = roundedValues(mounted, draft);
  for (const group of groundCorrections(mounted, basis, course.mix, conditions))
    applyCorrections(mounted, draft, group);
  const models = ends.flatMap((end) => suspensionModel(mounted, end, onCourse, baselineSags(basis, end)) ?? []);
  applyPhysics(mounted, draft, basis, models, onCourse);
  followWithRebound(mounted, draft, models, blended);
  const values = roundedValues(mounted, draft);
  return {
    rows: mountedAdjusters(mounted.parts).map((found) =>
      rowOf(mounted, found, draft, blended, values, onCourse, bench),
    ),
    basis,
    course: onCourse,
    bench,
    fitted: models.length > 0 && models.every((model) => model.fitted),
  };
}

/** The sags measured at the baselines of the blend, those with the largest share first, each with its own values. */
export function baselineSags({ shares }: BlendBasis, end: End): readonly MeasuredSag[] {
  const place = suspensionOf(end);
  return [...shares]
    .sort((a, b) => b.share - a.share)
    .flatMap(({ baseline: { sag, values, heldAt, mass } }) => {
      const measured = sag?.[place];
      return measured ? { sag: measured, values, heldAt, mass } : [];
    });
}

function applyPhysics(
  mounted: RiderBike,
  draft: Draft,
  basis: BlendBasis,
  models: readonly SuspensionModel[],
  onCourse: Surroundings,
): void {
  const massThen = blendedMass(basis);
  const altitudeThen = blendedAltitude(basis);
  if (!massThen || !altitudeThen) return;
  for (const model of models) {
    const exact = () => exactValues(mounted, draft);
    const forMass = massCorrection(mounted, model, exact(), massThen);
    applyCorrections(mounted, draft, listOf(forMass));
    const there = { ...onCourse, altitude: altitudeThen };
    const modelThen = suspensionModel(mounted, model.end, there, baselineSags(basis, model.end));
    const forAltitude =
      modelThen &&
      altitudeCorrection(mounted, modelThen, model, exact(), { atBaseline: altitudeThen, today: onCourse.altitude });
    applyCorrections(mounted, draft, listOf(forAltitude));
  }
}

function followWithRebound(
  mounted: RiderBike,
  draft: Draft,
  models: readonly SuspensionModel[],
  blended: SetupValues,
): void {
  for (const model of models) {
    const follow = reboundCorrection(mounted, model, blended, roundedValues(mounted, draft));
    applyCorrections(mounted, draft, listOf(follow));
  }
}

/** Values as they stand, not rounded, for the physics; counts are rounded, since half a spacer is none. */
function exactValues(mounted: RiderBike, draft: Draft): SetupValues {
  const values: Record<string, TypedQuantity> = {};
  for (const { path, adjuster } of mountedAdjusters(mounted.parts)) {
    const value = draft.values.get(path);
    if (value === undefined) continue;
    values[path] = { value: adjuster.kind === "volume-spacers" ? Math.round(value) : value, unit: adjuster.unit };
  }
  return values;
}

function rowOf(
  mounted: RiderBike,
  found: MountedAdjuster,
  draft: Draft,
  blended: SetupValues,
  values: SetupValues,
  onCourse: Surroundings,
  bench: Surroundings,
): SetupRow {
  const { path } = found;
  const reasons = draft.reasons.get(path) ?? [];
  const baseline = blended[path];
  const weekend = values[path];
  if (!baseline || !weekend) {
    return { path, found, reasons, problems: [{ type: "no baseline has it" }] };
  }
  const problem = checkValue(mounted, path, weekend, values);
  if (problem) return { path, found, baseline, reasons, problems: [{ type: "limit", problem }] };
  const atBench = settable(found, benchReading(weekend, onCourse, bench).value);
  const benchProblem = checkValue(mounted, path, atBench, {});
  return {
    path,
    found,
    baseline,
    weekend,
    difference: settable(found, weekend.value - baseline.value),
    ...(benchProblem ? {} : { bench: atBench }),
    reasons: [...reasons, ...temperatureReason(found, weekend, atBench, onCourse, bench)],
    problems: benchProblem ? [{ type: "limit at the bench", problem: benchProblem }] : [],
  };
}

function temperatureReason(
  found: MountedAdjuster,
  weekend: TypedQuantity,
  atBench: TypedQuantity,
  onCourse: Surroundings,
  bench: Surroundings,
): readonly Reason[] {
  const change = settable(found, atBench.value - weekend.value);
  if (change.value === 0) return [];
  const celsius = ({ temperature }: Surroundings): TypedQuantity => ({
    value: Number(fromSi(toSi(temperature), "°C").value.toFixed(1)),
    unit: "°C",
  });
  return [
    {
      rule: "temperature",
      because: { type: "temperature", bench: celsius(bench), course: celsius(onCourse), value: weekend },
      provenance: "physics",
      change,
    },
  ];
}

function listOf(correction: Correction | undefined): readonly Correction[] {
  return correction ? [correction] : [];
}
