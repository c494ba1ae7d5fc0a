/**
 * The rubber at either end of the stroke, as a straight line.
 *
 *   bottom-out: F + k (x − x_b) from x_b on      top-out: F − k (x_t − x) up to x_t
 *
 * k rate of the bumper, N/m · x_b, x_t stroke where it starts and stops to
 * act, m. Real rubber stiffens further and heats up: common practice, no source.
 */
import {
  type Energy,
  type Force,
  joules,
  type Length,
  newtons,
  newtonsPerMetre,
  type SpringRate,
} from "#core/quantity/quantity.ts";
import { positive, within } from "./input.ts";
import type { Spring } from "./spring.ts";

/** `spring` with a bumper of `rate` (N/m, > 0) that acts from the stroke `from` (m) to full travel. */
export function withBottomOutBumper(
  spring: Spring,
  bumper: { readonly from: Length; readonly rate: SpringRate },
): Spring {
  const from = within("Start of the bumper in m", bumper.from, 0, spring.stroke);
  const rate = positive("Rate of the bumper in N/m", bumper.rate);
  const pressed = (x: Length): number => Math.max(0, x - from);
  return {
    stroke: spring.stroke,
    force: (x): Force => newtons(spring.force(x) + rate * pressed(x)),
    rate: (x): SpringRate => newtonsPerMetre(spring.rate(x) + (x >= from ? rate : 0)),
    energy: (x): Energy => joules(spring.energy(x) + (rate * pressed(x) ** 2) / 2),
  };
}

/** `spring` with a bumper of `rate` (N/m, > 0) that pulls it together from full extension to the stroke `until` (m). */
export function withTopOutBumper(
  spring: Spring,
  bumper: { readonly until: Length; readonly rate: SpringRate },
): Spring {
  const until = within("End of the bumper in m", bumper.until, 0, spring.stroke);
  const rate = positive("Rate of the bumper in N/m", bumper.rate);
  const pressed = (x: Length): number => Math.max(0, until - x);
  return {
    stroke: spring.stroke,
    force: (x): Force => newtons(spring.force(x) - rate * pressed(x)),
    rate: (x): SpringRate => newtonsPerMetre(spring.rate(x) + (x < until ? rate : 0)),
    energy: (x): Energy => joules(spring.energy(x) - (rate * (until ** 2 - pressed(x) ** 2)) / 2),
  };
}
