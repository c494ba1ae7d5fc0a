import { describe, expect, test } from "vitest";
import type { ScheduledSession } from "#core/weekend/programme.ts";
import { minutesUntil, sessionStandings, sessionsOfTheDay } from "#core/weekend/session-clock.ts";

const session = (id: string, startsAt: string): ScheduledSession => ({
  id,
  session: { name: id, purpose: "practice", startsAt },
  conditions: undefined,
});
const sessions = [
  session("first", "2026-05-29T10:00"),
  session("second", "2026-05-29T11:00"),
  session("race", "2026-05-30T13:30"),
];
const at = (text: string) => Date.parse(`${text}Z`);
const phases = (now: string) => sessionStandings(sessions, at(now)).map(({ phase }) => phase);

describe("a session", () => {
  test("is to come until its start, then runs until the next one starts, or for two hours", () => {
    expect(phases("2026-05-29T09:59")).toEqual(["to come", "to come", "to come"]);
    expect(phases("2026-05-29T10:00")).toEqual(["running", "to come", "to come"]);
    expect(phases("2026-05-29T11:00")).toEqual(["over", "running", "to come"]);
    expect(phases("2026-05-29T12:59")).toEqual(["over", "running", "to come"]);
    expect(phases("2026-05-29T13:00")).toEqual(["over", "over", "to come"]);
  });

  test("that starts at the same time as another runs beside it", () => {
    const both = [session("a", "2026-05-29T10:00"), session("b", "2026-05-29T10:00")];
    expect(sessionStandings(both, at("2026-05-29T10:30")).map(({ phase }) => phase)).toEqual(["running", "running"]);
  });
});

describe("the countdown", () => {
  test("is to all sessions of the day; on a day without one to the next that comes; to none once all are over", () => {
    const shown = (now: string) => sessionsOfTheDay(sessionStandings(sessions, at(now)), at(now)).map(({ id }) => id);
    expect(shown("2026-05-28T23:59")).toEqual(["first"]);
    expect(shown("2026-05-29T18:00")).toEqual(["first", "second"]);
    expect(shown("2026-05-30T20:00")).toEqual(["race"]);
    expect(shown("2026-05-31T08:00")).toEqual([]);
  });

  test("is in whole minutes, and 0 only once it has started", () => {
    const start = at("2026-05-29T10:00");
    expect(minutesUntil(start, start - 1)).toBe(1);
    expect(minutesUntil(start, start - 3_600_000)).toBe(60);
    expect(minutesUntil(start, start)).toBe(0);
    expect(minutesUntil(start, start + 1)).toBe(0);
  });
});
