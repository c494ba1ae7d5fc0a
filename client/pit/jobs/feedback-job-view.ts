/** What a rider said, or has not said yet, in words, and the touches that answer it. */
import { jobQueue as words } from "#client/text/job-queue.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { Adjustment } from "#core/advice/adjustment.ts";
import { adjustmentEntries, decisionEntry, noRunEntries } from "#core/planning/entries.ts";
import type { DecisionJob, MissingJob } from "#core/planning/jobs/job.ts";
import { adviceOnRun } from "#core/planning/run-advice.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { noRunReasons } from "#core/weekend/no-run.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { causeLine, settingLine } from "../adjustment-text.ts";
import { runName } from "../names.ts";
import { benchOccasion } from "../occasion.ts";
import { riderPlace } from "./job-place.ts";
import { type JobContext, type JobTouch, type TouchResult, writeEntries } from "./job-touch.ts";
import type { JobContent } from "./job-view.ts";

export function decisionView(context: JobContext, { logged }: DecisionJob): JobContent {
  const { device } = context;
  const result = adviceOnRun(device.ledger(), logged);
  const run = runName(device.ledger(), logged);
  const place = { label: words.decide.read, path: riderPlace(logged.riderId, "feedback") };
  const content = { why: words.decide.of(run), steps: [], touches: [], place };
  if (!result.ok) return { ...content, what: words.decide.noSetup };
  const { adjustments, referrals, questions, unanswered } = result.advice;
  // With something to look at or to ask first, no answer is a matter of one touch; nor is one that a rule has and cannot give,
  // as long as nobody knows what is on the bike.
  const isHeld = adjustments.length === 0 && unanswered.length > 0;
  if (isHeld || referrals.length + questions.length > 0) return { ...content, what: words.decide.lookFirst };
  const leave: JobTouch = {
    id: "leave",
    label: words.decide.leave,
    said: words.decide.leftSaid,
    write: () => writeEntries(context, { ok: true, entries: [decisionEntry(logged, "left as it is")] }),
  };
  const [first] = adjustments;
  if (!first) return { ...content, what: words.decide.noAdvice, touches: [leave] };
  return {
    ...content,
    what: settingLine(first.setting),
    why: words.decide.why(run, causeLine(first)),
    touches: [adjustmentTouch(context, logged, result.mounted, first), leave],
  };
}

function adjustmentTouch(context: JobContext, logged: LoggedRun, mounted: RiderBike, adjustment: Adjustment): JobTouch {
  const { path, to } = adjustment.setting;
  const write = (): TouchResult => {
    if (!context.programme) return { ok: false, sentence: words.decide.noSetup };
    const settings = settingsOnBike(context.device.ledger(), mounted);
    const occasion = benchOccasion(mounted, settings, context.programme, logged.run.session);
    return writeEntries(context, adjustmentEntries(occasion, logged, adjustment));
  };
  const value = formatQuantity(to);
  return {
    id: "adjust",
    label: words.decide.put(value),
    said: words.decide.putSaid(trade.adjuster(path), value),
    write,
  };
}

/** The rider is asked for his run, or somebody says that there is none to wait for. */
export function missingView(context: JobContext, job: MissingJob): JobContent {
  const { sessions, riderId } = job;
  const ids = sessions.map(({ id }) => id);
  return {
    what: words.missing.what(sessions.map(({ session }) => session.name).join(", ")),
    why: words.missing.why(sessions.length),
    steps: [],
    touches: noRunReasons.map((reason) => ({
      id: reason,
      label: words.missing.reasons[reason],
      said: words.missing.reasons[reason],
      write: () => writeEntries(context, { ok: true, entries: noRunEntries(job, ids, reason) }),
    })),
    place: { label: words.missing.look, path: riderPlace(riderId, "feedback") },
  };
}
