/**
 * Root of a continuous function inside a bracket: inverse quadratic
 * interpolation where it is safe, bisection where it is not.
 *
 * Source: T. R. Chandrupatla, "A new hybrid quadratic/bisection algorithm for
 * finding the zero of a nonlinear function without using derivatives",
 * Advances in Engineering Software 28 (1997) 145–149.
 */

/** Bisection alone would need 53 halvings to exhaust a double; the hybrid never needs more than a few times that. */
const MAXIMUM_STEPS = 200;

/**
 * Where `f` is 0 between `low` and `high`; undefined when `f` has the same sign at both ends.
 * The answer is within `tolerance` (same unit as the bracket) of a change of sign.
 * @throws Error when `f` is not a number somewhere: that is a fault of the caller.
 */
export function solveBracketed(
  f: (value: number) => number,
  low: number,
  high: number,
  tolerance: number = Math.abs(high - low) * 1e-13,
): number | undefined {
  const evaluate = (value: number): number => {
    const result = f(value);
    if (Number.isNaN(result)) throw new Error(`The function to solve is not a number at ${value}.`);
    return result;
  };
  let a = high;
  let b = low;
  let fa = evaluate(a);
  let fb = evaluate(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) return undefined;

  let fraction = 0.5;
  for (let step = 0; step < MAXIMUM_STEPS; step += 1) {
    const x = a + fraction * (b - a);
    const fx = evaluate(x);
    const sameSide = fx > 0 === fa > 0;
    const c = sameSide ? a : b;
    const fc = sameSide ? fa : fb;
    if (!sameSide) {
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const nearest = Math.abs(fa) < Math.abs(fb) ? a : b;
    const smallest = (tolerance + 2 * Number.EPSILON * Math.abs(nearest)) / Math.abs(b - a);
    if (fa === 0 || fb === 0 || smallest > 0.5) return nearest;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const interpolates = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    fraction = interpolates
      ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
      : 0.5;
    fraction = Math.min(1 - smallest, Math.max(smallest, fraction));
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b;
}
