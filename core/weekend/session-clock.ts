/**
 * Where the sessions of a weekend stand by the clock.
 *
 * All moments here are wall-clock time at the venue in milliseconds, counted as if that clock ran in UTC: a session's start
 * is written without a zone, and so a device that is at the venue passes its own wall clock in the same count.
 */
import type { ScheduledSession } from "./programme.ts";

export const sessionPhases = ["to come", "running", "over"] as const;
export type SessionPhase = (typeof sessionPhases)[number];

export interface SessionStanding {
  readonly id: string;
  readonly name: string;
  /** As it was entered: local time without a zone. */
  readonly startsAt: string;
  /** The same as wall-clock milliseconds. */
  readonly start: number;
  readonly phase: SessionPhase;
}

/**
 * How long a session counts as running when none follows sooner: the programme tells no end. 2 h; common practice, no
 * source.
 */
const LONGEST_SESSION_MS = 2 * 3_600_000;

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** Wall-clock milliseconds of a session's start, such as 2026-05-29T10:30. */
export function wallClock(startsAt: string): number {
  return Date.parse(startsAt.endsWith("Z") ? startsAt : `${startsAt}Z`);
}

/** The sessions, in the order given, at `now` (wall-clock milliseconds). */
export function sessionStandings(sessions: readonly ScheduledSession[], now: number): readonly SessionStanding[] {
  const starts = sessions.map(({ session }) => wallClock(session.startsAt));
  return sessions.map(({ id, session }, index) => {
    const start = starts[index] ?? 0;
    const following = Math.min(...starts.filter((other) => other > start), start + LONGEST_SESSION_MS);
    const phase: SessionPhase = now < start ? "to come" : now < following ? "running" : "over";
    return { id, name: session.name, startsAt: session.startsAt, start, phase };
  });
}

/** Whole minutes until a start, rounded up so that it never says 0 before it is so; 0 once it has started. */
export function minutesUntil(start: number, now: number): number {
  return Math.max(0, Math.ceil((start - now) / MINUTE_MS));
}

/**
 * Those to count down to: the sessions of the day of `now`; on a day without one, the next to come alone; none when all
 * are over.
 */
export function sessionsOfTheDay(standings: readonly SessionStanding[], now: number): readonly SessionStanding[] {
  const day = Math.floor(now / DAY_MS);
  const today = standings.filter(({ start }) => Math.floor(start / DAY_MS) === day);
  return today.length > 0 ? today : standings.filter(({ phase }) => phase === "to come").slice(0, 1);
}
