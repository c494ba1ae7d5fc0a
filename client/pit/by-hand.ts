/** A value set by hand, as entries to write. */
import { entryField, quantityIn } from "#client/widgets/entry-field.ts";
import type { Cause } from "#core/ledger/cause.ts";
import { decisionEntry, type EntriesResult, type Occasion, settingEntries } from "#core/planning/entries.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { mountedAdjuster } from "#core/team/roster.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";

/** What is typed: the value in the unit of the adjuster's entry field. */
export interface ByHandDraft {
  readonly path: AdjusterPath;
  readonly value: number | undefined;
  /** What the field started from, where something was known. */
  readonly from?: TypedQuantity | undefined;
  readonly note: string;
}

/** The setting, and with `run` that the run is answered by it. */
export function byHandEntries(
  occasion: Occasion,
  { path, value, from, note }: ByHandDraft,
  run?: LoggedRun,
): EntriesResult {
  const found = mountedAdjuster(occasion.mounted.parts, path);
  if (!found || value === undefined) return { ok: false, problem: { type: "no value", path } };
  const words = note.trim();
  const cause: Cause = { type: "by hand", ...(words !== "" && { note: words }), ...(run && { run: run.id }) };
  const settings = settingEntries(occasion, { [path]: quantityIn(entryField(found.adjuster), value, from) }, cause);
  if (!settings.ok || !run) return settings;
  return { ok: true, entries: [...settings.entries, decisionEntry(run, "adjusted")] };
}
