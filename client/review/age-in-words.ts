/** How old something is, as people say it. */
import { baselineReview } from "#client/text/baseline-review.ts";

const DAY = 86_400_000;
/** From how many days on weeks, months and years are told: two of each at least, so that "1 week" is never 13 days. */
const WEEKS_FROM = 14;
const MONTHS_FROM = 61;
const YEARS_FROM = 731;
/** Mean lengths of the Gregorian calendar, days: 146,097 days in 400 years. */
const DAYS_OF_A_YEAR = 146_097 / 400;
const DAYS_OF_A_MONTH = DAYS_OF_A_YEAR / 12;

/**
 * "3 weeks old": whole days between the day (UTC) of `at`, ISO 8601, and `today`, an ISO date; rounded down to the unit
 * that is told. The writer's clock may be wrong: what is later than today is said to be so.
 */
export function ageInWords(at: string, today: string): string {
  const words = baselineReview.age;
  const days = Math.round((Date.parse(today) - Date.parse(at.slice(0, 10))) / DAY);
  if (days < 0) return words.ahead;
  if (days === 0) return words.today;
  if (days < WEEKS_FROM) return words.days(days);
  if (days < MONTHS_FROM) return words.weeks(Math.floor(days / 7));
  if (days < YEARS_FROM) return words.months(Math.floor(days / DAYS_OF_A_MONTH));
  return words.years(Math.floor(days / DAYS_OF_A_YEAR));
}
