/**
 * The size of a move: by the inverse of the physics where something was
 * measured, by the smallest change that is felt where nothing was. Never below
 * what can be felt, never above one large step at a time.
 */
import { DEFAULT_RIDING_EXPONENT } from "#core/physics/gas.ts";
import { metres } from "#core/quantity/quantity.ts";
import { decimalsOfStep, roundToStep } from "#core/quantity/rounding.ts";
import { toSi } from "#core/quantity/unit.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { MountedAdjuster } from "#core/team/roster.ts";
import type { EndFeedback } from "#core/weekend/run.ts";
import { valueForBalance } from "./balance.ts";
import type { Direction, Sizing } from "./feedback-rule.ts";
import type { Hindrance } from "./hindrance.ts";
import { strokeAt, valueForEnergy, valueForSag } from "./sizing.ts";
import type { SuspensionModel } from "./suspension-model.ts";
import { SAG_RANGE } from "./symptom.ts";

/** Part of the stroke within which the hardest hit should stay, and which it should use. Common practice, no source. */
const WITHIN_TRAVEL = 0.97;
const USES_TRAVEL = 0.95;

export type MoveSize =
  | {
      readonly type: "sized";
      /** Signed change in the adjuster's unit, on its step. */
      readonly change: number;
      /** "measured": from sag, travel or balance by the physics. "felt step": nothing to go by but what can be felt. */
      readonly basis: "measured" | "felt step";
      /** Set when the physics asked for more than one large step. */
      readonly held?: Hindrance;
    }
  /** What is on the bike now is past the target already: it was changed since the run. */
  | { readonly type: "enough" }
  /** No value of this adjuster brings the sag to its target. */
  | { readonly type: "out of reach" };

/** What the sizing goes by at one end. */
export interface SizingContext {
  readonly model: SuspensionModel;
  readonly feedback: EndFeedback;
  /** Riding values at the run that was logged, and now, in the adjusters' units. */
  readonly valuesAtRun: SetupValues;
  readonly valuesNow: SetupValues;
  /** The sag (m) that the rider's baseline has, if it was measured. */
  readonly baselineSag: number | undefined;
  /** How much firmer (above 0) this end has become against the other, relative to the baseline. */
  readonly balanceShift: number | undefined;
}

/** +1 when a move's direction raises the adjuster's number, −1 when it lowers it. Clicks count from closed. */
export function signOf(direction: Direction): 1 | -1 {
  return direction === "raise" || direction === "open" ? 1 : -1;
}

/** The size of a move at the end that `context` knows of. */
export function sizeMove(
  found: MountedAdjuster,
  direction: Direction,
  sizing: Sizing,
  context: SizingContext | undefined,
): MoveSize {
  const { felt, large, step, unit } = found.adjuster;
  const sign = signOf(direction);
  const current = context?.valuesNow[found.path]?.value;
  const wanted = context && current !== undefined ? wantedValue(found, sizing, context, current) : "unmeasured";
  if (wanted === "unmeasured" || current === undefined) {
    return { type: "sized", change: sign * felt, basis: "felt step" };
  }
  if (wanted === "out of reach") {
    if (sizing === "sag to target") return { type: "out of reach" };
    const held: Hindrance = { type: "held to a large step", most: { value: large, unit } };
    return { type: "sized", change: sign * large, basis: "measured", held };
  }
  const exact = wanted - current;
  if (exact * sign <= 0) return { type: "enough" };
  const rounded = roundToStep(Math.abs(exact), step);
  if (rounded > large) {
    const asked = Number(rounded.toFixed(decimalsOfStep(step)));
    const held: Hindrance = {
      type: "held to a large step",
      asked: { value: asked, unit },
      most: { value: large, unit },
    };
    return { type: "sized", change: sign * large, basis: "measured", held };
  }
  return { type: "sized", change: sign * Math.max(rounded, felt), basis: "measured" };
}

/** The value that meets the sizing's target, in the adjuster's unit. */
function wantedValue(
  found: MountedAdjuster,
  sizing: Sizing,
  context: SizingContext,
  current: number,
): number | "unmeasured" | "out of reach" {
  const { model, feedback, valuesAtRun, valuesNow } = context;
  const search = { model, found, values: valuesNow };
  switch (sizing) {
    case "felt":
      return "unmeasured";
    case "sag to target":
      if (!feedback.sag) return "unmeasured";
      return valueForSag(search, metres(targetSag(context)), model.load) ?? "out of reach";
    case "hit within travel":
      if (!usedAllTravel(context)) return "unmeasured";
      return valueForHit(model, valuesAtRun, model.stroke, (energy) =>
        valueForEnergy(search, strokeAt(model, WITHIN_TRAVEL), energy),
      );
    case "hit uses travel": {
      if (!feedback.travelUsed) return "unmeasured";
      const used = Math.min(toSi(feedback.travelUsed), model.stroke);
      return valueForHit(model, valuesAtRun, used, (energy) =>
        valueForEnergy(search, strokeAt(model, USES_TRAVEL), energy),
      );
    }
    case "balance as before":
      if (context.balanceShift === undefined) return "unmeasured";
      return valueForBalance(model, found, valuesNow, current, context.balanceShift) ?? "out of reach";
  }
}

/** A bottom-out was counted, or the ring stands at the end: only then is it known that the hit used the whole stroke. */
function usedAllTravel({ model, feedback }: SizingContext): boolean {
  if ((feedback.bottomOuts ?? 0) > 0) return true;
  return feedback.travelUsed !== undefined && toSi(feedback.travelUsed) >= WITHIN_TRAVEL * model.stroke;
}

/** The value that takes up the hit which took the spring with `values` to `stroke` (m). */
function valueForHit(
  model: SuspensionModel,
  values: SetupValues,
  stroke: number,
  solve: (energy: number) => number | undefined,
): number | "unmeasured" | "out of reach" {
  const before = model.springWith(values, DEFAULT_RIDING_EXPONENT);
  return before ? (solve(before.energy(metres(stroke))) ?? "out of reach") : "unmeasured";
}

/** The baseline's own sag where it lies in the range, else the middle of the range, m. */
function targetSag({ model, baselineSag }: SizingContext): number {
  const { low, high } = SAG_RANGE[model.place];
  if (baselineSag !== undefined && baselineSag >= low * model.stroke && baselineSag <= high * model.stroke) {
    return baselineSag;
  }
  return ((low + high) / 2) * model.stroke;
}
