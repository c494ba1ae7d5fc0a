/**
 * Rounding to the step of an adjuster, free of the dust that floating point
 * leaves: 0.1 + 0.2 rounded to a step of 0.1 is 0.3.
 */

/** Decimals needed to write multiples of `step` exactly; 0 for a whole step. Steps finer than 1e-6 are treated as 1e-6. */
export function decimalsOfStep(step: number): number {
  for (let decimals = 0; decimals < 6; decimals += 1) {
    const scaled = step * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-9) return decimals;
  }
  return 6;
}

/**
 * `value` rounded to the nearest multiple of `step` (> 0); a tie goes away from
 * zero, so that +2.5 and −2.5 steps round alike.
 */
export function roundToStep(value: number, step: number): number {
  const steps = Math.sign(value) * Math.round(Math.abs(value) / step + 1e-9);
  const rounded = Number((steps * step).toFixed(decimalsOfStep(step)));
  return rounded === 0 ? 0 : rounded;
}

/** True when `value` is a multiple of `step` to within floating-point dust. */
export function isOnStep(value: number, step: number): boolean {
  return Math.abs(value - roundToStep(value, step)) < step * 1e-6;
}
