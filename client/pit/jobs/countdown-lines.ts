/** The countdown to each session of the day, in words. */
import { jobQueue as words } from "#client/text/job-queue.ts";
import { formatClock, formatMinutes, formatMoment } from "#client/widgets/format.ts";
import type { ScheduledSession } from "#core/weekend/programme.ts";
import { minutesUntil, type SessionStanding, sessionStandings, sessionsOfTheDay } from "#core/weekend/session-clock.ts";

const DAY_MS = 86_400_000;

export interface CountdownLine {
  readonly name: string;
  /** As it was entered, for machines; and as people read it. */
  readonly startsAt: string;
  readonly start: string;
  readonly state: string;
  /** The time left as machines read it, while there is some. */
  readonly left: { readonly machine: string } | undefined;
}

/** @param now wall-clock milliseconds, see `core/weekend/session-clock.ts` */
export function countdownLines(sessions: readonly ScheduledSession[], now: number): readonly CountdownLine[] {
  return sessionsOfTheDay(sessionStandings(sessions, now), now).map((standing) => lineOf(standing, now));
}

function lineOf({ name, startsAt, start, phase }: SessionStanding, now: number): CountdownLine {
  const minutes = minutesUntil(start, now);
  const states = {
    "to come": words.sessions.startsIn(formatMinutes(minutes)),
    running: words.sessions.running,
    over: words.sessions.over,
  };
  return {
    name,
    startsAt,
    // One that does not start today is named with its day.
    start: Math.floor(start / DAY_MS) === Math.floor(now / DAY_MS) ? formatClock(startsAt) : formatMoment(startsAt),
    state: states[phase],
    left: phase === "to come" ? { machine: `PT${minutes}M` } : undefined,
  };
}
