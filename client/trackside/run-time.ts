/** A run's time as riders write it. */

const LONGEST_SECONDS = 3600;

/**
 * Seconds in "3:45", "3:45.2" or "3 45"; a point or comma between minutes and seconds counts too, for keypads without a
 * colon. Undefined when the text is no time between 0 and 60 minutes.
 */
export function parseRunTime(text: string): number | undefined {
  const match = /^(\d{1,2})[:., ](\d{2})(?:[.,](\d{1,3}))?$/.exec(text.trim());
  if (!match) return undefined;
  const [, minutes, seconds, fraction] = match;
  if (Number(seconds) >= 60) return undefined;
  const total = Number(minutes) * 60 + Number(`${seconds}.${fraction ?? 0}`);
  return total > 0 && total <= LONGEST_SECONDS ? total : undefined;
}
