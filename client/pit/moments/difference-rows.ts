/** What differs between two moments, in words. */
import { moments as words } from "#client/text/moments.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { decimalsOf } from "#core/advice/limits.ts";
import type { MomentDifference } from "#core/planning/bike-at-moment.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";

export interface DifferenceRow {
  readonly path: AdjusterPath;
  readonly adjuster: string;
  readonly earlier: string;
  readonly later: string;
  /** "2 psi more"; empty where one of the two is no value. */
  readonly difference: string;
}

/** One row for each difference, in their order. */
export function differenceRows(differences: readonly MomentDifference[]): readonly DifferenceRow[] {
  return differences.map((row) => ({
    path: row.path,
    adjuster: trade.adjuster(row.path),
    earlier: stateText(row.earlier),
    later: stateText(row.later),
    difference: sizeText(row),
  }));
}

function stateText(state: MomentDifference["earlier"]): string {
  if (state === "unknown") return words.unknown;
  return state === "disputed" ? words.disputed : formatQuantity(state);
}

function sizeText({ found, difference }: MomentDifference): string {
  if (!difference) return "";
  const size = Number(Math.abs(difference.value).toFixed(decimalsOf(found)));
  const text = formatQuantity({ value: size, unit: difference.unit });
  return difference.value > 0 ? words.more(text) : words.less(text);
}
