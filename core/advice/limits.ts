/**
 * The limits that every value on a bike has to keep. A limit refuses, with the
 * reason; nothing is ever clamped to it.
 */

import { decimalsOfStep, isOnStep, roundToStep } from "#core/quantity/rounding.ts";
import { convert, dimensionOf, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { type AdjusterPath, adjusterPath, dimensionOfKind } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { describeQuantity } from "#core/team/quantity-schema.ts";
import { type MountedAdjuster, mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import { adjusterName } from "./adjuster-names.ts";

/**
 * How far the secondary chamber must stay above the main one: below that its floating piston may leave its seat and the
 * reading of either chamber means nothing. 5 psi; common practice, no source.
 */
export const CHAMBER_MARGIN: TypedQuantity = { value: 5, unit: "psi" };

export type LimitProblem =
  | { readonly type: "no such adjuster"; readonly path: AdjusterPath; readonly bike: string }
  | {
      readonly type: "wrong unit";
      readonly path: AdjusterPath;
      readonly value: TypedQuantity;
      readonly allowed: string;
    }
  | {
      readonly type: "out of range";
      readonly path: AdjusterPath;
      readonly value: TypedQuantity;
      readonly minimum: TypedQuantity;
      readonly maximum: TypedQuantity;
    }
  | {
      readonly type: "not a step";
      readonly path: AdjusterPath;
      readonly value: TypedQuantity;
      readonly step: TypedQuantity;
    }
  | {
      readonly type: "above marked maximum";
      readonly path: AdjusterPath;
      readonly value: TypedQuantity;
      readonly maximum: TypedQuantity;
      readonly of: "tyre" | "rim";
    }
  | {
      readonly type: "chambers too close";
      readonly path: AdjusterPath;
      readonly main: TypedQuantity;
      readonly secondary: TypedQuantity;
    };

/** One sentence: what, where, and what is allowed; quantities as `quantityText` writes them. */
export function describeLimitProblem(problem: LimitProblem, quantityText = describeQuantity): string {
  const name = adjusterName(problem.path);
  switch (problem.type) {
    case "no such adjuster":
      return `${name}: the bike ${problem.bike} has no such adjuster.`;
    case "wrong unit":
      return `${name}: ${quantityText(problem.value)} is not measured in ${problem.allowed}.`;
    case "out of range":
      return `${name}: ${quantityText(problem.value)} is outside the part's range of ${quantityText(problem.minimum)} to ${quantityText(problem.maximum)}.`;
    case "not a step":
      return `${name}: ${quantityText(problem.value)} cannot be set; the adjuster moves in steps of ${quantityText(problem.step)}.`;
    case "above marked maximum":
      return `${name}: ${quantityText(problem.value)} is above the ${quantityText(problem.maximum)} that is marked on the ${problem.of}.`;
    case "chambers too close":
      return `${name}: the secondary chamber (${quantityText(problem.secondary)}) must stay at least ${quantityText(CHAMBER_MARGIN)} above the main chamber (${quantityText(problem.main)}).`;
  }
}

/**
 * The first limit that `value` at `path` would break on this bike, with the other adjusters at `others`; undefined when
 * it keeps them all. A value typed in another unit than the adjuster's is judged by what it is, not by its step.
 */
export function checkValue(
  mounted: Pick<RiderBike, "parts" | "bike">,
  path: AdjusterPath,
  value: TypedQuantity,
  others: SetupValues,
): LimitProblem | undefined {
  const found = mountedAdjuster(mounted.parts, path);
  if (!found) return { type: "no such adjuster", path, bike: mounted.bike.name };
  return checkAdjuster(found, value) ?? checkChambers(found, value, others);
}

/** The limits of every value of a setup; empty when all are kept. */
export function checkSetup(mounted: Pick<RiderBike, "parts" | "bike">, values: SetupValues): readonly LimitProblem[] {
  return Object.entries(values).flatMap(
    ([path, value]) => (value && checkValue(mounted, path as AdjusterPath, value, values)) ?? [],
  );
}

/** `value` (a plain number in the adjuster's unit) as what can be set on it: rounded to its step. */
export function settable(found: MountedAdjuster, value: number): TypedQuantity {
  const { step, unit } = found.adjuster;
  return { value: roundToStep(value, step), unit };
}

/** Decimals in which values of this adjuster are shown. */
export function decimalsOf(found: MountedAdjuster): number {
  return decimalsOfStep(found.adjuster.step);
}

function checkAdjuster(found: MountedAdjuster, value: TypedQuantity): LimitProblem | undefined {
  const { path, adjuster, part } = found;
  const dimension = dimensionOfKind(adjuster.kind);
  if (dimensionOf(value.unit) !== dimension) return { type: "wrong unit", path, value, allowed: dimension };
  const inUnit = convert(value, adjuster.unit).value;
  if (!(inUnit >= adjuster.minimum - 1e-9 && inUnit <= adjuster.maximum + 1e-9)) {
    const { minimum, maximum, unit } = adjuster;
    return {
      type: "out of range",
      path,
      value,
      minimum: { value: minimum, unit },
      maximum: { value: maximum, unit },
    };
  }
  if (value.unit === adjuster.unit && !isOnStep(value.value, adjuster.step)) {
    return { type: "not a step", path, value, step: { value: adjuster.step, unit: adjuster.unit } };
  }
  if (part.archetype !== "tyre") return undefined;
  const { tyreMarkedMaximum, rimMarkedMaximum } = part.geometry;
  if (toSi(value) > toSi(tyreMarkedMaximum)) {
    return { type: "above marked maximum", path, value, maximum: tyreMarkedMaximum, of: "tyre" };
  }
  if (toSi(value) > toSi(rimMarkedMaximum)) {
    return { type: "above marked maximum", path, value, maximum: rimMarkedMaximum, of: "rim" };
  }
  return undefined;
}

function checkChambers(found: MountedAdjuster, value: TypedQuantity, others: SetupValues): LimitProblem | undefined {
  if (found.part.archetype !== "two-chamber air") return undefined;
  const { kind } = found.adjuster;
  if (kind !== "main-pressure" && kind !== "secondary-pressure") return undefined;
  const main = kind === "main-pressure" ? value : others[adjusterPath(found.place, "main-pressure")];
  const secondary = kind === "secondary-pressure" ? value : others[adjusterPath(found.place, "secondary-pressure")];
  if (!main || !secondary) return undefined;
  if (toSi(secondary) - toSi(main) >= toSi(CHAMBER_MARGIN) - 1e-6) return undefined;
  return { type: "chambers too close", path: found.path, main, secondary };
}
