/**
 * What physics says that an end of the bike does with given values: the numbers
 * that stand before and after a proposed change.
 */
import { naturalFrequency } from "#core/physics/frequency.ts";
import { DEFAULT_RIDING_EXPONENT, ISOTHERMAL } from "#core/physics/gas.ts";
import { staticSag } from "#core/physics/sag.ts";
import { sameHitStroke } from "#core/physics/same-hit.ts";
import type { Force, Frequency, Length, SpringRate } from "#core/quantity/quantity.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { strokeAt } from "./sizing.ts";
import type { SuspensionModel } from "./suspension-model.ts";

/** All along the part. What has no value (the spring tops or bottoms out under the load, no hit was measured) is absent. */
export interface Prediction {
  /** Stroke at rest under the rider, m. */
  readonly sag?: Length;
  /** Force at half, nine tenths and full stroke, while riding, N. */
  readonly forceAtHalf: Force;
  readonly forceAtNineTenths: Force;
  readonly forceAtFull: Force;
  /** Rate at sag, while riding, N/m. */
  readonly rateAtSag?: SpringRate;
  /** Natural frequency of this end at sag, Hz. */
  readonly frequency?: Frequency;
  /** Stroke that the hit uses which used `strokeUsed` before, m. */
  readonly strokeUsed?: Length;
  /** True when that hit uses all of the stroke and has energy left. */
  readonly bottomsOut?: boolean;
}

/** A hit that was measured: the stroke that it used with some values. */
export interface MeasuredHit {
  readonly strokeUsed: Length;
  readonly values: SetupValues;
}

/** The prediction for `values`; undefined while they do not make a spring. */
export function predict(model: SuspensionModel, values: SetupValues, hit?: MeasuredHit): Prediction | undefined {
  const slow = model.springWith(values, ISOTHERMAL);
  const riding = model.springWith(values, DEFAULT_RIDING_EXPONENT);
  if (!slow || !riding) return undefined;
  const sag = staticSag(slow, model.load);
  const rate = sag.possible ? riding.rate(sag.value) : undefined;
  return {
    forceAtHalf: riding.force(strokeAt(model, 0.5)),
    forceAtNineTenths: riding.force(strokeAt(model, 0.9)),
    forceAtFull: riding.force(model.stroke),
    ...(sag.possible && { sag: sag.value }),
    ...(rate !== undefined && { rateAtSag: rate, frequency: naturalFrequency(rate, model.mass) }),
    ...strokeUsedBy(model, values, hit),
  };
}

function strokeUsedBy(
  model: SuspensionModel,
  values: SetupValues,
  hit: MeasuredHit | undefined,
): Pick<Prediction, "strokeUsed" | "bottomsOut"> {
  const before = hit && model.springWith(hit.values, DEFAULT_RIDING_EXPONENT);
  const after = model.springWith(values, DEFAULT_RIDING_EXPONENT);
  if (!hit || !before || !after) return {};
  const used = sameHitStroke({ before, after, strokeUsed: hit.strokeUsed });
  if (used.possible) return { strokeUsed: used.value, bottomsOut: false };
  return used.reason === "bottoms out" ? { strokeUsed: model.stroke, bottomsOut: true } : {};
}
