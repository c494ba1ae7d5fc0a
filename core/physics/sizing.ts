/**
 * How large an adjustment has to be: the value of one adjuster for which what
 * is measured on the resulting spring (sag, travel, force) meets its target.
 */
import { finite, within } from "./input.ts";
import { notPossible, type Possible, possible } from "./problem.ts";
import { solveBracketed } from "./solve.ts";
import type { Spring } from "./spring.ts";

/**
 * The value from `low` to `high` (in the unit of the adjuster) for which `measure(build(value))` is
 * `target`. `measure` must rise or fall throughout. When the target lies outside what the two ends
 * give, "beyond low end" or "beyond high end" says which end comes nearer.
 * @throws PhysicsError when a bound, the target or a measurement is not a number, or `high` is not above `low`.
 */
export function solveSetting(search: {
  readonly build: (value: number) => Spring;
  readonly measure: (spring: Spring) => number;
  readonly target: number;
  readonly low: number;
  readonly high: number;
}): Possible<number> {
  const { build, measure, low, high } = search;
  const target = finite("Target", search.target);
  within("Lower bound", low, -Number.MAX_VALUE, high);
  finite("Upper bound", high);
  const miss = (value: number): number => finite("Measurement", measure(build(value))) - target;
  const value = solveBracketed(miss, low, high, Math.max(Math.abs(low), Math.abs(high)) * 1e-12);
  if (value !== undefined) return possible(value);
  return notPossible(Math.abs(miss(low)) < Math.abs(miss(high)) ? "beyond low end" : "beyond high end");
}
