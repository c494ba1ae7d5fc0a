import type { Reason } from "#core/advice/reason.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { describeSheetProblem, type RowState, setupSheet } from "#core/planning/setup-sheet.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";

/** A rider's sheet, or why there is none. */
export type ReportedSheet =
  | {
      readonly session: string;
      /** False while a load on a spring is assumed: then direction and rough size only. */
      readonly fitted: boolean;
      readonly rows: readonly ReportedRow[];
    }
  | { readonly problem: string };

export interface ReportedRow {
  readonly adjuster: AdjusterPath;
  readonly baseline: TypedQuantity | undefined;
  readonly weekend: TypedQuantity | undefined;
  readonly difference: TypedQuantity | undefined;
  readonly bench: TypedQuantity | undefined;
  /** Several while they are in dispute. */
  readonly onTheBike: readonly TypedQuantity[];
  readonly state: RowState;
  readonly reasons: readonly Reason[];
  readonly problems: readonly string[];
}

export function reportSheet(ledger: Ledger, weekendId: string, sessionId: string, riderId: string): ReportedSheet {
  const found = setupSheet(ledger, weekendId, sessionId, riderId);
  if (!found.ok) return { problem: describeSheetProblem(found.problem) };
  const { sheet } = found;
  return {
    session: sheet.session.session.name,
    fitted: sheet.setup.fitted,
    rows: sheet.rows.map(({ path, baseline, weekend, difference, bench, state, current, reasons, problems }) => {
      const settled = settledValue(current)?.quantity;
      const claimed = current.state === "disputed" ? current.claims.flatMap(({ value }) => value?.quantity ?? []) : [];
      return {
        adjuster: path,
        baseline,
        weekend,
        difference,
        bench,
        onTheBike: settled ? [settled] : claimed,
        state,
        reasons,
        problems,
      };
    }),
  };
}
