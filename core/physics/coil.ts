/**
 * A coil spring between two plates.
 *
 *   F(x) = k (x + x₀)      E(x) = k (x² / 2 + x₀ x)
 *
 * k rate, N/m · x stroke from full extension, m · x₀ preload, m: how much the
 * coil is shortened at full extension. Source: Hooke's law. Valid until coil
 * bind, which a part's own stroke keeps clear of.
 */
import {
  type Force,
  joules,
  type Length,
  metres,
  newtons,
  newtonsPerMetre,
  type SpringRate,
} from "#core/quantity/quantity.ts";
import { notNegative, positive, withinStroke } from "./input.ts";
import { notPossible, type Possible, possible } from "./problem.ts";
import type { Spring } from "./spring.ts";

/** A coil of `rate` (N/m, > 0) with `preload` (m, ≥ 0) over `stroke` (m, > 0). @throws PhysicsError outside these. */
export function createCoilSpring(coil: {
  readonly rate: SpringRate;
  readonly preload: Length;
  readonly stroke: Length;
}): Spring {
  const stroke = positive("Stroke in m", coil.stroke);
  const rate = positive("Spring rate in N/m", coil.rate);
  const preload = notNegative("Preload in m", coil.preload);
  return {
    stroke,
    force(x) {
      withinStroke(x, stroke);
      return newtons(rate * (x + preload));
    },
    rate(x) {
      withinStroke(x, stroke);
      return rate;
    },
    energy(x) {
      withinStroke(x, stroke);
      return joules(rate * x * (x / 2 + preload));
    },
  };
}

/** Preload (m) of `turns` of the collar from where it first touches the coil, on a thread of `pitch` (m a turn, > 0). */
export function preloadFromTurns(turns: number, pitch: Length): Length {
  return metres(notNegative("Turns of preload", turns) * positive("Thread pitch in m", pitch));
}

/** The rate (N/m) of a coil that sags `sag` (m) under `load` (N, > 0) with `preload` (m, ≥ 0). @throws PhysicsError when sag and preload are both 0. */
export function rateForSag(wish: { readonly load: Force; readonly sag: Length; readonly preload: Length }): SpringRate {
  const load = positive("Load in N", wish.load);
  const shortening = notNegative("Sag in m", wish.sag) + notNegative("Preload in m", wish.preload);
  return newtonsPerMetre(load / positive("Sag and preload together in m", shortening));
}

/**
 * Preload (m) with which a coil of `rate` (N/m, > 0) sags `sag` (m, ≥ 0) under `load` (N, > 0).
 * Not possible ("tops out") for a coil so stiff that it sags less even without preload.
 */
export function preloadForSag(wish: {
  readonly load: Force;
  readonly sag: Length;
  readonly rate: SpringRate;
}): Possible<Length> {
  const preload =
    positive("Load in N", wish.load) / positive("Spring rate in N/m", wish.rate) - notNegative("Sag in m", wish.sag);
  return preload < 0 ? notPossible("tops out") : possible(metres(preload));
}
