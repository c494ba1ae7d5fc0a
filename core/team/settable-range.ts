/**
 * What can be set on any part at all: far wider than what any part allows, and narrow enough that nothing which is
 * worked out from it leaves the range of numbers. What one part allows is its adjuster's to say.
 */
import { type Dimension, dimensionOf, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { describeQuantity, type QuantityRange } from "./quantity-schema.ts";

/** Common practice, no source. A pressure is a gauge reading: no pump reads below 0, and a spring without rate carries nobody. */
const ranges: Partial<Record<Dimension, QuantityRange>> = {
  pressure: { minimum: { value: 0, unit: "psi" }, maximum: { value: 500, unit: "psi" } },
  "spring rate": { minimum: { value: 0.1, unit: "N/mm" }, maximum: { value: 2000, unit: "N/mm" } },
  clicks: { minimum: { value: 0, unit: "clicks" }, maximum: { value: 200, unit: "clicks" } },
  turns: { minimum: { value: 0, unit: "turns" }, maximum: { value: 100, unit: "turns" } },
  spacers: { minimum: { value: 0, unit: "spacers" }, maximum: { value: 100, unit: "spacers" } },
};

/**
 * Why what is measured in `dimension` can never be set to `quantity`, as the end of a sentence; undefined when some part
 * may allow it.
 */
export function unsettable(dimension: Dimension, quantity: TypedQuantity): string | undefined {
  if (dimensionOf(quantity.unit) !== dimension) {
    return `cannot be in ${quantity.unit}: it is measured in units of ${dimension}`;
  }
  const range = ranges[dimension];
  if (range === undefined) throw new Error(`Nothing that is set is measured in units of ${dimension}.`);
  const si = toSi(quantity);
  if (si >= toSi(range.minimum) - 1e-9 && si <= toSi(range.maximum) + 1e-9) return undefined;
  return `cannot be ${describeQuantity(quantity)}: that is outside ${describeQuantity(range.minimum)} to ${describeQuantity(range.maximum)}`;
}
