/** How this weekend's setup differs from the baseline, as it is read. */
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { BaselineProposal } from "#core/planning/baseline-review.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { differenceInWords } from "./difference-in-words.ts";

export interface DifferenceRow {
  readonly path: AdjusterPath;
  readonly label: string;
  readonly baseline: string;
  readonly onTheBike: string;
  readonly difference: string;
}

export interface ProposalView {
  readonly changed: readonly DifferenceRow[];
  readonly same: readonly DifferenceRow[];
  /** Whether a sag goes along, and which; one sentence each. */
  readonly sag: readonly string[];
  /** How much differs, in one sentence. */
  readonly summary: string;
}

/** The differences first, then what is the same. A disputed baseline has no values to differ from. */
export function proposalView({ differences, entry, type }: BaselineProposal, isDisputed: boolean): ProposalView {
  const words = review.weekend;
  const isFirst = differences.every(({ baseline }) => baseline === undefined);
  const typeName = common.courseTypes[type];
  const changed: DifferenceRow[] = [];
  const same: DifferenceRow[] = [];
  for (const { path, baseline, onTheBike, difference } of differences) {
    if (!onTheBike) continue;
    const inWords = baseline ? differenceInWords(difference) : isDisputed ? common.notKnown : words.newValue;
    const row: DifferenceRow = {
      path,
      label: adjusterLabel(path),
      baseline: formatQuantity(baseline),
      onTheBike: formatQuantity(onTheBike),
      difference: inWords ?? words.same,
    };
    (inWords === undefined ? same : changed).push(row);
  }
  const sags = (["fork", "shock"] as const).flatMap((place) => {
    const measured = entry.value.sag?.[place];
    return measured ? [words.sag(common.places[place], formatQuantity(measured))] : [];
  });
  return {
    changed,
    same,
    sag: sags.length > 0 ? sags : [words.noSag],
    summary: isDisputed
      ? words.baselineDisputed(typeName)
      : isFirst
        ? words.noBaseline(typeName)
        : words.changed(changed.length),
  };
}
