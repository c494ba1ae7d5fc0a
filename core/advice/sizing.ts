/**
 * The value of one adjuster that meets a target, by the inverse solution of the
 * physics. The answer is exact and not rounded; undefined where the physics has
 * none (no spring, or the target is out of the adjuster's reach).
 */
import { DEFAULT_RIDING_EXPONENT, ISOTHERMAL } from "#core/physics/gas.ts";
import { solveSetting } from "#core/physics/sizing.ts";
import type { Spring } from "#core/physics/spring.ts";
import { type Force, type Length, metres } from "#core/quantity/quantity.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { MountedAdjuster } from "#core/team/roster.ts";
import { searchRange } from "./spring-adjuster.ts";
import type { SuspensionModel } from "./suspension-model.ts";

interface Search {
  readonly model: SuspensionModel;
  readonly found: MountedAdjuster;
  /** All values at the end, the searched one with any value. */
  readonly values: SetupValues;
}

/** The value for which `load` (N) rests at `sag` (m). */
export function valueForSag(search: Search, sag: Length, load: Force): number | undefined {
  return solve(search, ISOTHERMAL, (spring) => spring.force(sag), load);
}

/** The value for which the spring has taken up `energy` (J) at `stroke` (m), while riding. */
export function valueForEnergy(search: Search, stroke: Length, energy: number): number | undefined {
  return solve(search, DEFAULT_RIDING_EXPONENT, (spring) => spring.energy(stroke), energy);
}

/** Spacers are whole: the search over them evaluates every count, since a fraction of one makes no spring. */
function solve(
  { model, found, values }: Search,
  exponent: number,
  measure: (spring: Spring) => number,
  target: number,
): number | undefined {
  const springAt = (value: number) =>
    model.springWith({ ...values, [found.path]: { value, unit: found.adjuster.unit } }, exponent);
  if (found.adjuster.kind === "volume-spacers") return nearestCount(found, springAt, measure, target);
  const { low, high } = searchRange(found, values);
  if (low >= high || !springAt(low) || !springAt(high)) return undefined;
  const solved = solveSetting({
    build: (value) => {
      const spring = springAt(value);
      if (!spring) throw new Error(`No spring at ${value} ${found.adjuster.unit} between two values that make one.`);
      return spring;
    },
    measure,
    target,
    low,
    high,
  });
  return solved.possible ? solved.value : undefined;
}

function nearestCount(
  found: MountedAdjuster,
  springAt: (value: number) => Spring | undefined,
  measure: (spring: Spring) => number,
  target: number,
): number | undefined {
  let best: { readonly count: number; readonly miss: number } | undefined;
  for (let count = Math.ceil(found.adjuster.minimum); count <= found.adjuster.maximum; count += 1) {
    const spring = springAt(count);
    if (!spring) continue;
    const miss = Math.abs(measure(spring) - target);
    if (!best || miss < best.miss) best = { count, miss };
  }
  return best?.count;
}

/** A fraction of the model's stroke, m. */
export function strokeAt(model: SuspensionModel, fraction: number): Length {
  return metres(model.stroke * fraction);
}
