/**
 * A mass on a spring with a viscous damper.
 *
 *   f = √(k / m) / 2π     c_c = 2 √(k m)     ζ = c / c_c     δ = 2π ζ / √(1 − ζ²)     f_d = f √(1 − ζ²)
 *
 * k rate, N/m · m mass, kg · c damping coefficient, N s/m · c_c the critical
 * one · ζ damping ratio · δ logarithmic decrement: the logarithm of the ratio
 * of two peaks that follow each other · f_d frequency of the damped vibration.
 *
 * Source: S. S. Rao, Mechanical Vibrations, chapter 2. Valid for small
 * movements about one point; `k` is the rate there.
 */
import {
  type DampingCoefficient,
  type Frequency,
  hertz,
  type Mass,
  newtonSecondsPerMetre,
  type SpringRate,
} from "#core/quantity/quantity.ts";
import { notNegative, positive, within } from "./input.ts";

/** Natural frequency (Hz) of `mass` (kg, > 0) on `rate` (N/m, > 0). */
export function naturalFrequency(rate: SpringRate, mass: Mass): Frequency {
  return hertz(Math.sqrt(positive("Spring rate in N/m", rate) / positive("Mass in kg", mass)) / (2 * Math.PI));
}

/** The smallest damping coefficient (N s/m) with which `mass` (kg, > 0) on `rate` (N/m, > 0) does not swing past its rest. */
export function criticalDamping(rate: SpringRate, mass: Mass): DampingCoefficient {
  return newtonSecondsPerMetre(2 * Math.sqrt(positive("Spring rate in N/m", rate) * positive("Mass in kg", mass)));
}

/** `damping` (N s/m, ≥ 0) as a part of the critical one: 1 does not overshoot. */
export function dampingRatio(damping: DampingCoefficient, rate: SpringRate, mass: Mass): number {
  return notNegative("Damping in N s/m", damping) / criticalDamping(rate, mass);
}

/** Frequency (Hz) at which a damped vibration swings, from the undamped `natural` one and a damping ratio from 0 to below 1. */
export function dampedFrequency(natural: Frequency, ratio: number): Frequency {
  return hertz(positive("Natural frequency in Hz", natural) * Math.sqrt(1 - underdamped(ratio) ** 2));
}

/** Logarithmic decrement of a damping ratio from 0 to below 1. */
export function logarithmicDecrement(ratio: number): number {
  return (2 * Math.PI * underdamped(ratio)) / Math.sqrt(1 - ratio ** 2);
}

/** Logarithmic decrement from two peaks of one vibration, `cycles` (> 0) apart; both > 0, in one unit, from the rest position. */
export function decrementFromPeaks(peaks: {
  readonly first: number;
  readonly last: number;
  readonly cycles: number;
}): number {
  const ratio = positive("First peak", peaks.first) / positive("Last peak", peaks.last);
  return Math.log(ratio) / positive("Number of cycles", peaks.cycles);
}

/** Damping ratio of a logarithmic decrement ≥ 0. Inverse of {@link logarithmicDecrement}. */
export function dampingRatioFromDecrement(decrement: number): number {
  return notNegative("Logarithmic decrement", decrement) / Math.hypot(2 * Math.PI, decrement);
}

function underdamped(ratio: number): number {
  return within("Damping ratio", ratio, 0, 1 - Number.EPSILON);
}
