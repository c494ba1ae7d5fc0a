/** Views of a weekend: its venue, course, sessions and their conditions. */
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { onceForEachState } from "#core/ledger/once-for-each-state.ts";
import { knownValue } from "#core/team/roster.ts";
import type { Conditions } from "./conditions.ts";
import type { Course } from "./course.ts";
import type { RaceWeekend, Session } from "./race-weekend.ts";
import { conditionsKind, courseKind, sessionKind, venueKind, weekendKind } from "./record-kinds.ts";
import type { Venue } from "./venue.ts";

export interface ScheduledSession {
  readonly id: string;
  readonly session: Session;
  /** Absent until somebody has entered them, and while they are in dispute. */
  readonly conditions: Conditions | undefined;
}

export interface Programme {
  readonly weekendId: string;
  readonly weekend: RaceWeekend;
  readonly venue: Venue | undefined;
  /** Absent until somebody has entered it, and while it is in dispute. */
  readonly course: Course | undefined;
  /** In the order in which they start, those at one time by id. */
  readonly sessions: readonly ScheduledSession[];
}

/** All weekends, newest first; those that start on one day by id, so that every browser lists them alike. */
export const weekends = onceForEachState(
  [weekendKind],
  (ledger): readonly { readonly id: string; readonly weekend: RaceWeekend }[] =>
    ledger
      .keys(weekendKind)
      .flatMap((id) => {
        const weekend = knownValue(ledger, weekendKind, id);
        return weekend ? [{ id, weekend }] : [];
      })
      .sort((a, b) => compareText(b.weekend.startsOn, a.weekend.startsOn) || compareText(a.id, b.id)),
);

/** Days after its start for which a weekend counts as going on: the last session, and the drive home. */
const DAYS_OF_A_WEEKEND = 4;

/**
 * The weekend that a screen opens on: the one going on, else the next to come, else the last that was.
 * @param today an ISO date such as 2026-05-30, from the clock of the device
 */
export function currentWeekend(
  ledger: Ledger,
  today: string,
): { readonly id: string; readonly weekend: RaceWeekend } | undefined {
  const newestFirst = weekends(ledger);
  return newestFirst.filter(({ weekend }) => !isWeekendOver(weekend, Date.parse(today))).at(-1) ?? newestFirst[0];
}

/** Whether a weekend no longer goes on at `moment`, in milliseconds by the clock at the venue as if it ran in UTC. */
export function isWeekendOver({ startsOn }: RaceWeekend, moment: number): boolean {
  return moment - Date.parse(startsOn) >= (DAYS_OF_A_WEEKEND + 1) * 86_400_000;
}

/** The season, that is the year, in which a weekend is ridden. */
export function seasonOf(weekend: RaceWeekend): number {
  return Number(weekend.startsOn.slice(0, 4));
}

/** The programme of `weekendId`, or undefined while the weekend is not known. */
export function programme(ledger: Ledger, weekendId: string): Programme | undefined {
  const weekend = knownValue(ledger, weekendKind, weekendId);
  if (!weekend) return undefined;
  const sessions = ledger
    .keys(sessionKind, weekendId)
    .flatMap((key) => {
      const session = knownValue(ledger, sessionKind, key);
      if (!session) return [];
      const conditions = settledValue(ledger.current(conditionsKind, key));
      return [{ id: key.slice(weekendId.length + 1), session, conditions }];
    })
    .sort((a, b) => compareText(a.session.startsAt, b.session.startsAt) || compareText(a.id, b.id));
  return {
    weekendId,
    weekend,
    venue: knownValue(ledger, venueKind, weekend.venue),
    course: settledValue(ledger.current(courseKind, weekendId)),
    sessions,
  };
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * The programme of the weekend that is wanted, or of the current one when there is no such weekend.
 * @param today an ISO date such as 2026-05-30
 */
export function wantedProgramme(ledger: Ledger, wanted: string | undefined, today: string): Programme | undefined {
  const known = wanted === undefined ? undefined : programme(ledger, wanted);
  const current = currentWeekend(ledger, today);
  return known ?? (current && programme(ledger, current.id));
}
