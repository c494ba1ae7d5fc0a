/** The matrix of baselines as it is read: one cell a rider and course type. */
import { baselineReview } from "#client/text/baseline-review.ts";
import { review } from "#client/text/review.ts";
import { formatMoment } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { baselineEvidence, runsByRider } from "#core/planning/baseline-evidence.ts";
import { type BaselineOutlier, baselineOutliers } from "#core/planning/baseline-outliers.ts";
import { baselineMatrix, type MatrixCell } from "#core/planning/baseline-review.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { ageInWords } from "./age-in-words.ts";
import { evidenceInWords, outlierInWords } from "./baseline-facts.ts";
import { type KeyValue, keyValues } from "./key-values.ts";

export interface CellView {
  readonly type: CourseType;
  /** What there is to say when no single baseline is in force. */
  readonly notice: string | undefined;
  readonly versions: string | undefined;
  /** When and by whom the latest version was written. */
  readonly latest: string | undefined;
  readonly values: readonly KeyValue[];
  /** How old the baseline in force is and how much riding stands behind it. */
  readonly facts: string | undefined;
  /** What is far from the team mates, a sentence each. */
  readonly outliers: readonly string[];
}

export interface RowView {
  readonly mounted: RiderBike;
  readonly cells: readonly CellView[];
}

/**
 * The whole matrix, riders by plate.
 * @param today an ISO date such as 2026-05-30, from the clock of the device
 */
export function matrixView(ledger: Ledger, today: string): readonly RowView[] {
  const rows = baselineMatrix(ledger);
  const runs = runsByRider(ledger);
  const outliers = baselineOutliers(ledger, rows);
  return rows.map(({ mounted, cells }) => ({
    mounted,
    cells: courseTypes.map((type) => {
      const { baseline, current } = cells[type];
      const isOwn = (outlier: BaselineOutlier) => outlier.riderId === mounted.riderId && outlier.type === type;
      return {
        ...cellView(ledger, type, cells[type]),
        facts:
          baseline &&
          current &&
          baselineReview.facts(
            ageInWords(current.at, today),
            evidenceInWords(baselineEvidence(ledger, baseline, runs.get(mounted.riderId))),
          ),
        outliers: outliers.filter(isOwn).map(outlierInWords),
      };
    }),
  }));
}

function cellView(
  ledger: Ledger,
  type: CourseType,
  { baseline, disputed, versions }: MatrixCell,
): Omit<CellView, "facts" | "outliers"> {
  const latest = versions.at(-1);
  return {
    type,
    notice: disputed ? review.matrix.disputed : baseline ? undefined : review.matrix.missing,
    versions: versions.length > 0 ? review.matrix.versions(versions.length) : undefined,
    latest: latest && review.matrix.latest(formatMoment(latest.at), memberName(ledger, latest.by)),
    values: baseline ? keyValues(baseline.values) : [],
  };
}
