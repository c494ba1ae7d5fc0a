/** The baselines that were approved from a weekend, for the changelog. */
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { Baseline } from "#core/team/baseline.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import { baselineKind } from "#core/team/record-kinds.ts";

export interface BaselineApproval {
  readonly record: LedgerRecord<Baseline>;
  readonly riderId: string;
  readonly type: CourseType;
}

/** Every approval from `weekend`, of one rider or of all; in force or not, since it was made. */
export function approvals(
  ledger: Ledger,
  { weekend, riderId }: { readonly weekend: string; readonly riderId?: string },
): readonly BaselineApproval[] {
  return ledger.keys(baselineKind).flatMap((key) => {
    const slash = key.indexOf("/");
    const of = key.slice(0, slash);
    const type = courseTypes.find((candidate) => candidate === key.slice(slash + 1));
    if (!type || (riderId !== undefined && riderId !== of)) return [];
    return ledger
      .history(baselineKind, key)
      .filter(({ cause }) => cause?.type === "approval" && cause.weekend === weekend)
      .map((record) => ({ record, riderId: of, type }));
  });
}
