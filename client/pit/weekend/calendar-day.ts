/** Days of the calendar, written as ISO dates such as 2026-05-29, without a zone. */

const DAY_MS = 86_400_000;

/** Whether `text` is a day that the calendar has, in a year of four digits; while a year is typed it is not one yet. */
export function isDay(text: string): boolean {
  if (!/^[1-9]\d{3}-\d{2}-\d{2}$/.test(text)) return false;
  const time = Date.parse(text);
  return !Number.isNaN(time) && isoDay(time) === text;
}

/** The day `days` after `day`, which must be one ({@link isDay}). */
export function daysAfter(day: string, days: number): string {
  return isoDay(Date.parse(day) + days * DAY_MS);
}

/** How many days `day` comes after `firstDay`; negative when before. Both must be days. */
export function daysBetween(firstDay: string, day: string): number {
  return Math.round((Date.parse(day) - Date.parse(firstDay)) / DAY_MS);
}

/** Whether `text` is a time of day such as 10:30, with or without seconds. */
export function isTimeOfDay(text: string): boolean {
  return /^([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d+)?)?$/.test(text);
}

function isoDay(time: number): string {
  return new Date(time).toISOString().slice(0, 10);
}
