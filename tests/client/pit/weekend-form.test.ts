import { createRoot } from "solid-js";
import { describe, expect, test } from "vitest";
import {
  createWeekendForm,
  type WeekendFormDevice,
  type WeekendFormState,
} from "#client/pit/weekend/create-weekend-form.ts";
import { NEW_VENUE } from "#client/pit/weekend/weekend-draft.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { Writer } from "#core/ledger/write.ts";
import { programme, weekends } from "#core/weekend/programme.ts";
import { conditionsKind, sessionKind, venueKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

/** The part of a device that the form uses, on a real ledger with a real writer. */
function deviceOf(team: TeamLedger, writer: Writer): WeekendFormDevice {
  return {
    ledger: () => team.ledger,
    write: (entries, options) => writer.setMany(entries, options),
    withdraw: (kind, key, reason, options) => writer.voidSubject(kind, key, reason, options),
  };
}

function withForm(team: TeamLedger, weekendId: string | undefined, act: (form: WeekendFormState) => void): void {
  createRoot((dispose) => {
    act(createWeekendForm(deviceOf(team, team.writerFor("mia")), weekendId));
    dispose();
  });
}

function fill(form: WeekendFormState): void {
  form.set({ name: "Spring Cup", venue: "ridge" });
  form.setFirstDay("2027-03-12");
}

describe("a new weekend", () => {
  test("starts with two practices on the first day, qualifying on the second and the race on the third", () => {
    const team = teamLedger();
    withForm(team, undefined, (form) => {
      fill(form);
      expect(form.save(undefined)?.weekendId).toBe("spring-cup-2027");
    });
    const plan = programme(team.ledger, "spring-cup-2027");
    expect(plan?.weekend).toEqual({ name: "Spring Cup", venue: "ridge", startsOn: "2027-03-12" });
    expect(plan?.sessions.map(({ id, session }) => [id, session.purpose, session.startsAt])).toEqual([
      ["practice-1", "practice", "2027-03-12T10:00"],
      ["practice-2", "practice", "2027-03-12T15:00"],
      ["qualifying", "qualifying", "2027-03-13T11:00"],
      ["race", "race", "2027-03-14T13:00"],
    ]);
  });

  test("is one batch, entered for the first time, also with a new venue", () => {
    const team = teamLedger();
    const before = team.ledger.size;
    withForm(team, undefined, (form) => {
      fill(form);
      form.set({ venue: NEW_VENUE, venueName: "Été Bay", venueAltitude: 12 });
      form.save(undefined);
    });
    const records = [
      ...team.ledger.heads(venueKind, "ete-bay"),
      ...team.ledger.heads(weekendKind, "spring-cup-2027"),
      ...["practice-1", "practice-2", "qualifying", "race"].flatMap((id) =>
        team.ledger.heads(sessionKind, `spring-cup-2027/${id}`),
      ),
    ];
    expect(records).toHaveLength(6);
    expect(team.ledger.size).toBe(before + 6);
    expect(new Set(records.map(({ batch }) => batch)).size).toBe(1);
    expect(records.map(({ cause }) => cause)).toEqual(records.map(() => ({ type: "setup" })));
    expect(settledValue(team.ledger.current(venueKind, "ete-bay"))?.altitude).toEqual({ value: 12, unit: "m" });
  });

  test("of a name that has a weekend in that year already gets an id of its own", () => {
    const team = teamLedger();
    for (const weekendId of ["spring-cup-2027", "spring-cup-2027-2"]) {
      withForm(team, undefined, (form) => {
        fill(form);
        expect(form.save(undefined)?.weekendId).toBe(weekendId);
      });
    }
    expect(weekends(team.ledger)).toHaveLength(3);
  });

  test("moves its sessions along with the first day, each by where it was put", () => {
    withForm(teamLedger(), undefined, (form) => {
      fill(form);
      form.setSession("first-2", { day: "2027-03-13" });
      form.setFirstDay("0002-03-12");
      form.setFirstDay("2028-02-28");
      expect(form.draft().sessions.map(({ day }) => day)).toEqual([
        "2028-02-28",
        "2028-02-29",
        "2028-02-29",
        "2028-03-01",
      ]);
    });
  });

  test("a session that is added takes the day of the last one; one that was not saved goes away at once", () => {
    const team = teamLedger();
    withForm(team, undefined, (form) => {
      fill(form);
      form.removeSession("first-3");
      form.addSession();
      const added = form.draft().sessions.at(-1);
      expect(form.draft().sessions).toHaveLength(4);
      expect(added?.day).toBe("2027-03-14");
      form.setSession(added?.row ?? "", { name: "Race", purpose: "race", time: "16:00" });
      expect(form.save(undefined)).toBeUndefined();
      expect(form.problem()).toBe("Race: two sessions have this name. Give each a name of its own.");
      form.setSession(added?.row ?? "", { name: "Final" });
      form.save(undefined);
    });
    expect(programme(team.ledger, "spring-cup-2027")?.sessions.map(({ id }) => id)).toEqual([
      "practice-1",
      "practice-2",
      "race",
      "final",
    ]);
  });

  const wrong: readonly (readonly [string, (form: WeekendFormState) => void, string])[] = [
    ["no name", (form) => form.set({ name: "  " }), "Weekend, name: a name has 1 to 80 characters in one line."],
    ["half a date", (form) => form.setFirstDay("2027-03"), "Weekend, first day: a date is written like 2026-05-29."],
    ["no such day", (form) => form.setFirstDay("2027-02-30"), "Weekend, first day: a date is written like 2026-05-29."],
    ["no venue", (form) => form.set({ venue: "" }), "Weekend, venue: choose one, or enter a new one."],
    [
      "a new venue without its name",
      (form) => form.set({ venue: NEW_VENUE, venueAltitude: 100 }),
      "Venue, name: a name has 1 to 80 characters in one line.",
    ],
    [
      "a new venue without its altitude",
      (form) => form.set({ venue: NEW_VENUE, venueName: "Bay" }),
      "Venue, altitude: enter the height above sea level.",
    ],
    [
      "a new venue above every road",
      (form) => form.set({ venue: NEW_VENUE, venueName: "Bay", venueAltitude: 9000 }),
      "Venue, altitude: 9000 m is outside -400 m to 5000 m.",
    ],
    [
      "a new venue that is known already",
      (form) => form.set({ venue: NEW_VENUE, venueName: "kestrel ridge", venueAltitude: 1 }),
      "Kestrel Ridge is known already: choose it as the venue.",
    ],
    [
      "a session without a name",
      (form) => form.setSession("first-3", { name: "" }),
      "Session 3, name: a name has 1 to 80 characters in one line.",
    ],
    [
      "a session of no purpose",
      (form) => form.setSession("first-3", { purpose: undefined }),
      'Qualifying, what it is: is missing; allowed: "practice", "qualifying", "race".',
    ],
    [
      "a session without a day",
      (form) => form.setSession("first-4", { day: "" }),
      "Race, day: a date is written like 2026-05-29.",
    ],
    [
      "a session without a time",
      (form) => form.setSession("first-4", { time: "25:00" }),
      "Race, start: a time is written like 10:30.",
    ],
    [
      "a session before the first day",
      (form) => form.setSession("first-1", { day: "2027-03-11" }),
      "Practice 1, day: 2027-03-11 is before the first day, 2027-03-12.",
    ],
    [
      "no session",
      (form) => {
        for (const { row } of form.draft().sessions) form.removeSession(row);
      },
      "A weekend has at least one session.",
    ],
  ];

  test.each(wrong)(
    "with %s is refused in one sentence; nothing is written and nothing typed is lost",
    (_, spoil, sentence) => {
      const team = teamLedger();
      const { size } = team.ledger;
      withForm(team, undefined, (form) => {
        fill(form);
        spoil(form);
        const typed = form.draft();
        expect(form.save(undefined)).toBeUndefined();
        expect(form.problem()).toBe(sentence);
        expect(form.draft()).toEqual(typed);
      });
      expect(team.ledger.size).toBe(size);
    },
  );

  test("is not saved while a field holds what is no number", () => {
    const team = teamLedger();
    const { size } = team.ledger;
    withForm(team, undefined, (form) => {
      fill(form);
      expect(form.save("Altitude of the venue (m)")).toBeUndefined();
      expect(form.problem()).toBe("Altitude of the venue (m): correct what is typed there first.");
    });
    expect(team.ledger.size).toBe(size);
  });
});

describe("changing a weekend", () => {
  test("writes only what was changed", () => {
    const team = teamLedger();
    const { size } = team.ledger;
    withForm(team, "kestrel", (form) => {
      form.setSession("p1", { time: "11:30" });
      expect(form.save(undefined)).toEqual({ weekendId: "kestrel", said: "Saved: Kestrel." });
    });
    expect(team.ledger.size).toBe(size + 1);
    expect(settledValue(team.ledger.current(sessionKind, "kestrel/p1"))?.startsAt).toBe("2026-05-29T11:30");
  });

  test("says so when nothing was changed", () => {
    const team = teamLedger();
    const { size } = team.ledger;
    withForm(team, "kestrel", (form) => expect(form.save(undefined)?.said).toBe("Nothing was changed."));
    expect(team.ledger.size).toBe(size);
  });

  test("takes a session back with the reason, in the batch of the rest", () => {
    const team = teamLedger();
    withForm(team, "kestrel", (form) => {
      form.set({ name: "Kestrel Open" });
      form.removeSession("p1");
      form.setSession("p1", { removal: " Storm " });
      form.save(undefined);
    });
    const [voided] = team.ledger.heads(sessionKind, "kestrel/p1");
    expect(voided?.voided).toEqual({ reason: "Storm" });
    expect(voided?.batch).toBe(team.ledger.heads(weekendKind, "kestrel")[0]?.batch);
    expect(programme(team.ledger, "kestrel")?.sessions.map(({ id }) => id)).toEqual(["race"]);
  });

  test("asks for a reason before anything is written, and keeps a session that is not to go after all", () => {
    const team = teamLedger();
    const { size } = team.ledger;
    withForm(team, "kestrel", (form) => {
      form.removeSession("p1");
      form.setSession("p1", { removal: " " });
      expect(form.save(undefined)).toBeUndefined();
      expect(form.problem()).toBe("p1: say in 1 to 500 characters why it is removed.");
      form.keepSession("p1");
      expect(form.save(undefined)?.said).toBe("Nothing was changed.");
    });
    expect(team.ledger.size).toBe(size);
  });

  test("a session that comes again under its name is the same one, with its conditions", () => {
    const team = teamLedger();
    enterCourse(team.writerFor("mia"));
    written(team.writerFor("mia").voidSubject(sessionKind, "kestrel/p1", "Storm"));
    withForm(team, "kestrel", (form) => {
      form.addSession();
      const row = form.draft().sessions.at(-1)?.row ?? "";
      form.setSession(row, { name: "P1", purpose: "practice", time: "09:00" });
      form.save(undefined);
    });
    expect(settledValue(team.ledger.current(sessionKind, "kestrel/p1"))?.startsAt).toBe("2026-05-30T09:00");
    expect(settledValue(team.ledger.current(conditionsKind, "kestrel/p1"))?.ground).toBe("dry");
  });
});
