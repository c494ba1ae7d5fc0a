/**
 * How far another setting would go on the same hit.
 *
 *   E_after(x) = E_before(stroke used)
 *
 * E energy that the spring takes up from full extension. Source: conservation
 * of energy; what the damper takes is left out on both sides, so the answer
 * compares two springs and does not foretell one. When the travel was all used
 * the energy is a lower bound: the bumper or the frame took the rest.
 */
import { type Energy, joules, type Length, metres } from "#core/quantity/quantity.ts";
import { finite } from "./input.ts";
import { notPossible, type Possible, possible } from "./problem.ts";
import { solveBracketed } from "./solve.ts";
import type { Spring } from "./spring.ts";

/**
 * The stroke (m) at which `spring` has taken up `energy` (J, finite). "bottoms out" when the full
 * stroke takes less, "tops out" for an energy below what the spring holds at its free length.
 */
export function strokeForEnergy(spring: Spring, energy: Energy): Possible<Length> {
  finite("Energy in J", energy);
  const free = freeStroke(spring);
  if (spring.energy(free) > energy) return notPossible("tops out");
  const stroke = solveBracketed((x) => spring.energy(metres(x)) - energy, free, spring.stroke);
  return stroke === undefined ? notPossible("bottoms out") : possible(metres(stroke));
}

/**
 * The stroke (m) that `after` uses on the hit that took `before` to `strokeUsed` (m).
 * @throws PhysicsError when `strokeUsed` lies outside the stroke of `before`.
 */
export function sameHitStroke(hit: {
  readonly before: Spring;
  readonly after: Spring;
  readonly strokeUsed: Length;
}): Possible<Length> {
  return strokeForEnergy(hit.after, joules(hit.before.energy(hit.strokeUsed)));
}

/** Where the force is 0: a spring that is pulled together at full extension gives energy up to there, and takes it up from there. */
function freeStroke(spring: Spring): Length {
  if (spring.force(metres(0)) >= 0) return metres(0);
  return metres(solveBracketed((x) => spring.force(metres(x)), 0, spring.stroke) ?? spring.stroke);
}
