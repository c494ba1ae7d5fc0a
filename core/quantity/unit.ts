/**
 * The units a person may type, each with its dimension and its exact relation
 * to the SI unit: `si = value * factor + offset`.
 *
 * Factors: NIST SP 811 (2008) appendix B; see constants.ts.
 */
import {
  KILOGRAMS_PER_POUND,
  METRES_PER_INCH,
  NEWTONS_PER_POUND_FORCE,
  PASCALS_PER_BAR,
  PASCALS_PER_PSI,
  ZERO_CELSIUS,
} from "./constants.ts";

/** What a unit measures. Counts (clicks, turns, spacers) are dimensions of their own: they do not convert. */
export const dimensions = [
  "pressure",
  "temperature",
  "length",
  "mass",
  "angle",
  "volume",
  "area",
  "spring rate",
  "clicks",
  "turns",
  "spacers",
] as const;
export type Dimension = (typeof dimensions)[number];

interface UnitDefinition {
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset: number;
}

const define = (dimension: Dimension, factor: number, offset = 0): UnitDefinition => ({
  dimension,
  factor,
  offset,
});

const definitions = {
  psi: define("pressure", PASCALS_PER_PSI),
  bar: define("pressure", PASCALS_PER_BAR),
  kPa: define("pressure", 1000),
  "°C": define("temperature", 1, ZERO_CELSIUS),
  "°F": define("temperature", 5 / 9, ZERO_CELSIUS - (32 * 5) / 9),
  m: define("length", 1),
  mm: define("length", 0.001),
  in: define("length", METRES_PER_INCH),
  kg: define("mass", 1),
  lb: define("mass", KILOGRAMS_PER_POUND),
  "°": define("angle", Math.PI / 180),
  ml: define("volume", 1e-6),
  "mm²": define("area", 1e-6),
  "N/mm": define("spring rate", 1000),
  "lbf/in": define("spring rate", NEWTONS_PER_POUND_FORCE / METRES_PER_INCH),
  clicks: define("clicks", 1),
  turns: define("turns", 1),
  spacers: define("spacers", 1),
} as const satisfies Record<string, UnitDefinition>;

export type Unit = keyof typeof definitions;

/** All units, in the order in which a list of choices shows them. */
export const units = Object.keys(definitions) as readonly Unit[];

/** True when `text` is one of {@link units}, spelled exactly. */
export function isUnit(text: string): text is Unit {
  return Object.hasOwn(definitions, text);
}

/** What `unit` measures. */
export function dimensionOf(unit: Unit): Dimension {
  return definitions[unit].dimension;
}

/** The units that measure `dimension`. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return units.filter((unit) => definitions[unit].dimension === dimension);
}

/** A quantity as a person typed it. It is stored like this for ever, so that 62 psi reads 62 psi. */
export interface TypedQuantity {
  readonly value: number;
  readonly unit: Unit;
}

/** The number of SI units (Pa, K, m, kg, rad, m³, m², N/m, or a count) in `quantity`. A pressure stays gauge if it was gauge. */
export function toSi(quantity: TypedQuantity): number {
  const { factor, offset } = definitions[quantity.unit];
  return quantity.value * factor + offset;
}

/** `si` expressed in `unit`. Inverse of {@link toSi} to within a rounding of floating point. */
export function fromSi(si: number, unit: Unit): TypedQuantity {
  const { factor, offset } = definitions[unit];
  return { value: (si - offset) / factor, unit };
}

/**
 * `quantity` in another unit of the same dimension.
 * @throws RangeError when the two units measure different things; that is a fault of the caller.
 */
export function convert(quantity: TypedQuantity, unit: Unit): TypedQuantity {
  if (quantity.unit === unit) return quantity;
  const from = dimensionOf(quantity.unit);
  const to = dimensionOf(unit);
  if (from !== to)
    throw new RangeError(`${quantity.unit} measures ${from}, ${unit} measures ${to}: they do not convert.`);
  return fromSi(toSi(quantity), unit);
}

/** A difference such as a step (2 psi, 5 °C) in SI units: like {@link toSi}, without the unit's offset. */
export function differenceToSi(quantity: TypedQuantity): number {
  return quantity.value * definitions[quantity.unit].factor;
}
