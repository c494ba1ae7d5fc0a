/**
 * Rebound follows the spring: the damping ratio of the baseline is kept.
 *
 *   ζ = c / (2 √(k m)) constant  ⇒  c₂ / c₁ = √(k₂ / k₁)      c₂ / c₁ = (1 + q)^clicks
 *
 * k rate at sag, N/m · m mass · c damping coefficient · q what one click
 * changes the coefficient by, as a part of it. Source: the definition of the
 * damping ratio (Rao, Mechanical Vibrations, chapter 2); that a click changes
 * damping by a constant factor is an assumption, 6 % common practice, no source.
 */
import type { SpringRate } from "#core/quantity/quantity.ts";
import { positive } from "./input.ts";

/** What one click changes the damping coefficient by, until it is measured. Common practice, no source. */
export const DEFAULT_CHANGE_PER_CLICK = 0.06;

/**
 * Clicks (exact, not rounded) that keep the damping ratio when the rate at sag (N/m, > 0) changes:
 * above 0 is more damping (slower), below 0 less (faster).
 * @param change.perClick the change of one click, > 0; 0.06 when absent.
 */
export function clicksToKeepDampingRatio(change: {
  readonly rateBefore: SpringRate;
  readonly rateAfter: SpringRate;
  readonly perClick?: number | undefined;
}): number {
  const before = positive("Spring rate before in N/m", change.rateBefore);
  const after = positive("Spring rate after in N/m", change.rateAfter);
  const perClick = positive("Change of one click", change.perClick ?? DEFAULT_CHANGE_PER_CLICK);
  return Math.log(after / before) / (2 * Math.log1p(perClick));
}
