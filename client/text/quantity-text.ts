/** Quantities as the one who reads them likes them: in his units, with the numbers of his language. */
import { convert, differenceToSi, fromSi, type TypedQuantity, type Unit } from "#core/quantity/unit.ts";
import { formatTag } from "./language.ts";
import { shownUnit } from "./shown-units.ts";
import { words } from "./spoken.ts";

/** Decimals that a value carries which was converted for the eye: as much as a gauge of that unit can be read to. */
const decimalsOf: Partial<Record<Unit, number>> = { psi: 1, bar: 2, kPa: 0, kg: 1, lb: 1, "°C": 1, "°F": 0 };

const MOST_DECIMALS = 2;

/** A number and its unit apart, to be shown in two sizes. */
export interface QuantityParts {
  readonly number: string;
  readonly unit: string;
}

/** "62 psi" as it was typed, or "4.27 bar" for whom reads bar. */
export function quantityText(quantity: TypedQuantity): string {
  const { number, unit } = quantityParts(quantity);
  return `${number} ${unit}`;
}

/** The same in two parts. */
export function quantityParts(quantity: TypedQuantity): QuantityParts {
  const shown = forTheEye(quantity, (unit) => convert(quantity, unit).value);
  return { number: numberText(shown.value), unit: unitText(shown) };
}

/** A difference with its sign: "+2 psi", "−1 click", "0 psi". */
export function differenceText(difference: TypedQuantity): string {
  const { number, unit } = differenceParts(difference);
  return `${number} ${unit}`;
}

/** The same in two parts. */
export function differenceParts(difference: TypedQuantity): QuantityParts {
  const si = differenceToSi(difference);
  // A difference has no zero of its own: 5 °C more are 9 °F more, not 41.
  const shown = forTheEye(difference, (unit) => fromSi(si, unit).value - fromSi(0, unit).value);
  return { number: signedText(shown.value), unit: unitText(shown) };
}

/** A number with at most two decimals. */
export function numberText(value: number): string {
  // Without a sign before what rounds to nothing.
  return format({ signDisplay: "negative" }).format(value).replace("-", "−");
}

/** The unit beside a number: counts are words, and one click is one. */
export function unitText({ value, unit }: TypedQuantity): string {
  return unit === "clicks" || unit === "turns" || unit === "spacers" ? words("common").counts[unit](value) : unit;
}

function signedText(value: number): string {
  return format({ signDisplay: "exceptZero" }).format(value).replace("-", "−");
}

function forTheEye(quantity: TypedQuantity, valueIn: (unit: Unit) => number): TypedQuantity {
  const unit = shownUnit(quantity.unit);
  if (unit === quantity.unit) return quantity;
  return { value: Number(valueIn(unit).toFixed(decimalsOf[unit] ?? MOST_DECIMALS)), unit };
}

function format(options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${formatTag()} ${options.signDisplay ?? ""}`;
  const known = formats.get(key);
  if (known) return known;
  const made = new Intl.NumberFormat(formatTag(), {
    maximumFractionDigits: MOST_DECIMALS,
    useGrouping: false,
    ...options,
  });
  formats.set(key, made);
  return made;
}

/** Making a format takes far longer than using it. */
const formats = new Map<string, Intl.NumberFormat>();
