/**
 * The setup of one bike as what another would get of it: value by value, judged by the other bike's limits, with what
 * differs between the two named. Nothing is clamped, and nothing is turned into what it might have to be: where the same
 * number makes another spring, the row says that the sag has to be measured.
 */
import { DEFAULT_PUMP } from "#core/advice/bench-operations.ts";
import { type BenchSequence, benchSequence } from "#core/advice/bench-sequence.ts";
import { checkValue, type LimitProblem } from "#core/advice/limits.ts";
import type { Current } from "#core/ledger/ledger.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import { dimensionOf, type TypedQuantity } from "#core/quantity/unit.ts";
import { type AdjusterPath, adjusterPaths, isDamperAdjuster } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { ends, type Place, suspensionOf } from "#core/team/place.ts";
import { causeOfProvenance } from "#core/team/provenance.ts";
import { type MountedAdjuster, mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { settingKey, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { benchReadings } from "./bench-readings.ts";
import { changesTheSpring, type PartDifference, partDifferences } from "./part-differences.ts";
import { type SameSag, sameSag } from "./same-sag.ts";

/** How the adjuster of one bike differs from that of the other, in each one's own unit. */
export type AdjusterDifference =
  | {
      readonly type: "range";
      readonly from: readonly [TypedQuantity, TypedQuantity];
      readonly to: readonly [TypedQuantity, TypedQuantity];
    }
  | { readonly type: "step"; readonly from: TypedQuantity; readonly to: TypedQuantity }
  /** Relative change of damping per click; undefined while it was not measured. */
  | { readonly type: "per click"; readonly from: number | undefined; readonly to: number | undefined };

/**
 * What becomes of one value:
 * - "copied": it keeps the other bike's limits
 * - "same": the other bike has it already
 * - "refused": a limit of the other bike does not allow it
 * - "no adjuster": the other bike has none of this kind there
 * - "only there": the first bike has none of this kind, so that the other one's stays as it is
 * - "in dispute": nobody knows what is on the first bike
 * - "not known": nothing was written for the first bike
 */
export type CopyOutcome =
  | { readonly type: "copied" }
  | { readonly type: "same" }
  | { readonly type: "refused"; readonly problem: LimitProblem }
  | { readonly type: "no adjuster" }
  | { readonly type: "only there" }
  | { readonly type: "in dispute" }
  | { readonly type: "not known" };

export interface CopyRow {
  readonly path: AdjusterPath;
  /** The value to copy: as it reads at the bench, where it is known how that is. */
  readonly value: TypedQuantity | undefined;
  /** What the other bike has now; "in dispute" when nobody knows. */
  readonly now: TypedQuantity | "in dispute" | undefined;
  readonly outcome: CopyOutcome;
  readonly differences: readonly AdjusterDifference[];
  /** The rider said so and no mechanic has seen it. */
  readonly reported: boolean;
  /**
   * What the same number does not mean there: "sag" when it makes another spring, "damping" when the damper is another
   * one, so that the same clicks are another damping.
   */
  readonly measure: "sag" | "damping" | undefined;
}

export interface SetupCopy {
  readonly differences: readonly PartDifference[];
  /** Every adjuster that one of the two bikes has, fork first. */
  readonly rows: readonly CopyRow[];
  /** For an end whose spring differs: what would give the same share of the stroke as sag. Rough, and never written. */
  readonly sameSag: readonly SameSag[];
  /** The order in which to set what can be set; undefined while the bench is not known. */
  readonly sequence: BenchSequence | undefined;
}

/** One bike of a copy, with what is set on it. */
export interface BikeSettings {
  readonly mounted: RiderBike;
  readonly settings: ReadonlyMap<AdjusterPath, Current<Setting>>;
}

/** @param bench where the pressures are read now; without it they are taken as they were typed */
export function copySetup(from: BikeSettings, to: BikeSettings, bench: Surroundings | undefined): SetupCopy {
  const read = ({ mounted, settings }: BikeSettings): SetupValues =>
    bench ? benchReadings(mounted, settings, bench) : valuesOnBike(settings);
  const [values, now] = [read(from), read(to)];
  const differences = partDifferences(from.mounted, to.mounted);
  const problems = limitProblems(to.mounted, values, now);
  const rows = adjusterPaths.flatMap((path): readonly CopyRow[] => {
    const here = mountedAdjuster(from.mounted.parts, path);
    const there = mountedAdjuster(to.mounted.parts, path);
    if (!here && !there) return [];
    const value = values[path];
    const current = from.settings.get(path);
    const onOther = to.settings.get(path)?.state === "disputed" ? "in dispute" : now[path];
    return [
      {
        path,
        value,
        now: onOther,
        outcome: outcomeOf({ value, here, there, now: onOther, problem: problems.get(path), current }),
        differences: here && there ? adjusterDifferences(here, there) : [],
        reported: current !== undefined && settledValue(current)?.standing === "reported",
        measure: here && there && measureOf(here, there, differences),
      },
    ];
  });
  const copied: SetupValues = Object.fromEntries(
    rows.flatMap(({ path, value, outcome }) => (outcome.type === "copied" ? [[path, value]] : [])),
  );
  const after: SetupValues = { ...now, ...copied };
  const estimates = ends.flatMap((end) => {
    const isOther = differences.some((difference) => changesTheSpring({ difference, place: suspensionOf(end) }));
    if (!bench || !isOther) return [];
    return sameSag(end, { mounted: from.mounted, values }, { mounted: to.mounted, values: after }, bench) ?? [];
  });
  const sequence = bench && benchSequence(to.mounted, now, copied, { bench, pump: DEFAULT_PUMP });
  return { differences, rows, sameSag: estimates, sequence };
}

/** The steps that a copy has, as one batch: the other bike has them when somebody has done them. */
export function copyEntries(
  copy: SetupCopy,
  from: BikeSettings,
  to: RiderBike,
  occasion: { readonly weekendId: string; readonly sessionId?: string; readonly bench: Surroundings },
): readonly WriteEntry[] {
  const { weekendId, sessionId, bench } = occasion;
  return (copy.sequence?.steps ?? []).flatMap(({ path, to: quantity }) => {
    const head = from.settings.get(path);
    const record = head?.state === "settled" ? head.heads[0]?.id : undefined;
    if (record === undefined) return [];
    const setting: Setting = {
      quantity,
      standing: "on the bike",
      weekend: weekendId,
      ...(sessionId !== undefined && { session: sessionId }),
      heldAt: bench,
    };
    const cause = causeOfProvenance({ type: "copy", bike: from.mounted.bikeId, record });
    return [{ kind: settingKind, key: settingKey(to.riderId, to.bikeId, path), value: setting, cause }];
  });
}

/**
 * The limits that values would break on the other bike. A value that is refused leaves what is there in place, so the
 * others are judged again beside that, until no more are refused.
 */
function limitProblems(to: RiderBike, values: SetupValues, now: SetupValues): ReadonlyMap<AdjusterPath, LimitProblem> {
  const problems = new Map<AdjusterPath, LimitProblem>();
  for (;;) {
    const kept = Object.entries(values).filter(([path]) => !problems.has(path as AdjusterPath)) as [
      AdjusterPath,
      TypedQuantity,
    ][];
    const after: SetupValues = { ...now, ...Object.fromEntries(kept) };
    const found = kept.flatMap(([path, value]): readonly [AdjusterPath, LimitProblem][] => {
      const problem = checkValue(to, path, value, after);
      return problem ? [[path, problem]] : [];
    });
    if (found.length === 0) return problems;
    for (const [path, problem] of found) problems.set(path, problem);
  }
}

function outcomeOf(facts: {
  readonly value: TypedQuantity | undefined;
  readonly here: MountedAdjuster | undefined;
  readonly there: MountedAdjuster | undefined;
  readonly now: CopyRow["now"];
  readonly problem: LimitProblem | undefined;
  readonly current: Current<Setting> | undefined;
}): CopyOutcome {
  const { value, here, there, now, problem, current } = facts;
  if (!here) return { type: "only there" };
  if (!there) return { type: "no adjuster" };
  if (current?.state === "disputed") return { type: "in dispute" };
  if (!value) return { type: "not known" };
  if (problem) return { type: "refused", problem };
  const isThere = now !== undefined && now !== "in dispute" && now.value === value.value && now.unit === value.unit;
  return { type: isThere ? "same" : "copied" };
}

function adjusterDifferences(
  { adjuster: here }: MountedAdjuster,
  { adjuster: there }: MountedAdjuster,
): readonly AdjusterDifference[] {
  const found: AdjusterDifference[] = [];
  const inUnit = (value: number, { unit }: typeof here): TypedQuantity => ({ value, unit });
  const rangeOf = (of: typeof here): readonly [TypedQuantity, TypedQuantity] => [
    inUnit(of.minimum, of),
    inUnit(of.maximum, of),
  ];
  if (here.unit !== there.unit || here.minimum !== there.minimum || here.maximum !== there.maximum) {
    found.push({ type: "range", from: rangeOf(here), to: rangeOf(there) });
  }
  if (here.unit !== there.unit || here.step !== there.step) {
    found.push({ type: "step", from: inUnit(here.step, here), to: inUnit(there.step, there) });
  }
  if (here.perClick !== there.perClick) found.push({ type: "per click", from: here.perClick, to: there.perClick });
  return found;
}

function measureOf(
  here: MountedAdjuster,
  there: MountedAdjuster,
  differences: readonly PartDifference[],
): CopyRow["measure"] {
  const { place } = here;
  if (isDamperAdjuster(here.adjuster.kind)) {
    const isAnother = differences.some((difference) => isAnotherPart(difference, place));
    return isAnother ||
      here.adjuster.maximum !== there.adjuster.maximum ||
      here.adjuster.perClick !== there.adjuster.perClick
      ? "damping"
      : undefined;
  }
  const isSpring = here.part.archetype !== "tyre" && dimensionOf(here.adjuster.unit) !== "clicks";
  return isSpring && differences.some((difference) => changesTheSpring({ difference, place })) ? "sag" : undefined;
}

/** Two parts of one make bear the names of their riders, so that a name tells nothing of a damper. */
function isAnotherPart(difference: PartDifference, place: Place): boolean {
  return difference.place === place && (difference.type === "archetype" || difference.type === "dimension");
}
