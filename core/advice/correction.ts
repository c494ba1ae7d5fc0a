/**
 * A correction adds to one adjuster's value, with its reason. Corrections are
 * applied one after the other; one that a limit forbids is refused whole, says
 * so, and the value stays as it was before it.
 */
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import { checkValue, decimalsOf, settable } from "./limits.ts";
import type { Because, Provenance, Reason } from "./reason.ts";

export interface Correction {
  readonly rule: string;
  readonly path: AdjusterPath;
  /** In the adjuster's unit. */
  readonly change: number;
  readonly because: Because;
  readonly provenance: Provenance;
}

/** A setup in the making: values in their adjusters' units, not yet rounded, and the reasons so far. */
export interface Draft {
  readonly values: Map<AdjusterPath, number>;
  readonly reasons: Map<AdjusterPath, Reason[]>;
}

/** The draft's values as they would be set: rounded to the adjusters' steps. */
export function roundedValues(mounted: RiderBike, draft: Draft): SetupValues {
  const values: Partial<Record<AdjusterPath, TypedQuantity>> = {};
  for (const [path, value] of draft.values) {
    const found = mountedAdjuster(mounted.parts, path);
    if (found) values[path] = settable(found, value);
  }
  return values;
}

/** Applies corrections that belong together: all of them, or, when one breaks a limit, none. Writes the reasons either way. */
export function applyCorrections(mounted: RiderBike, draft: Draft, corrections: readonly Correction[]): void {
  const wanted = corrections.filter(({ path, change }) => draft.values.has(path) && Math.abs(change) > 1e-9);
  const after: Draft = { values: new Map(draft.values), reasons: draft.reasons };
  for (const { path, change } of wanted) after.values.set(path, (after.values.get(path) ?? 0) + change);
  const rounded = roundedValues(mounted, after);
  const problem = wanted
    .map(({ path }) => {
      const value = rounded[path];
      return value && checkValue(mounted, path, value, rounded);
    })
    .find(Boolean);
  for (const { path, change, rule, because, provenance } of wanted) {
    const found = mountedAdjuster(mounted.parts, path);
    if (!found) continue;
    const shown = Number(change.toFixed(Math.max(1, decimalsOf(found))));
    const reason: Reason = { rule, because, provenance, change: { value: shown, unit: found.adjuster.unit } };
    const refused = problem && { refused: problem };
    draft.reasons.set(path, [...(draft.reasons.get(path) ?? []), { ...reason, ...refused }]);
  }
  if (problem) return;
  for (const { path } of wanted) draft.values.set(path, after.values.get(path) ?? 0);
}
