/** Which seasons' documents a device keeps open. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { currentWeekend, seasonOf, weekends } from "#core/weekend/programme.ts";

/** The years that can name a document: a year that somebody mistyped opens none. */
const FIRST_YEAR = 1000;
const LAST_YEAR = 9999;

/**
 * The season in which this device writes: that of the current weekend where it is this year's or next to it, else the
 * year by the clock. A year that somebody mistyped must not take the records with it.
 * @param today an ISO date such as 2026-05-30
 */
export function writingSeason(ledger: Ledger, today: string): number {
  const current = currentWeekend(ledger, today);
  const season = current && seasonOf(current.weekend);
  const year = Number(today.slice(0, 4));
  return season !== undefined && Math.abs(season - year) <= 1 ? season : year;
}

/**
 * The writing season, the next one where a weekend of it is entered, and the last one before it: what was on the bikes when the new season
 * began is still on them.
 * @param today an ISO date such as 2026-05-30
 */
export function openSeasons(ledger: Ledger, today: string): readonly number[] {
  const writing = writingSeason(ledger, today);
  const others = [...new Set(weekends(ledger).map(({ weekend }) => seasonOf(weekend)))].filter(isSeason);
  const earlier = others.filter((season) => season < writing);
  const next = others.filter((season) => season === writing + 1);
  return [...(earlier.length > 0 ? [Math.max(...earlier)] : []), writing, ...next];
}

function isSeason(year: number): boolean {
  return year >= FIRST_YEAR && year <= LAST_YEAR;
}
