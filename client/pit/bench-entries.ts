/** Acts at the bench that take values from the sheet, as entries to write. */

import { DEFAULT_PUMP } from "#core/advice/bench-operations.ts";
import { benchReading } from "#core/advice/bench-reading.ts";
import { type BenchStep, benchSequence } from "#core/advice/bench-sequence.ts";
import { type LimitProblem, settable } from "#core/advice/limits.ts";
import type { Cause } from "#core/ledger/cause.ts";
import { type EntriesResult, type Occasion, settingEntries } from "#core/planning/entries.ts";
import type { SetupSheet, SheetRow } from "#core/planning/setup-sheet.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";

/** What one can go back to: this weekend's setup, or the baselines that it starts from. */
export type GoBackTo = "weekend" | "baseline";

export interface GoBackPlan {
  /** In the safe order; none when all of it is on the bike already. */
  readonly steps: readonly BenchStep[];
  /** What no order can reach: the limits that forbid it. */
  readonly blocked: readonly LimitProblem[];
  /** Adjusters in dispute: somebody has to look at the bike first. */
  readonly leftOut: readonly AdjusterPath[];
}

/** The steps that were done, each with the sheet's value, for the sheet's session. */
export function tickEntries(sheet: SetupSheet, occasion: Occasion, steps: readonly BenchStep[]): EntriesResult {
  return settingEntries(occasion, valuesOf(steps), { type: "conditions", session: sheet.session.id });
}

/** What to set now so that the adjuster of `row` is back; undefined where there is nothing to go back to. */
export function goBackValue(sheet: SetupSheet, row: SheetRow, to: GoBackTo): TypedQuantity | undefined {
  if (to === "weekend") return row.bench;
  if (!row.baseline) return undefined;
  const { course, bench } = sheet.setup;
  return settable(row.found, benchReading(row.baseline, course, bench).value);
}

/** The way back for the whole bike, or for the adjuster at `path` alone. */
export function goBackPlan(sheet: SetupSheet, onTheBike: SetupValues, to: GoBackTo, path?: AdjusterPath): GoBackPlan {
  const target: Partial<Record<AdjusterPath, TypedQuantity>> = {};
  const leftOut: AdjusterPath[] = [];
  for (const row of sheet.rows) {
    if (path !== undefined && path !== row.path) continue;
    const value = goBackValue(sheet, row, to);
    if (!value) continue;
    if (row.state === "disputed") leftOut.push(row.path);
    else target[row.path] = value;
  }
  return {
    ...benchSequence(sheet.mounted, onTheBike, target, { bench: sheet.setup.bench, pump: DEFAULT_PUMP }),
    leftOut,
  };
}

/** The entries of a way back, in the order of its steps; refused as a whole when part of it is blocked. */
export function goBackEntries(sheet: SetupSheet, occasion: Occasion, to: GoBackTo, path?: AdjusterPath): EntriesResult {
  const plan = goBackPlan(sheet, occasion.onTheBike, to, path);
  if (plan.blocked.length > 0) return { ok: false, problem: { type: "limits", problems: plan.blocked } };
  const cause: Cause =
    to === "weekend"
      ? { type: "conditions", session: sheet.session.id }
      : { type: "own baseline", courseTypes: sheet.setup.basis.shares.map(({ type }) => type) };
  return settingEntries(occasion, valuesOf(plan.steps), cause);
}

function valuesOf(steps: readonly BenchStep[]): SetupValues {
  return Object.fromEntries(steps.map(({ path, to }) => [path, to]));
}
