/**
 * Static equilibrium along a spring.
 *
 *   F(sag) = load      fork: load = share · m · g · cos α      wheel: load = share · m · g
 *
 * m sprung mass (rider, kit and bike less what hangs below the springs), kg ·
 * share the part of it that this end carries · α angle of the fork from the
 * vertical · g standard gravity. Source: statics. The rider sits still, on
 * level ground, and friction is left out (friction.ts has its band).
 */
import { STANDARD_GRAVITY } from "#core/quantity/constants.ts";
import { type Angle, type Force, type Length, type Mass, metres, newtons } from "#core/quantity/quantity.ts";
import { finite, positive, within } from "./input.ts";
import { notPossible, type Possible, possible } from "./problem.ts";
import { solveBracketed } from "./solve.ts";
import type { Spring } from "./spring.ts";

/**
 * The stroke (m) at which `spring` carries `load` (N, finite). "tops out" when it carries more at
 * full extension already, "bottoms out" when it carries less even at full stroke. A linkage can make
 * a force that falls on the way; then it is one of the strokes that carry the load.
 */
export function staticSag(spring: Spring, load: Force): Possible<Length> {
  finite("Load in N", load);
  if (spring.force(metres(0)) > load) return notPossible("tops out");
  const stroke = solveBracketed((x) => spring.force(metres(x)) - load, 0, spring.stroke);
  return stroke === undefined ? notPossible("bottoms out") : possible(metres(stroke));
}

/** Load (N) along a fork: `frontShare` from 0 to 1, `angleFromVertical` from 0 to below a right angle (rad). */
export function forkLoad(fork: {
  readonly sprungMass: Mass;
  readonly frontShare: number;
  readonly angleFromVertical: Angle;
}): Force {
  within("Angle of the fork from the vertical in rad", fork.angleFromVertical, 0, Math.PI / 2);
  const wheel = wheelLoad({ sprungMass: fork.sprungMass, share: fork.frontShare });
  return newtons(wheel * Math.cos(fork.angleFromVertical));
}

/** Load (N) on one wheel from above, at right angles to the ground: `share` from 0 to 1 of `sprungMass` (kg, > 0). */
export function wheelLoad(wheel: { readonly sprungMass: Mass; readonly share: number }): Force {
  const share = within("Share of the mass", wheel.share, 0, 1);
  return newtons(share * positive("Sprung mass in kg", wheel.sprungMass) * STANDARD_GRAVITY);
}
