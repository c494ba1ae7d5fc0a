/** What there is to say of a baseline besides its values: age, evidence, and how it stands among the others. */
import { baselineReview } from "#client/text/baseline-review.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { BaselineEvidence } from "#core/planning/baseline-evidence.ts";
import type { BaselineOutlier } from "#core/planning/baseline-outliers.ts";

/** "12 runs on 3 weekends". */
export function evidenceInWords({ runs, weekends }: BaselineEvidence): string {
  const words = baselineReview.evidence;
  return runs === 0 ? words.none : words.ridden(runs, weekends);
}

/** What to look at, with both numbers; they have to be told apart, so more decimals than elsewhere. */
export function outlierInWords({ side, path, perKilogram, median, riders }: BaselineOutlier): string {
  const words = baselineReview.outlier;
  const [value, middle] = [perKilogram, median].map((quantity) =>
    formatQuantity({ ...quantity, value: Number(quantity.value.toPrecision(3)) }),
  );
  return `${words[side]} ${words.sentence(adjusterLabel(path), value ?? "", middle ?? "", riders)}`;
}
