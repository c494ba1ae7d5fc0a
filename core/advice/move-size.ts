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
import type { Direction, Sizing } from "./feedback-rule.ts";
import { strokeAt, valueForEnergy, valueForSag } from "./sizing.ts";
import type { SuspensionModel } from "./suspension-model.ts";
import { SAG_RANGE } from "./symptom.ts";

/** Part of the stroke within which the hardest hit should stay, and which it should use. Common practice, no source. */
const WITHIN_TRAVEL = 0.97;
const USES_TRAVEL = 0.95;

export interface SizedMove {
  /** Signed change in the adjuster's unit, on its step. */
  readonly change: number;
  /** "measured": from sag or travel by the physics. "felt step": nothing to go by but what can be felt. */
  readonly basis: "measured" | "felt step";
  /** Set when the physics asked for more than one large step. */
  readonly held?: string;
}

/** What the sizing goes by at one end. */
export interface SizingContext {
  readonly model: SuspensionModel;
  readonly feedback: EndFeedback;
  /** Riding values at the run that was logged, and now. */
  readonly valuesAtRun: SetupValues;
  readonly valuesNow: SetupValues;
  /** The sag (m) that the rider's baseline has, if it was measured. */
  readonly baselineSag: number | undefined;
}

/** +1 when a move's direction raises the adjuster's number, −1 when it lowers it. Clicks count from closed. */
export function signOf(direction: Direction): 1 | -1 {
  return direction === "raise" || direction === "open" ? 1 : -1;
}

/**
 * The size of a move, or undefined when the physics says that what is on the bike now is past the target already (the
 * setting was changed since the run).
 */
export function sizeMove(
  found: MountedAdjuster,
  direction: Direction,
  sizing: Sizing,
  context: SizingContext | undefined,
): SizedMove | undefined {
  const { adjuster } = found;
  const sign = signOf(direction);
  const wanted = context && wantedValue(found, sizing, context);
  const current = context?.valuesNow[found.path]?.value;
  if (wanted === undefined || current === undefined) return { change: sign * adjuster.felt, basis: "felt step" };
  const exact = wanted - current;
  if (exact * sign <= 0) return undefined;
  const rounded = roundToStep(Math.abs(exact), adjuster.step);
  if (rounded > adjuster.large) {
    const asked = Number(rounded.toFixed(decimalsOfStep(adjuster.step)));
    return {
      change: sign * adjuster.large,
      basis: "measured",
      held: `The measurements ask for ${asked} ${adjuster.unit}; no more than ${adjuster.large} ${adjuster.unit} at a time, then ride again.`,
    };
  }
  return { change: sign * Math.max(rounded, adjuster.felt), basis: "measured" };
}

/** The value that meets the sizing's target, in the adjuster's unit; undefined when nothing was measured or nothing reaches it. */
function wantedValue(found: MountedAdjuster, sizing: Sizing, context: SizingContext): number | undefined {
  const { model, feedback, valuesAtRun, valuesNow } = context;
  const search = { model, found, values: valuesNow };
  switch (sizing) {
    case "felt":
      return undefined;
    case "sag to target":
      return feedback.sag && valueForSag(search, metres(targetSag(context)), model.load);
    case "hit within travel":
      return energyAt(model, valuesAtRun, model.stroke, (energy) =>
        valueForEnergy(search, strokeAt(model, WITHIN_TRAVEL), energy),
      );
    case "hit uses travel":
      return (
        feedback.travelUsed &&
        energyAt(model, valuesAtRun, Math.min(toSi(feedback.travelUsed), model.stroke), (energy) =>
          valueForEnergy(search, strokeAt(model, USES_TRAVEL), energy),
        )
      );
  }
}

/** The baseline's own sag where it lies in the range, else the middle of the range, m. */
function targetSag({ model, baselineSag }: SizingContext): number {
  const { low, high } = SAG_RANGE[model.place];
  if (baselineSag !== undefined && baselineSag >= low * model.stroke && baselineSag <= high * model.stroke) {
    return baselineSag;
  }
  return ((low + high) / 2) * model.stroke;
}

function energyAt(
  model: SuspensionModel,
  values: SetupValues,
  stroke: number,
  use: (energy: number) => number | undefined,
): number | undefined {
  const spring = model.springWith(values, DEFAULT_RIDING_EXPONENT);
  return spring && use(spring.energy(metres(stroke)));
}
