/** Fills in what a part's file may leave out: the sizes of its adjusters. */
import { isUnit } from "#core/quantity/unit.ts";
import { adjusterKinds } from "#core/team/adjuster.ts";
import { defaultSizes } from "#core/team/default-sizes.ts";

/**
 * The raw scenario with the default step, felt and large sizes where an adjuster names none. Whatever is not as expected
 * is left for the schema to refuse.
 */
export function fillDefaultSizes(raw: unknown): unknown {
  if (!isObject(raw) || !isObject(raw.team) || !isObject(raw.team.parts)) return raw;
  const parts = Object.entries(raw.team.parts).map(([id, part]) => [id, filledPart(part)]);
  return { ...raw, team: { ...raw.team, parts: Object.fromEntries(parts) } };
}

function filledPart(part: unknown): unknown {
  if (!isObject(part) || !Array.isArray(part.adjusters)) return part;
  return { ...part, adjusters: part.adjusters.map(filledAdjuster) };
}

function filledAdjuster(adjuster: unknown): unknown {
  if (!isObject(adjuster)) return adjuster;
  const kind = adjusterKinds.find((known) => known === adjuster.kind);
  const unit = adjuster.unit;
  const sizes = kind && typeof unit === "string" && isUnit(unit) ? defaultSizes(kind, unit) : undefined;
  return sizes ? { ...sizes, ...adjuster } : adjuster;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
