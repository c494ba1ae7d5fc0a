/** The pit's view of the invented team: a sheet, an occasion, and writes apart. */
import { benchOccasion } from "#client/pit/occasion.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { Occasion } from "#core/planning/entries.ts";
import { describeSheetProblem, type SetupSheet, setupSheet } from "#core/planning/setup-sheet.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { TeamLedger } from "#tests/builders/team-ledger.ts";

export const MAIN: AdjusterPath = "fork.main-pressure";
export const SECONDARY: AdjusterPath = "fork.secondary-pressure";
export const REBOUND: AdjusterPath = "fork.rebound";

export function sheetFor({ ledger }: TeamLedger, session = "p1"): SetupSheet {
  const result = setupSheet(ledger, "kestrel", session, "alder");
  if (!result.ok) throw new Error(describeSheetProblem(result.problem));
  return result.sheet;
}

export function occasionFor(team: TeamLedger, session = "p1"): Occasion {
  const { mounted, programme } = sheetFor(team, session);
  return benchOccasion(mounted, settingsOnBike(team.ledger, mounted), programme, session);
}

export function keyOf(path: AdjusterPath): string {
  return `alder/alder-1/${path}`;
}

/** What another device wrote while it was apart: it had only `supersedes` in view. */
export function arriveFromElsewhere(
  team: TeamLedger,
  path: AdjusterPath,
  quantity: Setting["quantity"],
  supersedes: readonly string[],
): void {
  const record: LedgerRecord = {
    version: 1,
    id: "02000000000000000000000001",
    subject: `${settingKind.kind}:${keyOf(path)}`,
    value: { quantity, standing: "on the bike", weekend: "kestrel" } satisfies Setting,
    supersedes,
    by: "nils",
    device: "phone",
    at: "2026-05-29T09:59:00.000Z",
    cause: { type: "own change" },
  };
  team.ledger.add(record, "rider/alder/2026");
}
