/** Baselines that are far from those of the team mates, by spring and pressure per kilogram of rider. */
import { readingAfter } from "#core/advice/bench-reading.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { dimensionOf, fromSi, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { Baseline } from "#core/team/baseline.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import { bikeKind } from "#core/team/record-kinds.ts";
import { knownValue, type MountedAdjuster, mountedAdjusters, partsOn } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { MatrixRow } from "./baseline-review.ts";
import { modifiedZScores, OUTLIER_SCORE } from "./modified-z-scores.ts";

/** Fewer riders than these say nothing about one of them; common practice, no source. */
export const LEAST_RIDERS = 5;

/** Pressures are compared as they would read here, wherever they were found; a choice, any other would do. */
const COMMON_SURROUNDINGS: Surroundings = {
  temperature: { value: 20, unit: "°C" },
  altitude: { value: 0, unit: "m" },
};

export interface BaselineOutlier {
  readonly riderId: string;
  readonly type: CourseType;
  readonly path: AdjusterPath;
  /** The baseline's value for each kilogram of rider, in the adjuster's unit; a pressure as it reads at 20 °C at sea level. */
  readonly perKilogram: TypedQuantity;
  /** The middle of all that are compared, the same way. */
  readonly median: TypedQuantity;
  /** How many riders are compared, this one among them. */
  readonly riders: number;
  readonly side: "high" | "low";
}

/**
 * Every value in force that lies far from the others: for each pressure and spring rate, of the riders with the same
 * course type and the same kind of part (place and archetype) at that place. The mass is the one that the baseline was
 * found with. A value is named where its modified z-score is beyond {@link OUTLIER_SCORE} and its rider would feel the
 * difference from the middle (the adjuster's felt step). Nothing is said of fewer than {@link LEAST_RIDERS} riders, and of
 * more than half of equal ones.
 */
export function baselineOutliers(ledger: Ledger, rows: readonly MatrixRow[]): readonly BaselineOutlier[] {
  return courseTypes.flatMap((type) => {
    const groups = new Map<string, Comparable[]>();
    for (const { mounted, cells } of rows) {
      const { baseline } = cells[type];
      if (!baseline) continue;
      for (const found of comparableAdjusters(ledger, baseline)) {
        const comparable = comparableOf(mounted.riderId, found, baseline);
        const name = `${found.path} ${found.part.archetype}`;
        if (comparable) groups.set(name, [...(groups.get(name) ?? []), comparable]);
      }
    }
    return [...groups.values()].flatMap((group) => outliersOf(type, group));
  });
}

interface Comparable {
  readonly riderId: string;
  readonly found: MountedAdjuster;
  /** Pascals or newtons a metre, for each kilogram of rider. */
  readonly perKilogram: number;
  readonly kilograms: number;
}

function comparableAdjusters(ledger: Ledger, { bike: bikeId }: Baseline): readonly MountedAdjuster[] {
  const bike = knownValue(ledger, bikeKind, bikeId);
  if (!bike) return [];
  return mountedAdjusters(partsOn(ledger, bikeId, bike)).filter(({ adjuster }) =>
    ["pressure", "spring rate"].includes(dimensionOf(adjuster.unit)),
  );
}

function comparableOf(riderId: string, found: MountedAdjuster, baseline: Baseline): Comparable | undefined {
  const value = baseline.values[found.path];
  if (!value) return undefined;
  const kilograms = toSi(baseline.mass);
  const there = toSi(readingAfter(value, baseline.heldAt, COMMON_SURROUNDINGS));
  return { riderId, found, kilograms, perKilogram: there / kilograms };
}

function outliersOf(type: CourseType, group: readonly Comparable[]): readonly BaselineOutlier[] {
  if (group.length < LEAST_RIDERS) return [];
  const judged = modifiedZScores(group.map(({ perKilogram }) => perKilogram));
  if (!judged) return [];
  return group.flatMap(({ riderId, found, perKilogram, kilograms }, index): readonly BaselineOutlier[] => {
    const score = judged.scores[index] ?? 0;
    const { unit, felt } = found.adjuster;
    const inUnit = (si: number): TypedQuantity => fromSi(si, unit);
    const off = inUnit(Math.abs(perKilogram - judged.median) * kilograms).value;
    if (Math.abs(score) <= OUTLIER_SCORE || off < felt) return [];
    return [
      {
        riderId,
        type,
        path: found.path,
        perKilogram: inUnit(perKilogram),
        median: inUnit(judged.median),
        riders: group.length,
        side: score > 0 ? "high" : "low",
      },
    ];
  });
}
