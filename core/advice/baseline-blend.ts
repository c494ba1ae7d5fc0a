/**
 * The start of every weekend's setup: the rider's own baselines, blended by how
 * much of the course is steep, jumpy and wet.
 *
 *   value = Σ share(type) · baseline(type) / Σ share(type), over the types that have a baseline
 *
 * A pressure is blended in gauge pressure: it is linear in what it is blended
 * from, whatever the unit. Common practice, no source: a mechanic on a mixed
 * course sets "between the two".
 */
import { convert, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import type { Baseline } from "#core/team/baseline.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import { type MountedAdjuster, mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import type { CourseMix } from "#core/weekend/course.ts";
import type { Draft } from "./correction.ts";
import { decimalsOf } from "./limits.ts";
import type { Because, Reason } from "./reason.ts";

export type Baselines = Readonly<Partial<Record<CourseType, Baseline>>>;

/** A course type's part in a blend; the shares of a blend add up to 1. */
export interface BlendShare {
  readonly type: CourseType;
  readonly share: number;
  readonly baseline: Baseline;
}

/** Where a blended setup stands: which baselines, with what share, and which types had none. */
export interface BlendBasis {
  readonly shares: readonly BlendShare[];
  readonly missing: readonly { readonly type: CourseType; readonly share: number }[];
}

/**
 * The baselines of `bikeId` that a course of this mix draws on. With no baseline for any type of the course, those for
 * the other types stand in, in equal parts: a rider's own setup for another course beats none.
 */
export function blendBasis(baselines: Baselines, bikeId: string, mix: CourseMix): BlendBasis {
  const own = courseTypes.flatMap((type) => {
    const baseline = baselines[type];
    return baseline?.bike === bikeId ? [{ type, share: mix[type], baseline }] : [];
  });
  const missing = courseTypes
    .filter((type) => mix[type] > 0 && !own.some((entry) => entry.type === type))
    .map((type) => ({ type, share: mix[type] }));
  const onCourse = own.filter((entry) => entry.share > 0);
  const used = onCourse.length > 0 ? onCourse : own.map((entry) => ({ ...entry, share: 1 }));
  const total = used.reduce((sum, entry) => sum + entry.share, 0);
  return { shares: used.map((entry) => ({ ...entry, share: entry.share / total })), missing };
}

/** The blended value of one adjuster, in the adjuster's unit and not yet rounded; undefined when no baseline has it. */
function blendValue(
  basis: BlendBasis,
  found: MountedAdjuster,
): { readonly value: number; readonly reason: Reason } | undefined {
  const { unit } = found.adjuster;
  const held = basis.shares.flatMap((share) => {
    const value = share.baseline.values[found.path];
    return value ? [{ ...share, value: convert(value, unit).value }] : [];
  });
  const total = held.reduce((sum, entry) => sum + entry.share, 0);
  const [only] = held;
  if (!only || total <= 0) return undefined;
  const value = held.reduce((sum, entry) => sum + (entry.share / total) * entry.value, 0);
  const shown = ({ value: exact }: { readonly value: number }): TypedQuantity => ({ value: tidy(exact, found), unit });
  const because: Because =
    held.length === 1
      ? { type: "own baseline", courseType: only.type, value: shown(only) }
      : {
          type: "blend",
          parts: held.map((entry) => ({
            courseType: entry.type,
            percent: Math.round((entry.share / total) * 100),
            value: shown(entry),
          })),
        };
  return because.type === "blend"
    ? { value, reason: { rule: "blend", because, provenance: "blend of own baselines" } }
    : { value, reason: { rule: "own-baseline", because, provenance: "own baseline" } };
}

/** The blended value of every adjuster with its reason; an adjuster that no baseline holds is absent. */
export function blendedDraft(basis: BlendBasis, parts: RiderBike["parts"]): Draft {
  const draft: Draft = { values: new Map(), reasons: new Map() };
  for (const found of mountedAdjusters(parts)) {
    const blend = blendValue(basis, found);
    if (!blend) continue;
    draft.values.set(found.path, blend.value);
    draft.reasons.set(found.path, [blend.reason]);
  }
  return draft;
}

/** Where the blended pressures hold: the altitude of each baseline by its share. Temperature needs no blending: a pressure is a reading while riding. */
export function blendedAltitude(basis: BlendBasis): TypedQuantity | undefined {
  if (basis.shares.length === 0) return undefined;
  const metres = basis.shares.reduce((sum, { share, baseline }) => sum + share * toSi(baseline.heldAt.altitude), 0);
  return { value: metres, unit: "m" };
}

/** The rider's mass at the baselines, by their shares, in kg. */
export function blendedMass(basis: BlendBasis): TypedQuantity | undefined {
  if (basis.shares.length === 0) return undefined;
  const kilograms = basis.shares.reduce((sum, { share, baseline }) => sum + share * toSi(baseline.mass), 0);
  return { value: kilograms, unit: "kg" };
}

function tidy(value: number, found: MountedAdjuster): number {
  return Number(value.toFixed(Math.max(1, decimalsOf(found))));
}
