/** What physics predicts for an adjustment, as rows of now and then. */
import { pit } from "#client/text/pit.ts";
import { formatMillimetres } from "#client/widgets/format.ts";
import type { Prediction } from "#core/advice/prediction.ts";

export interface PredictionRow {
  readonly name: string;
  readonly before: string;
  readonly after: string;
}

/**
 * Rows for what both predictions have a value of; none when none of them changes, as for a damper. Forces are rounded to 10 N: the inputs carry no more.
 */
export function predictionRows(
  before: Prediction | undefined,
  after: Prediction | undefined,
): readonly PredictionRow[] {
  if (!before || !after) return [];
  const { advice } = pit;
  const rows: readonly (readonly [string, (prediction: Prediction) => string | undefined])[] = [
    [advice.sag, ({ sag }) => sag && formatMillimetres(sag)],
    [advice.travel, travelText],
    [advice.forceHalf, ({ forceAtHalf }) => newtonsText(forceAtHalf)],
    [advice.forceNineTenths, ({ forceAtNineTenths }) => newtonsText(forceAtNineTenths)],
    [advice.forceFull, ({ forceAtFull }) => newtonsText(forceAtFull)],
    [advice.frequency, ({ frequency }) => frequency && `${frequency.toFixed(2)} Hz`],
  ];
  const known = rows.flatMap(([name, textOf]) => {
    const now = textOf(before);
    const then = textOf(after);
    return now === undefined || then === undefined ? [] : [{ name, before: now, after: then }];
  });
  return known.some((row) => row.before !== row.after) ? known : [];
}

function travelText({ strokeUsed, bottomsOut }: Prediction): string | undefined {
  if (strokeUsed === undefined) return undefined;
  const length = formatMillimetres(strokeUsed);
  return bottomsOut ? pit.advice.bottomsOut(length) : length;
}

function newtonsText(newtons: number): string {
  return `${Math.round(newtons / 10) * 10} N`;
}
