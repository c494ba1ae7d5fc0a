/** Weekends on other days: the demo begins tomorrow, whenever somebody tries it. */
import type { Scenario } from "./schema/scenario.ts";

const DAY_MS = 86_400_000;

/**
 * The scenarios' weekends and sessions moved by the same number of days, so that the first of them begins on `firstDay`
 * (ISO 8601, a day). Times of the day stay; so do steps, which a loaded team does not play.
 */
export function moveWeekends(scenarios: readonly Scenario[], firstDay: string): readonly Scenario[] {
  const [earliest] = scenarios.map(({ weekend }) => weekend.startsOn).sort();
  if (earliest === undefined) return scenarios;
  const days = Math.round((Date.parse(firstDay) - Date.parse(earliest)) / DAY_MS);
  return scenarios.map((scenario) => ({
    ...scenario,
    weekend: { ...scenario.weekend, startsOn: moved(scenario.weekend.startsOn, days) },
    sessions: Object.fromEntries(
      Object.entries(scenario.sessions).map(([id, session]) => [
        id,
        { ...session, startsAt: `${moved(session.startsAt.slice(0, 10), days)}${session.startsAt.slice(10)}` },
      ]),
    ),
  }));
}

function moved(day: string, days: number): string {
  return new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);
}
