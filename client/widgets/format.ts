/** Numbers, times and quantities as people read them. */
import { formatTag } from "#client/text/language.ts";
import { differenceText, numberText, quantityText } from "#client/text/quantity-text.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";

const clock = new Intl.DateTimeFormat(formatTag(), { hour: "2-digit", minute: "2-digit" });
const dayAndClock = new Intl.DateTimeFormat(formatTag(), {
  weekday: "short",
  day: "numeric",
  month: "short",
  hour: "2-digit",
  minute: "2-digit",
});

/** A number with at most two decimals. */
export function formatNumber(value: number): string {
  return numberText(value);
}

/** A value with its unit, as typed: "62 psi", in the unit that the reader likes. */
export function formatQuantity(quantity: TypedQuantity | undefined): string {
  return quantity ? quantityText(quantity) : "—";
}

/** A difference with its sign: "+2 psi", "−1 clicks", "0 psi". */
export function formatDifference(quantity: TypedQuantity | undefined): string {
  return quantity ? differenceText(quantity) : "—";
}

/** Millimetres from metres, whole. */
export function formatMillimetres(metres: number | undefined): string {
  return metres === undefined ? "—" : `${Math.round(metres * 1000)} mm`;
}

/** Whole megabytes (10⁶ bytes) from bytes, rounded down. */
export function formatMegabytes(bytes: number): string {
  return numberText(Math.floor(bytes / 1_000_000));
}

/** Wall-clock time of a moment (ms since the epoch, or ISO 8601): "14:05". */
export function formatClock(moment: number | string): string {
  return clock.format(new Date(moment));
}

/** Day and time of a moment: "Fri 29 May, 14:05". */
export function formatMoment(moment: number | string): string {
  return dayAndClock.format(new Date(moment));
}

const units = (["day", "hour", "minute"] as const).map(
  (unit) => new Intl.NumberFormat(formatTag(), { style: "unit", unit, unitDisplay: "short" }),
);
const unitList = new Intl.ListFormat(formatTag(), { type: "unit", style: "narrow" });

/** A length of time in whole minutes by its two largest units: "1 hr 25 mins", "2 days 3 hrs", "0 mins". */
export function formatMinutes(minutes: number): string {
  const counts = [Math.floor(minutes / 1440), Math.floor((minutes % 1440) / 60), minutes % 60];
  const first = counts.findIndex((count) => count > 0);
  const from = first < 0 ? counts.length - 1 : first;
  const shown = counts.flatMap((count, index) =>
    index === from || (index === from + 1 && count > 0) ? (units[index]?.format(count) ?? []) : [],
  );
  return unitList.format(shown);
}
