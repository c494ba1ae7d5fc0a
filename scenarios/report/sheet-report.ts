import { describeLimitProblem } from "#core/advice/limits.ts";
import type { Provenance, Reason } from "#core/advice/reason.ts";
import { describeReason } from "#core/advice/reason-in-words.ts";
import { describeSetupProblem } from "#core/advice/weekend-setup.ts";
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
  readonly reasons: readonly ReportedReason[];
  readonly problems: readonly string[];
}

/** A {@link Reason} in words. */
export interface ReportedReason {
  readonly rule: string;
  readonly sentence: string;
  readonly provenance: Provenance;
  readonly change?: TypedQuantity;
  /** The limit that stopped it. */
  readonly refused?: string;
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
        reasons: reasons.map(reportedReason),
        problems: problems.map((problem) => describeSetupProblem(problem)),
      };
    }),
  };
}

function reportedReason({ rule, because, provenance, change, refused }: Reason): ReportedReason {
  return {
    rule,
    sentence: describeReason(because),
    provenance,
    ...(change && { change }),
    ...(refused && { refused: describeLimitProblem(refused) }),
  };
}
