/**
 * Front against rear.
 *
 *   r = f_front / f_rear      shift = r / r_own − 1
 *
 * f natural frequency of each end, Hz · r_own the ratio of the rider's own
 * baseline. No ratio is right for everybody: only the shift from one's own says
 * anything. Source of f: frequency.ts.
 */
import type { Mass, SpringRate } from "#core/quantity/quantity.ts";
import { naturalFrequency } from "./frequency.ts";
import { positive } from "./input.ts";

/** One end of the bike: the rate at the wheel (N/m, > 0) at sag, and the mass that rests on it (kg, > 0). */
export interface BikeEnd {
  readonly rate: SpringRate;
  readonly mass: Mass;
}

/** Natural frequency of the front divided by that of the rear. */
export function frequencyRatio(bike: { readonly front: BikeEnd; readonly rear: BikeEnd }): number {
  return naturalFrequency(bike.front.rate, bike.front.mass) / naturalFrequency(bike.rear.rate, bike.rear.mass);
}

/** How far the ratio `now` is from the rider's `own` (both > 0), as a part of it: above 0 the front has become the stiffer one. */
export function balanceShift(ratio: { readonly now: number; readonly own: number }): number {
  return positive("Ratio now", ratio.now) / positive("Own ratio", ratio.own) - 1;
}
