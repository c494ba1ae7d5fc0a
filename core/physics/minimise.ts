/**
 * Least value of a function of one variable: a scan that finds the valley, then
 * golden sections inside it.
 *
 * Source: J. Kiefer, "Sequential minimax search for a maximum", Proceedings of
 * the American Mathematical Society 4 (1953) 502–506.
 */

const SCAN_POINTS = 33;
const SECTIONS = 45;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where `f` is least from `low` to `high`, and whether that is one of the two ends. A valley narrower than 1/32 of the range may be missed. */
export function leastOf(
  f: (value: number) => number,
  low: number,
  high: number,
): { readonly at: number; readonly atEnd: boolean } {
  const step = (high - low) / (SCAN_POINTS - 1);
  const values = Array.from({ length: SCAN_POINTS }, (_, index) => f(low + index * step));
  const valley = values.indexOf(Math.min(...values));
  let left = low + Math.max(0, valley - 1) * step;
  let right = low + Math.min(SCAN_POINTS - 1, valley + 1) * step;
  let inner = right - GOLDEN * (right - left);
  let outer = left + GOLDEN * (right - left);
  let atInner = f(inner);
  let atOuter = f(outer);
  for (let section = 0; section < SECTIONS; section += 1) {
    if (atInner < atOuter) {
      right = outer;
      outer = inner;
      atOuter = atInner;
      inner = right - GOLDEN * (right - left);
      atInner = f(inner);
    } else {
      left = inner;
      inner = outer;
      atInner = atOuter;
      outer = left + GOLDEN * (right - left);
      atOuter = f(outer);
    }
  }
  const at = (left + right) / 2;
  const nearEnd = (high - low) * 1e-6;
  return { at, atEnd: at - low < nearEnd || high - at < nearEnd };
}
