/**
 * Friction of seals and bushings, as a band around the sag.
 *
 *   F(x) = load ± F_f
 *
 * F_f the force that just moves the part, N. At rest it may stop anywhere in
 * the band, by where it came from; so one reading of sag is no better than the
 * band. Source: dry friction, any textbook of mechanics.
 */
import { type Force, type Length, newtons } from "#core/quantity/quantity.ts";
import { notNegative } from "./input.ts";
import type { Possible } from "./problem.ts";
import { staticSag } from "./sag.ts";
import type { Spring } from "./spring.ts";

/** The least and the most sag (m) at which `spring` can come to rest under `load` (N) with `friction` (N, ≥ 0). */
export function sagBand(
  spring: Spring,
  load: Force,
  friction: Force,
): { readonly least: Possible<Length>; readonly most: Possible<Length> } {
  notNegative("Friction in N", friction);
  return { least: staticSag(spring, newtons(load - friction)), most: staticSag(spring, newtons(load + friction)) };
}
