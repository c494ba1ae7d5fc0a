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
