import { describe, expect, test } from "vitest";
import { currentWeekend, programme, seasonOf, weekends } from "#core/weekend/programme.ts";
import { sessionKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { teamLedger, written } from "#tests/builders/team-ledger.ts";

function teamWithWeekends() {
  const team = teamLedger();
  const mechanic = team.writerFor("mia");
  for (const [key, startsOn] of [
    ["june", "2026-06-12"],
    ["july", "2026-07-03"],
  ] as const) {
    written(mechanic.set(weekendKind, key, { name: key, venue: "ridge", startsOn }));
  }
  return team.ledger;
}

describe("the weekend that a screen opens on", () => {
  test.each([
    ["before the season: the first to come", "2026-01-10", "kestrel"],
    ["on its second day: the one going on", "2026-05-30", "kestrel"],
    ["on the drive home: still that one", "2026-06-02", "kestrel"],
    ["after it: the next, not the last of the season", "2026-06-03", "june"],
    ["after the season: the last that was", "2026-11-25", "july"],
  ])("%s", (_name, today, id) => {
    expect(currentWeekend(teamWithWeekends(), today)?.id).toBe(id);
  });
});

test("sessions come in the order in which they start, whatever their names", () => {
  const team = teamLedger();
  written(
    team
      .writerFor("mia")
      .set(sessionKind, "kestrel/warm-up", { name: "Z", purpose: "practice", startsAt: "2026-05-29T08:00" }),
  );
  expect(programme(team.ledger, "kestrel")?.sessions.map(({ id }) => id)).toEqual(["warm-up", "p1", "race"]);
});

test("weekends of one day, and sessions of one time, come in the order of their ids", () => {
  const { ledger, writerFor } = teamLedger();
  const mechanic = writerFor("mia");
  for (const id of ["c", "a", "b"]) {
    written(mechanic.set(weekendKind, id, { name: id, venue: "ridge", startsOn: "2026-07-03" }));
    written(mechanic.set(sessionKind, `a/${id}`, { name: id, purpose: "race", startsAt: "2026-07-03T10:00" }));
  }
  expect(weekends(ledger).map(({ id }) => id)).toEqual(["a", "b", "c", "kestrel"]);
  expect(programme(ledger, "a")?.sessions.map(({ id }) => id)).toEqual(["a", "b", "c"]);
});

test("the season of a weekend is the year it starts in", () => {
  expect(seasonOf({ name: "New year", venue: "ridge", startsOn: "2027-01-02" })).toBe(2027);
});
