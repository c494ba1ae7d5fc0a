/**
 * The order in which to put settings on a bike. It is found by a search that
 * keeps every limit after every single step: above all, the secondary chamber
 * stays above the main one throughout, whether both go up or both go down.
 *
 * Preference, common practice, no source: what opens the part first (its air is
 * released for it); then the chamber with the higher pressure; then preload and
 * dampers, which need the spring as it will be; the tyres last.
 */
import { convert, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { type AdjusterPath, isDamperAdjuster } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type Place, places } from "#core/team/place.ts";
import { type MountedAdjuster, mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import { type BenchOperation, type BenchWork, benchOperations } from "./bench-operations.ts";
import { checkValue, type LimitProblem } from "./limits.ts";

export interface BenchStep {
  readonly path: AdjusterPath;
  /** Absent while nothing is known of what is on the bike. */
  readonly from?: TypedQuantity;
  readonly to: TypedQuantity;
  /** What to mind at this step, as closed list; the screen has the words. */
  readonly cautions: readonly BenchCaution[];
  /** What the hands do, in order, with the readings to expect. */
  readonly operations: readonly BenchOperation[];
}

export const benchCautions = [
  "gas under pressure",
  "release all air before opening",
  "spring under load",
  "count clicks from closed",
  "lower of tyre and rim maximum",
] as const;
export type BenchCaution = (typeof benchCautions)[number];

export interface BenchSequence {
  readonly steps: readonly BenchStep[];
  /** What no order can reach: the limit that forbids it. Nothing of that part is in the steps. */
  readonly blocked: readonly LimitProblem[];
}

/**
 * The steps from what is on the bike to `target`, readings at the bench. Adjusters that are there already are left out;
 * so is whatever the target does not name.
 */
export function benchSequence(
  mounted: RiderBike,
  onTheBike: SetupValues,
  target: SetupValues,
  work: BenchWork,
): BenchSequence {
  const steps: BenchStep[] = [];
  const blocked: LimitProblem[] = [];
  for (const place of places) {
    const open = mountedAdjusters(mounted.parts).filter(
      (found) => found.place === place && differs(found, onTheBike[found.path], target[found.path]),
    );
    const found = orderFor(mounted, place, open, onTheBike, target, work);
    steps.push(...found.steps);
    if (found.blocked) blocked.push(found.blocked);
  }
  return { steps, blocked };
}

function differs(found: MountedAdjuster, now: TypedQuantity | undefined, wanted: TypedQuantity | undefined): boolean {
  if (!wanted) return false;
  if (!now) return true;
  const { unit, step } = found.adjuster;
  return Math.abs(convert(now, unit).value - convert(wanted, unit).value) >= step / 2;
}

/** Depth-first over the orders in preference; a part has few adjusters, and only pressures restrict each other. */
function orderFor(
  mounted: RiderBike,
  place: Place,
  open: readonly MountedAdjuster[],
  onTheBike: SetupValues,
  target: SetupValues,
  work: BenchWork,
): { readonly steps: readonly BenchStep[]; readonly blocked?: LimitProblem } {
  const preferred = [...open].sort((a, b) => rank(a) - rank(b) || pressureOf(b, target) - pressureOf(a, target));
  let obstacle: LimitProblem | undefined;
  const search = (left: readonly MountedAdjuster[], state: SetupValues): readonly BenchStep[] | undefined => {
    if (left.length === 0) return [];
    for (const found of left) {
      const to = target[found.path];
      if (!to) continue;
      const problem = checkValue(mounted, found.path, to, state);
      if (problem) {
        obstacle ??= problem;
        continue;
      }
      const others = left.filter((other) => other !== found);
      const rest = search(others, { ...state, [found.path]: to });
      if (rest) return [stepOf(found, to, state, work, others.some(isChamber)), ...rest];
    }
    return undefined;
  };
  const steps = search(preferred, partState(place, onTheBike));
  if (steps) return { steps };
  // The search gives up only where a value of its own was refused.
  if (!obstacle) throw new Error("No order was found, and no limit forbids one.");
  return { steps: [], blocked: obstacle };
}

function isChamber({ adjuster: { kind } }: MountedAdjuster): boolean {
  return kind === "main-pressure" || kind === "secondary-pressure";
}

function stepOf(
  found: MountedAdjuster,
  to: TypedQuantity,
  state: SetupValues,
  work: BenchWork,
  moreToFill: boolean,
): BenchStep {
  const from = state[found.path];
  const operations = benchOperations(found, from, to, state, work, moreToFill);
  return { path: found.path, ...(from && { from }), to, cautions: cautionsFor(found), operations };
}

function partState(place: Place, values: SetupValues): SetupValues {
  return Object.fromEntries(Object.entries(values).filter(([path]) => path.startsWith(`${place}.`)));
}

function rank(found: MountedAdjuster): number {
  const { kind } = found.adjuster;
  if (kind === "volume-spacers" || kind === "spring-rate") return 0;
  if (isChamber(found)) return 1;
  return kind === "preload" ? 2 : isDamperAdjuster(kind) ? 3 : 4;
}

function pressureOf(found: MountedAdjuster, target: SetupValues): number {
  const value = target[found.path];
  return value ? toSi(value) : 0;
}

function cautionsFor({ part, adjuster: { kind } }: MountedAdjuster): readonly BenchCaution[] {
  switch (kind) {
    case "main-pressure":
    case "secondary-pressure":
      return ["gas under pressure"];
    case "volume-spacers":
      return ["release all air before opening", "gas under pressure"];
    case "spring-rate":
    case "preload":
      return ["spring under load"];
    case "tyre-pressure":
      return part.archetype === "tyre" ? ["lower of tyre and rim maximum"] : [];
    case "rebound":
    case "low-speed-compression":
    case "high-speed-compression":
      return ["count clicks from closed"];
  }
}
