/** Acts around a run: logging it, and answering it. */

import type { Adjustment } from "#core/advice/adjustment.ts";
import { forceCurves } from "#core/advice/force-curves.ts";
import { describeHindrance } from "#core/advice/hindrance.ts";
import { ruleWords } from "#core/advice/rule-words.ts";
import { benchReadings } from "#core/planning/bench-readings.ts";
import { adjustmentEntries, decisionEntry, describeEntryProblem } from "#core/planning/entries.ts";
import { adviceOnRun, describeSheetProblem } from "#core/planning/run-advice.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import type { StepOf } from "#scenarios/schema/step.ts";
import { type ActResult, type Desk, mountedOf, outcomeOf, refused, writeAll } from "./act.ts";
import { lastRun, noRun } from "./last-run.ts";
import { benchOf } from "./surroundings.ts";

/** Enough for the eye: a point for each 5 % of the stroke. */
const CURVE_POINTS = 21;

export function logRun(desk: Desk, step: StepOf<"log a run">): ActResult {
  const { device, weekendId } = desk;
  const mounted = mountedOf(desk, step.rider);
  const settings = settingsOnBike(device.ledger, mounted);
  const setup = [...settings.values()].flatMap((current) =>
    current.state === "settled" ? current.heads.slice(0, 1).map(({ id }) => id) : [],
  );
  const run = { ...step.run, bike: mounted.bikeId, weekend: weekendId, session: step.session, setup };
  return outcomeOf(device.writer.set(runKind, `${step.rider}/${device.newId()}`, run));
}

export function takeAdjustment(desk: Desk, step: StepOf<"take an adjustment">): ActResult {
  const logged = lastRun(desk, step.rider);
  if (!logged) return refused(noRun);
  const advised = adviceOnRun(desk.device.ledger, logged);
  if (!advised.ok) return refused(describeSheetProblem(advised.problem));
  const { adjustments, unanswered, questions } = advised.advice;
  const adjustment = chosen(adjustments, step);
  if (!adjustment) {
    const offered = adjustments.map(({ rule }) => rule).join(", ") || "none";
    const why = [
      ...unanswered.flatMap((entry) => entry.why.map((hindrance) => describeHindrance(hindrance))),
      ...questions.flatMap(({ rule }) => ruleWords(rule)?.reason ?? []),
    ];
    return refused([`There is no such adjustment for the rider's last run; there are: ${offered}.`, ...why].join(" "));
  }
  const settings = settingsOnBike(desk.device.ledger, advised.mounted);
  const heldAt = benchOf(desk, logged.run.session);
  const occasion = {
    mounted: advised.mounted,
    weekendId: desk.weekendId,
    sessionId: logged.run.session,
    ...(heldAt && { heldAt }),
    onTheBike: heldAt ? benchReadings(advised.mounted, settings, heldAt) : valuesOnBike(settings),
  };
  const curves = forceCurves(advised.input, adjustment, CURVE_POINTS);
  const entries = adjustmentEntries(occasion, logged, adjustment);
  if (!entries.ok) return refused(describeEntryProblem(entries.problem));
  const written = writeAll(desk, entries.entries);
  return written.ok ? { ok: true, taken: { riderId: step.rider, runId: logged.id, adjustment, curves } } : written;
}

export function leaveAsItIs(desk: Desk, step: StepOf<"leave as it is">): ActResult {
  const logged = lastRun(desk, step.rider);
  return logged ? writeAll(desk, [decisionEntry(logged, "left as it is")]) : refused(noRun);
}

function chosen(adjustments: readonly Adjustment[], step: StepOf<"take an adjustment">): Adjustment | undefined {
  const named = adjustments.filter(({ rule }) => step.rule === undefined || rule === step.rule);
  return named[(step.place ?? 1) - 1];
}
