/** Which seasons' documents a device keeps open. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { currentWeekend, seasonOf, weekends } from "#core/weekend/programme.ts";

/** The years that can name a document: a year that somebody mistyped opens none. */
const FIRST_YEAR = 1000;
const LAST_YEAR = 9999;

/**
 * The season in which this device writes: that of the current weekend, else the year by the clock.
 * @param today an ISO date such as 2026-05-30
 */
export function writingSeason(ledger: Ledger, today: string): number {
  const current = currentWeekend(ledger, today);
  const season = current && seasonOf(current.weekend);
  return season !== undefined && isSeason(season) ? season : Number(today.slice(0, 4));
}

/**
 * The writing season, those of weekends after it, and the last one before it: what was on the bikes when the new season
 * began is still on them.
 * @param today an ISO date such as 2026-05-30
 */
export function openSeasons(ledger: Ledger, today: string): readonly number[] {
  const writing = writingSeason(ledger, today);
  const others = [...new Set(weekends(ledger).map(({ weekend }) => seasonOf(weekend)))].filter(isSeason);
  const earlier = others.filter((season) => season < writing);
  const later = others.filter((season) => season > writing).sort((a, b) => a - b);
  return [...(earlier.length > 0 ? [Math.max(...earlier)] : []), writing, ...later];
}

function isSeason(year: number): boolean {
  return year >= FIRST_YEAR && year <= LAST_YEAR;
}
