/** The units that the one who holds the device likes to read; what is stored stays as it was typed. */
import { dimensionOf, type Unit } from "#core/quantity/unit.ts";

/** What people differ in, each with its choices. Lengths are in mm everywhere in this trade, altitudes in m. */
export const unitChoices = {
  pressure: ["psi", "bar", "kPa"],
  mass: ["kg", "lb"],
  temperature: ["°C", "°F"],
} as const satisfies Partial<Record<string, readonly Unit[]>>;

export type ChosenDimension = keyof typeof unitChoices;
export const chosenDimensions = Object.keys(unitChoices) as readonly ChosenDimension[];

/** A dimension without a choice is shown as it was typed. */
export type ShownUnits = Partial<{ readonly [Of in ChosenDimension]: (typeof unitChoices)[Of][number] }>;

let shown: ShownUnits = {};

/** From here on quantities are shown in these units. */
export function showUnits(units: ShownUnits): void {
  shown = units;
}

/** The unit in which a quantity in `unit` is shown. */
export function shownUnit(unit: Unit): Unit {
  const dimension = dimensionOf(unit);
  return isChosen(dimension) ? (shown[dimension] ?? unit) : unit;
}

function isChosen(dimension: string): dimension is ChosenDimension {
  return Object.hasOwn(unitChoices, dimension);
}
