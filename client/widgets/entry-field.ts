/** How a value is typed: in the unit that the one who types likes, in steps that its gauge can show. */
import { shownUnit } from "#client/text/shown-units.ts";
import { decimalsOfStep } from "#core/quantity/rounding.ts";
import { convert, differenceToSi, fromSi, type TypedQuantity, type Unit } from "#core/quantity/unit.ts";

/** A range in one unit, with the step that + and - go by. */
export interface EntryField {
  readonly unit: Unit;
  readonly step: number;
  readonly minimum: number;
  readonly maximum: number;
}

/**
 * The field for what is given in `own`. In another unit its step is the largest of 1, 2 and 5 (times a power of ten) that
 * is no longer than its own, and its ends lie inside its own ends.
 */
export function entryField(own: EntryField): EntryField {
  const unit = shownUnit(own.unit);
  if (unit === own.unit) return own;
  const si = differenceToSi({ value: own.step, unit: own.unit });
  const step = roundStep(fromSi(si, unit).value - fromSi(0, unit).value);
  const inUnit = (value: number) => convert({ value, unit: own.unit }, unit).value / step;
  return {
    unit,
    step,
    minimum: onStep(Math.ceil(inUnit(own.minimum) - 1e-6), step),
    maximum: onStep(Math.floor(inUnit(own.maximum) + 1e-6), step),
  };
}

/** A quantity as the number that stands in the field; undefined when there is none. */
export function numberIn(
  { unit, step }: Pick<EntryField, "unit" | "step">,
  quantity: TypedQuantity | undefined,
): number | undefined {
  if (!quantity) return undefined;
  // As it was typed, where it was typed in this unit; else as exactly as its gauge is read.
  if (quantity.unit === unit) return quantity.value;
  return Number(convert(quantity, unit).value.toFixed(Math.max(1, decimalsOfStep(step))));
}

/**
 * What a number in the field means. Where it is still the one that `from` was shown as it is `from` itself: what the field
 * rounds away was never typed, and at the end of a range it would be beyond it.
 */
export function quantityIn(
  field: Pick<EntryField, "unit" | "step">,
  number: number,
  from: TypedQuantity | undefined,
): TypedQuantity {
  return from && numberIn(field, from) === number ? from : { value: number, unit: field.unit };
}

function roundStep(exact: number): number {
  const power = 10 ** Math.floor(Math.log10(exact));
  const parts = exact / power + 1e-9;
  return Number(((parts >= 5 ? 5 : parts >= 2 ? 2 : 1) * power).toPrecision(1));
}

/** Free of the dust of floating point. */
function onStep(count: number, step: number): number {
  return Number((count * step).toFixed(decimalsOfStep(step)));
}
