/** What one row of the setup sheet says, in words. */
import { pit } from "#client/text/pit.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { SheetRow } from "#core/planning/setup-sheet.ts";
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";

export interface RowFact {
  readonly label: string;
  readonly text: string;
}

/**
 * Baseline, weekend, bench where it differs from the weekend, what is on the bike, and what that reads at the bench where
 * the temperature has changed since (`reading`).
 */
export function rowFacts(row: SheetRow, reading?: TypedQuantity): readonly RowFact[] {
  const { sheet } = pit;
  return [
    ...(row.baseline
      ? [{ label: isBlend(row) ? sheet.blend : sheet.baseline, text: formatQuantity(row.baseline) }]
      : []),
    ...(row.weekend ? [{ label: sheet.weekend, text: formatQuantity(row.weekend) }] : []),
    ...(row.bench && row.bench.value !== row.weekend?.value
      ? [{ label: sheet.bench, text: formatQuantity(row.bench) }]
      : []),
    { label: isReported(row) ? sheet.riderSays : sheet.onTheBike, text: onTheBikeText(row) },
    ...(reading && readsOtherwise(row, reading) ? [{ label: sheet.readsNow, text: formatQuantity(reading) }] : []),
  ];
}

/** What is on the bike now, as far as it is known. */
export function onTheBikeText({ current }: Pick<SheetRow, "current">): string {
  if (current.state === "disputed") return pit.sheet.inDispute;
  const setting = settledValue(current);
  if (!setting) return pit.sheet.unknown;
  return formatQuantity(setting.quantity);
}

function readsOtherwise({ current, found }: SheetRow, reading: TypedQuantity): boolean {
  const setting = settledValue(current);
  if (!setting) return false;
  if (setting.quantity.unit === reading.unit) return setting.quantity.value !== reading.value;
  const { unit, step } = found.adjuster;
  return Math.abs(convert(setting.quantity, unit).value - convert(reading, unit).value) >= step / 2;
}

/** The value between several baselines is none of them. */
function isBlend({ reasons }: SheetRow): boolean {
  return reasons.some(({ rule }) => rule === "blend");
}

function isReported({ current }: SheetRow): boolean {
  return settledValue(current)?.standing === "reported";
}
