/** What the manager reviews: the matrix of baselines, and the weekend's setup as a new one. */

import { nameOfPath } from "#core/advice/adjuster-names.ts";
import { settable } from "#core/advice/limits.ts";
import { ridingValues } from "#core/advice/riding-values.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { Baseline } from "#core/team/baseline.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import type { Ground } from "#core/team/ground.ts";
import { baselineKind } from "#core/team/record-kinds.ts";
import {
  type MountedAdjuster,
  mountedAdjuster,
  mountedAdjusters,
  type RiderBike,
  riderBikes,
} from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { riddenSag } from "./ridden-sag.ts";

export interface MatrixRow {
  readonly mounted: RiderBike;
  readonly cells: Readonly<Record<CourseType, MatrixCell>>;
}

export interface MatrixCell {
  /** Absent while there is none, or while two people have approved different ones. */
  readonly baseline: Baseline | undefined;
  /** The record that it is in force by. */
  readonly current: LedgerRecord<Baseline> | undefined;
  readonly disputed: boolean;
  /** All versions, oldest first. */
  readonly versions: readonly LedgerRecord<Baseline>[];
}

/** Riders by course types, with every version of every baseline. */
export function baselineMatrix(ledger: Ledger): readonly MatrixRow[] {
  return riderBikes(ledger).map((mounted) => {
    const cell = (type: CourseType): MatrixCell => {
      const key = `${mounted.riderId}/${type}`;
      const current = ledger.current(baselineKind, key);
      return {
        baseline: settledValue(current),
        current: current.state === "settled" ? current.heads[0] : undefined,
        disputed: current.state === "disputed",
        versions: ledger.history(baselineKind, key),
      };
    };
    return { mounted, cells: { steep: cell("steep"), jumpy: cell("jumpy"), wet: cell("wet") } };
  });
}

export interface BaselineDifference {
  readonly found: MountedAdjuster;
  readonly path: AdjusterPath;
  readonly baseline: TypedQuantity | undefined;
  readonly onTheBike: TypedQuantity | undefined;
  /** On the bike less baseline, in the adjuster's unit; absent when one of the two is not known. */
  readonly difference: TypedQuantity | undefined;
}

export interface BaselineProposal {
  readonly type: CourseType;
  readonly differences: readonly BaselineDifference[];
  readonly entry: WriteEntry<Baseline>;
}

/** Why the setup on the bike cannot become a baseline yet. */
export type ProposalObstacle =
  | { readonly type: "disputed" | "reported"; readonly path: AdjusterPath }
  | { readonly type: "nothing known" };

/** One sentence for a person. */
export function describeProposalObstacle(obstacle: ProposalObstacle): string {
  switch (obstacle.type) {
    case "disputed":
      return `The ${nameOfPath(obstacle.path)} is in dispute: somebody has to look at the bike first.`;
    case "reported":
      return `The ${nameOfPath(obstacle.path)} was reported by the rider and no mechanic has confirmed it yet.`;
    case "nothing known":
      return "Nothing is known to be on the bike.";
  }
}

export type ProposalResult =
  | { readonly ok: true; readonly proposal: BaselineProposal }
  | { readonly ok: false; readonly why: readonly ProposalObstacle[] };

/**
 * What is on the bike now as the new baseline of its rider for `type`, at the temperature and altitude of `ride`:
 * pressures that were set at the bench are carried to the ride, where a baseline holds. The sag goes along where the
 * weekend's latest measurement was made with what is on the bike now, and the `ground` that the values allow for.
 */
export function proposeBaseline(
  ledger: Ledger,
  mounted: RiderBike,
  type: CourseType,
  weekendId: string,
  ride: Surroundings,
  ground?: Ground,
): ProposalResult {
  const settings = settingsOnBike(ledger, mounted);
  const settled = new Map<AdjusterPath, Setting>();
  const why: ProposalObstacle[] = [];
  for (const [path, current] of settings) {
    const setting = settledValue(current);
    if (current.state === "disputed") why.push({ type: "disputed", path });
    else if (setting?.standing === "reported") why.push({ type: "reported", path });
    else if (setting) settled.set(path, setting);
  }
  if (settled.size === 0) why.push({ type: "nothing known" });
  if (why.length > 0) return { ok: false, why };
  const previous = settledValue(ledger.current(baselineKind, `${mounted.riderId}/${type}`));
  const values: Partial<Record<AdjusterPath, TypedQuantity>> = { ...previous?.values };
  for (const [path, value] of Object.entries(ridingValues(mounted, settled, ride)) as [AdjusterPath, TypedQuantity][]) {
    const found = mountedAdjuster(mounted.parts, path);
    if (found) values[path] = settable(found, value.value);
  }
  const sag = riddenSag(ledger, mounted, weekendId);
  const baseline: Baseline = {
    bike: mounted.bikeId,
    values,
    heldAt: ride,
    mass: mounted.rider.mass,
    style: mounted.rider.style ?? "usual",
    ...(ground !== undefined && { ground }),
    ...(Object.keys(sag).length > 0 && { sag }),
    weekend: weekendId,
  };
  return {
    ok: true,
    proposal: {
      type,
      differences: mountedAdjusters(mounted.parts).map((found) => differenceOf(found, previous?.values, values)),
      entry: {
        kind: baselineKind,
        key: `${mounted.riderId}/${type}`,
        value: baseline,
        cause: { type: "approval", weekend: weekendId },
      },
    },
  };
}

/** How two versions of a baseline differ, adjuster by adjuster. */
export function compareBaselines(
  mounted: RiderBike,
  before: Baseline | undefined,
  after: Baseline | undefined,
): readonly BaselineDifference[] {
  return mountedAdjusters(mounted.parts).map((found) => differenceOf(found, before?.values, after?.values));
}

/** The course type that most of a course is of: the one whose baseline a weekend teaches most about. */
export function dominantType(mix: Readonly<Record<CourseType, number>>): CourseType {
  return [...courseTypes].sort((a, b) => mix[b] - mix[a])[0] ?? "steep";
}

function differenceOf(
  found: MountedAdjuster,
  before: Baseline["values"] | undefined,
  after: Baseline["values"] | undefined,
): BaselineDifference {
  const { unit } = found.adjuster;
  const baseline = before?.[found.path];
  const onTheBike = after?.[found.path];
  const difference =
    baseline && onTheBike && settable(found, convert(onTheBike, unit).value - convert(baseline, unit).value);
  return { found, path: found.path, baseline, onTheBike, difference };
}
