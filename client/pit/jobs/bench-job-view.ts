/** What is to set on a bike, in words, and the touch that says that it is done. */
import { jobQueue as words } from "#client/text/job-queue.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { BenchStep } from "#core/advice/bench-sequence.ts";
import type { Cause } from "#core/ledger/cause.ts";
import { type Occasion, settingEntries } from "#core/planning/entries.ts";
import type { ChangeJob, PressureJob } from "#core/planning/jobs/job.ts";
import type { SetupSheet } from "#core/planning/setup-sheet.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { tickEntries } from "../bench-entries.ts";
import { valueText } from "../names.ts";
import { benchOccasion } from "../occasion.ts";
import { riderPlace } from "./job-place.ts";
import { type JobContext, type TouchResult, writeEntries } from "./job-touch.ts";
import type { JobContent } from "./job-view.ts";

export function changeView(context: JobContext, { sheet, sequence }: ChangeJob): JobContent {
  const { steps, blocked } = sequence;
  const write = () => writeEntries(context, tickEntries(sheet, occasionOf(context, sheet), steps));
  const touch = { id: "all", label: words.change.touch, said: words.change.said(steps.length), write };
  return {
    what: words.change.what(sheet.rows.filter(({ state }) => state === "to set").length),
    why: blocked.length > 0 ? words.change.blocked : words.change.why(sheet.session.session.name),
    steps: steps.map(stepLine),
    touches: blocked.length > 0 || steps.length === 0 ? [] : [touch],
    place: { label: words.atBench, path: riderPlace(sheet.mounted.riderId) },
  };
}

export function pressureView(context: JobContext, job: PressureJob): JobContent {
  const { sheet, sequence } = job;
  const { steps, blocked } = sequence;
  const { session, setup } = sheet;
  const [air, bench] = [formatQuantity(setup.course.temperature), formatQuantity(setup.bench.temperature)];
  const touch = {
    id: "all",
    label: words.pressure.touch,
    said: words.pressure.said(steps.length),
    write: () => writePressures(context, job),
  };
  return {
    what: words.pressure.what(steps.length),
    why: blocked.length > 0 ? words.change.blocked : words.pressure.why(session.session.name, air, bench),
    steps: steps.map(stepLine),
    touches: blocked.length > 0 ? [] : [touch],
    place: { label: words.atBench, path: riderPlace(sheet.mounted.riderId) },
  };
}

function writePressures(context: JobContext, { sheet, sequence, chosen }: PressureJob): TouchResult {
  const { session } = sheet;
  const values = Object.fromEntries(sequence.steps.map(({ path, to }) => [path, to]));
  const bySheet: Cause = { type: "conditions", session: session.id };
  const made = settingEntries(occasionOf(context, sheet), values, bySheet);
  if (!made.ok) return writeEntries(context, made);
  // What somebody chose stays chosen: the sheet does not ask for it.
  const byHand: Cause = { type: "by hand", note: words.pressure.note(session.session.name) };
  const isChosen = (key: string) => chosen.some((path) => key.endsWith(`/${path}`));
  const entries = made.entries.map((entry) => (isChosen(entry.key) ? { ...entry, cause: byHand } : entry));
  return writeEntries(context, { ok: true, entries });
}

/** The bench of the session that the sheet is for. */
function occasionOf({ device }: JobContext, { mounted, programme, session }: SetupSheet): Occasion {
  return benchOccasion(mounted, settingsOnBike(device.ledger(), mounted), programme, session.id);
}

function stepLine({ path, from, to }: BenchStep): string {
  return words.step(trade.adjuster(path), from && valueText(from), valueText(to));
}
