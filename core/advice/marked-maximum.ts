/** The pressure that a part is never filled above. */
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";
import { dimensionOfKind } from "#core/team/adjuster.ts";
import type { MountedAdjuster } from "#core/team/roster.ts";

/**
 * The marked maximum of a pressure, in the adjuster's unit: for a tyre the lowest of its own range and of what is marked
 * on tyre and rim. Undefined for what is no pressure.
 */
export function markedMaximum({ part, adjuster }: MountedAdjuster): TypedQuantity | undefined {
  if (dimensionOfKind(adjuster.kind) !== "pressure") return undefined;
  const { unit, maximum } = adjuster;
  if (part.archetype !== "tyre") return { value: maximum, unit };
  const marked = [part.geometry.tyreMarkedMaximum, part.geometry.rimMarkedMaximum].map(
    (quantity) => convert(quantity, unit).value,
  );
  return { value: Math.min(maximum, ...marked), unit };
}
