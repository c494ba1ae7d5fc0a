/** Two values side by side, field by field, in words. */
import { isJsonObject, sameJson } from "#core/ledger/plain-json.ts";

/** One field that differs; absent on a side where there is none. */
export interface Difference {
  readonly field: string;
  readonly from?: string;
  readonly to?: string;
}

/** The fields in which plain JSON values differ. A quantity and a list count as one field each. */
export function differences(before: unknown, after: unknown, field = ""): readonly Difference[] {
  if (sameJson(before, after)) return [];
  if (!isBranch(before) || !isBranch(after)) {
    return [
      {
        field: field === "" ? "value" : field,
        ...(before !== undefined && { from: inWords(before) }),
        ...(after !== undefined && { to: inWords(after) }),
      },
    ];
  }
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return names.flatMap((name) =>
    differences(own(before, name), own(after, name), field === "" ? name : `${field}, ${name}`),
  );
}

/** A value as one reads it aloud: "62 psi", "steep". Long ones are cut. */
function inWords(value: unknown): string {
  if (isQuantity(value)) return `${value.value} ${value.unit}`;
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return text.length > 120 ? `${text.slice(0, 120)}…` : text;
}

function isBranch(value: unknown): value is Readonly<Record<string, unknown>> {
  return isJsonObject(value) && !isQuantity(value);
}

function isQuantity(value: unknown): value is { value: number; unit: string } {
  return isJsonObject(value) && typeof value.value === "number" && typeof value.unit === "string";
}

function own(value: Readonly<Record<string, unknown>>, name: string): unknown {
  return Object.hasOwn(value, name) ? value[name] : undefined;
}
