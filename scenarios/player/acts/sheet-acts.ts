/** Acts on a bike that follow the setup sheet. */

import { DEFAULT_PUMP } from "#core/advice/bench-operations.ts";
import { benchReading } from "#core/advice/bench-reading.ts";
import { benchSequence } from "#core/advice/bench-sequence.ts";
import { settable } from "#core/advice/limits.ts";
import type { Cause } from "#core/ledger/cause.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import { benchReadings } from "#core/planning/bench-readings.ts";
import { describeEntryProblem, settingEntries } from "#core/planning/entries.ts";
import { describeSheetProblem, type SetupSheet, type SheetRow, setupSheet } from "#core/planning/setup-sheet.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import type { StepOf } from "#scenarios/schema/step.ts";
import { type ActResult, type Desk, refused, writeAll } from "./act.ts";

type SheetStep = StepOf<"put on the bike" | "back to weekend setup" | "back to baseline">;

/** Sets what a sheet asks for, one adjuster after the other in the bench sequence. */
export function followSheet(desk: Desk, step: SheetStep): ActResult {
  const found = setupSheet(desk.device.ledger, desk.weekendId, step.session, step.rider);
  if (!found.ok) return refused(describeSheetProblem(found.problem));
  const { sheet } = found;
  const rows = sheet.rows.filter(({ path }) => step.adjusters?.includes(path) ?? true);
  const disputed = rows.find((row) => row.state === "disputed");
  if (disputed) return refused(`${disputed.path} is in dispute: somebody has to look at the bike first.`);
  const target: Partial<Record<AdjusterPath, TypedQuantity>> = {};
  for (const row of rows) {
    const value = targetOf(step, sheet, row);
    if (value) target[row.path] = value;
    else if (step.adjusters)
      return refused(row.problems.join(" ") || `${row.path} is ${row.state}: it stays as it is.`);
  }
  const onTheBike = benchReadings(sheet.mounted, settingsOnBike(desk.device.ledger, sheet.mounted), sheet.setup.bench);
  const sequence = benchSequence(sheet.mounted, onTheBike, target, { bench: sheet.setup.bench, pump: DEFAULT_PUMP });
  if (sequence.blocked.length > 0) return refused(sequence.blocked.join(" "));
  if (sequence.steps.length === 0) return refused("There is nothing to set: the bike is so already.");
  const entries: WriteEntry[] = [];
  let state: SetupValues = onTheBike;
  for (const { path, to } of sequence.steps) {
    const occasion = {
      mounted: sheet.mounted,
      weekendId: desk.weekendId,
      sessionId: step.session,
      heldAt: sheet.setup.bench,
      onTheBike: state,
    };
    const settings = settingEntries(occasion, { [path]: to }, causeOf(step, sheet));
    if (!settings.ok) return refused(describeEntryProblem(settings.problem));
    entries.push(...settings.entries);
    state = { ...state, [path]: to };
  }
  return writeAll(desk, entries);
}

function targetOf(step: SheetStep, { setup }: SetupSheet, row: SheetRow): TypedQuantity | undefined {
  switch (step.do) {
    case "put on the bike":
      return row.state === "to set" ? row.bench : undefined;
    case "back to weekend setup":
      return row.bench;
    case "back to baseline":
      return row.baseline && settable(row.found, benchReading(row.baseline, setup.course, setup.bench).value);
  }
}

/** Going back to the baseline says so; all else on the sheet follows from the course and the conditions. */
function causeOf(step: SheetStep, { setup }: SetupSheet): Cause {
  return step.do === "back to baseline"
    ? { type: "own baseline", courseTypes: setup.basis.shares.map(({ type }) => type) }
    : { type: "conditions", session: step.session };
}
