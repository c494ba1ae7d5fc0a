/** The matrix of baselines as it is read: one cell a rider and course type. */
import { review } from "#client/text/english/review.ts";
import { formatMoment } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/member-name.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { baselineMatrix, type MatrixCell } from "#core/planning/baseline-review.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { type KeyValue, keyValues } from "./key-values.ts";

export interface CellView {
  readonly type: CourseType;
  /** What there is to say when no single baseline is in force. */
  readonly notice: string | undefined;
  readonly versions: string | undefined;
  /** When and by whom the latest version was written. */
  readonly latest: string | undefined;
  readonly values: readonly KeyValue[];
}

export interface RowView {
  readonly mounted: RiderBike;
  readonly cells: readonly CellView[];
}

/** The whole matrix, riders by plate. */
export function matrixView(ledger: Ledger): readonly RowView[] {
  return baselineMatrix(ledger).map(({ mounted, cells }) => ({
    mounted,
    cells: courseTypes.map((type) => cellView(ledger, type, cells[type])),
  }));
}

function cellView(ledger: Ledger, type: CourseType, { baseline, disputed, versions }: MatrixCell): CellView {
  const latest = versions.at(-1);
  return {
    type,
    notice: disputed ? review.matrix.disputed : baseline ? undefined : review.matrix.missing,
    versions: versions.length > 0 ? review.matrix.versions(versions.length) : undefined,
    latest: latest && review.matrix.latest(formatMoment(latest.at), memberName(ledger, latest.by)),
    values: baseline ? keyValues(baseline.values) : [],
  };
}
