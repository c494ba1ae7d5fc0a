/**
 * The gate for quantities that a person typed: a finite number with a unit of
 * the right dimension, inside a stated range. The messages are sentences.
 */
import * as z from "zod/mini";
import { type Dimension, type TypedQuantity, toSi, type Unit, units, unitsOf } from "#core/quantity/unit.ts";

/** The range of a quantity, both ends allowed, in the unit in which people speak of it. */
export interface QuantityRange {
  readonly minimum: TypedQuantity;
  readonly maximum: TypedQuantity;
}

/** A quantity as one reads it aloud: "62 psi", "18 °C", "1 click". */
export function describeQuantity({ value, unit }: TypedQuantity): string {
  return `${value} ${describeUnit(value, unit)}`;
}

/** A unit beside its number: the units of counts are plural words, and one of them is one. */
export function describeUnit(value: number, unit: Unit): string {
  return Math.abs(value) === 1 && /^(clicks|turns|spacers)$/.test(unit) ? unit.slice(0, -1) : unit;
}

/**
 * Schema of a {@link TypedQuantity} of `dimension` within `range`.
 * It refuses, with a sentence each: no number, another unit, out of range.
 */
export function quantitySchema(dimension: Dimension, range: QuantityRange) {
  const allowed = unitsOf(dimension);
  return z
    .object({
      value: z.number({ error: "not a number" }),
      unit: z.enum(allowed as [Unit, ...Unit[]], {
        error: (issue) => `${JSON.stringify(issue.input)} is no unit of ${dimension}; allowed: ${allowed.join(", ")}`,
      }),
    })
    .check(
      z.refine(
        (quantity) => toSi(quantity) >= toSi(range.minimum) - 1e-9 && toSi(quantity) <= toSi(range.maximum) + 1e-9,
        {
          // For whoever puts the refusal into words of another language.
          params: { minimum: range.minimum, maximum: range.maximum },
          error: (issue) =>
            `${describeQuantity(issue.input as TypedQuantity)} is outside ${describeQuantity(range.minimum)} to ${describeQuantity(range.maximum)}`,
        },
      ),
    );
}

/** Schema of a {@link TypedQuantity} of any dimension; what it may be is checked against the adjuster that it is for. */
export const anyQuantitySchema = z.object({
  value: z.number({ error: "not a number" }),
  unit: z.enum(units as [Unit, ...Unit[]], {
    error: (issue) => `${JSON.stringify(issue.input)} is no unit; allowed: ${units.join(", ")}`,
  }),
});
