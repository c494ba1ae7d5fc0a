/** Advice on a run of a rider, put together from the records. */
import type { Advice, AdviceInput, EarlierMove } from "#core/advice/adjustment.ts";
import { adviseOnRun } from "#core/advice/adjustments.ts";
import { type BlendBasis, blendBasis, blendedDraft } from "#core/advice/baseline-blend.ts";
import { roundedValues } from "#core/advice/correction.ts";
import { ridingValues } from "#core/advice/riding-values.ts";
import { baselineSags } from "#core/advice/weekend-setup.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { toSi } from "#core/quantity/unit.ts";
import { baselinesFor, type RiderBike, riderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { changelog } from "#core/weekend/changelog.ts";
import { settingsOnBike, settledSettings } from "#core/weekend/on-the-bike.ts";
import { programme } from "#core/weekend/programme.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { benchReadings } from "./bench-readings.ts";
import { answeredRun } from "./changelog-text.ts";
import { measuredSags } from "./measured-sags.ts";
import { settingsAtRun } from "./settings-at-run.ts";
import { describeSheetProblem, type SheetProblem } from "./setup-sheet.ts";

export type RunAdviceResult =
  | { readonly ok: true; readonly advice: Advice; readonly input: AdviceInput; readonly mounted: RiderBike }
  | { readonly ok: false; readonly problem: SheetProblem };

export { describeSheetProblem };

/**
 * Advice on `logged`, given what is on the rider's bike now and what was on it at the run. The readings that it counts
 * from, and those that it proposes, are at the bench of the run's session.
 */
export function adviceOnRun(ledger: Ledger, logged: LoggedRun): RunAdviceResult {
  const { run, riderId } = logged;
  const mounted = riderBike(ledger, riderId);
  if (!mounted) return { ok: false, problem: { type: "unknown rider", riderId } };
  const plan = programme(ledger, run.weekend);
  if (!plan) return { ok: false, problem: { type: "unknown weekend", weekendId: run.weekend } };
  if (!plan.course) return { ok: false, problem: { type: "no course", weekend: plan.weekend.name } };
  const session = plan.sessions.find((candidate) => candidate.id === run.session);
  if (!session?.conditions) {
    return { ok: false, problem: { type: "no conditions", session: session?.session.name ?? run.session } };
  }
  const ride: Surroundings = { temperature: session.conditions.air, altitude: plan.course.altitude };
  const bench: Surroundings = { ...ride, temperature: session.conditions.bench ?? session.conditions.air };
  const current = settingsOnBike(ledger, mounted);
  const now = settledSettings(current);
  const basis = blendBasis(baselinesFor(ledger, riderId, run.weekend), mounted.bikeId, plan.course.mix);
  const input: AdviceInput = {
    mounted,
    run,
    course: ride,
    onTheBike: benchReadings(mounted, current, bench),
    riding: ridingValues(mounted, now, ride),
    ridingAtRun: ridingValues(mounted, settingsAtRun(ledger, logged, now), ride),
    baseline: roundedValues(mounted, blendedDraft(basis, mounted.parts)),
    baselineSag: baselineSag(basis),
    measuredBefore: {
      front: [...measuredSags(ledger, mounted, "front", logged.id), ...baselineSags(basis, "front")],
      rear: [...measuredSags(ledger, mounted, "rear", logged.id), ...baselineSags(basis, "rear")],
    },
    earlier: earlierMoves(ledger, logged),
  };
  return { ok: true, advice: adviseOnRun(input), input, mounted };
}

/** The sag of the baseline that has the largest share in this weekend's blend, where it was measured. */
function baselineSag({ shares }: BlendBasis): Readonly<Partial<Record<"fork" | "shock", number>>> {
  const sags: Partial<Record<"fork" | "shock", number>> = {};
  for (const { baseline } of [...shares].sort((a, b) => a.share - b.share)) {
    for (const place of ["fork", "shock"] as const) {
      const sag = baseline.sag?.[place];
      if (sag) sags[place] = toSi(sag);
    }
  }
  return sags;
}

/**
 * What was changed on advice this weekend. An answer to this very run that was undone again was a slip of the finger: no
 * run has been ridden on it, so it has not failed.
 */
function earlierMoves(ledger: Ledger, { run, riderId, id }: LoggedRun): readonly EarlierMove[] {
  const log = changelog(ledger, { riderId, weekend: run.weekend });
  const undone = new Set(log.flatMap(({ cause }) => (cause?.type === "revert" ? cause.record : [])));
  return [...log]
    .reverse()
    .filter((change) => !(undone.has(change.id) && answeredRun(change) === id))
    .flatMap(({ cause, path, bikeId }) =>
      cause?.type === "advice" && bikeId === run.bike ? { rule: cause.rule, path, run: cause.run } : [],
    );
}
