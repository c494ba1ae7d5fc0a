/** What another bike would get of a setup, row by row in words. */
import { spareBike } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { CopyOutcome, CopyRow } from "#core/planning/copy-setup.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { adjusterLines } from "./difference-lines.ts";

export interface CopyLine {
  readonly path: AdjusterPath;
  readonly adjuster: string;
  readonly value: string;
  readonly now: string;
  readonly outcome: string;
  readonly isRefused: boolean;
  /** What else to know of it, a sentence each. */
  readonly notes: readonly string[];
}

/** A line for each row, in their order. */
export function copyLines(rows: readonly CopyRow[]): readonly CopyLine[] {
  const words = spareBike.copy;
  return rows.map(({ path, value, now, outcome, differences, reported, measure }) => ({
    path,
    adjuster: trade.adjuster(path),
    value: value ? formatQuantity(value) : outcome.type === "in dispute" ? words.inDispute : words.unknown,
    now: now === "in dispute" ? words.inDispute : now ? formatQuantity(now) : words.unknown,
    outcome: outcomeText(outcome),
    isRefused: outcome.type === "refused",
    notes: [
      ...adjusterLines(differences),
      ...(reported ? [words.reported] : []),
      ...(measure && outcome.type === "copied" ? [words.measure[measure]] : []),
    ],
  }));
}

function outcomeText(outcome: CopyOutcome): string {
  const words = spareBike.copy;
  return outcome.type === "refused" ? words.refused(trade.limit(outcome.problem)) : words.outcomes[outcome.type];
}
