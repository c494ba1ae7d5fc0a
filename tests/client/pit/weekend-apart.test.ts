import { createRoot } from "solid-js";
import { describe, expect, test } from "vitest";
import { disputeLines } from "#client/pit/dispute-lines.ts";
import { createWeekendForm, type WeekendFormState } from "#client/pit/weekend/create-weekend-form.ts";
import { weekendDisputes } from "#client/pit/weekend/weekend-disputes.ts";
import type { RecordKind } from "#core/ledger/kind.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { programme, weekends } from "#core/weekend/programme.ts";
import { sessionKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const KESTREL = { name: "Kestrel", venue: "ridge", startsOn: "2026-05-29" };

function withForm(team: TeamLedger, weekendId: string, act: (form: WeekendFormState) => void): void {
  const mia = team.writerFor("mia");
  createRoot((dispose) => {
    act(
      createWeekendForm(
        {
          ledger: () => team.ledger,
          write: (entries, options) => mia.setMany(entries, options),
          withdraw: (kind, key, reason, options) => mia.voidSubject(kind, key, reason, options),
        },
        weekendId,
      ),
    );
    dispose();
  });
}

/** What Nils wrote on a phone that had only `supersedes` in view. */
function arrive(team: TeamLedger, kind: RecordKind, key: string, value: unknown, supersedes: readonly string[]): void {
  const result = team.ledger.add(
    {
      version: 1,
      id: "02000000000000000000000001",
      subject: `${kind.kind}:${key}`,
      value,
      supersedes,
      by: "nils",
      device: "phone",
      at: "2026-05-20T09:59:00.000Z",
    },
    "team",
  );
  if (!result.ok) throw new Error(result.problem.type);
}

describe("somebody else saves while the form is open", () => {
  test("other fields: both changes stand", () => {
    const team = teamLedger();
    withForm(team, "kestrel", (form) => {
      written(team.writerFor("nils").set(weekendKind, "kestrel", { ...KESTREL, startsOn: "2026-05-28" }));
      form.set({ name: "Kestrel Open" });
      expect(form.save(undefined)?.said).toBe("Saved: Kestrel Open.");
    });
    expect(settledValue(team.ledger.current(weekendKind, "kestrel"))).toEqual({
      name: "Kestrel Open",
      venue: "ridge",
      startsOn: "2026-05-28",
    });
  });

  test("the same field: it is said once, then replaced", () => {
    const team = teamLedger();
    withForm(team, "kestrel", (form) => {
      const theirs = { name: "p1", purpose: "practice", startsAt: "2026-05-29T08:00" } as const;
      written(team.writerFor("nils").set(sessionKind, "kestrel/p1", theirs));
      form.setSession("p1", { time: "11:00" });
      expect(form.save(undefined)).toBeUndefined();
      expect(form.problem()).toBe(
        "Somebody else has changed p1 while this page was open. Save again to replace it with yours.",
      );
      expect(settledValue(team.ledger.current(sessionKind, "kestrel/p1"))?.startsAt).toBe("2026-05-29T08:00");
      expect(form.save(undefined)?.said).toBe("Saved: Kestrel.");
    });
    expect(settledValue(team.ledger.current(sessionKind, "kestrel/p1"))?.startsAt).toBe("2026-05-29T11:00");
  });

  test("a session that they removed stays away", () => {
    const team = teamLedger();
    withForm(team, "kestrel", (form) => {
      written(team.writerFor("nils").voidSubject(sessionKind, "kestrel/p1", "Storm"));
      form.set({ name: "Kestrel Open" });
      expect(form.save(undefined)?.said).toBe("Saved: Kestrel Open.");
      expect(form.draft().sessions.map(({ id }) => id)).toEqual(["race"]);
    });
    expect(team.ledger.current(sessionKind, "kestrel/p1").state).toBe("absent");
  });

  test("a session that they removed and that was changed here is told, and comes back only when saved again", () => {
    const team = teamLedger();
    withForm(team, "kestrel", (form) => {
      form.setSession("p1", { time: "11:00" });
      written(team.writerFor("nils").voidSubject(sessionKind, "kestrel/p1", "Storm"));
      expect(form.save(undefined)).toBeUndefined();
      expect(form.problem()).toContain("Somebody else has changed p1");
      expect(team.ledger.current(sessionKind, "kestrel/p1").state).toBe("absent");
      expect(form.save(undefined)?.said).toBe("Saved: Kestrel.");
    });
    expect(settledValue(team.ledger.current(sessionKind, "kestrel/p1"))?.startsAt).toBe("2026-05-29T11:00");
  });

  test("a session that they added is shown before anything is saved, and not added twice", () => {
    const team = teamLedger();
    withForm(team, "kestrel", (form) => {
      const theirs = { name: "Practice 2", purpose: "practice", startsAt: "2026-05-29T14:00" } as const;
      written(team.writerFor("nils").set(sessionKind, "kestrel/practice-2", theirs));
      form.addSession();
      const row = form.draft().sessions.at(-1)?.row ?? "";
      form.setSession(row, { name: "Practice 2", purpose: "practice", time: "14:00" });
      expect(form.save(undefined)).toBeUndefined();
      expect(form.draft().sessions.map(({ id }) => id)).toEqual(["p1", "race", undefined, "practice-2"]);
      form.removeSession(row);
      form.save(undefined);
    });
    expect(programme(team.ledger, "kestrel")?.sessions.map(({ id }) => id)).toEqual(["p1", "practice-2", "race"]);
  });
});

describe("two devices apart", () => {
  test("who changed the same field differently is shown who says what, and saving settles it", () => {
    const team = teamLedger();
    const seen = team.ledger.heads(weekendKind, "kestrel").map(({ id }) => id);
    written(team.writerFor("mia").set(weekendKind, "kestrel", { ...KESTREL, startsOn: "2026-05-28" }));
    arrive(team, weekendKind, "kestrel", { ...KESTREL, startsOn: "2026-05-27" }, seen);
    expect(disputeLines(team.ledger).map(({ path }) => path)).toEqual(["/pit/weekend/kestrel/edit"]);
    expect(weekendDisputes(team.ledger, "kestrel")).toEqual([
      "Weekend, first day: Mia says 2026-05-28",
      "Weekend, first day: nils says 2026-05-27",
    ]);
    withForm(team, "kestrel", (form) => {
      form.setFirstDay("2026-05-27");
      expect(form.save(undefined)?.said).toBe("Saved: Kestrel.");
    });
    expect(settledValue(team.ledger.current(weekendKind, "kestrel"))?.startsOn).toBe("2026-05-27");
    expect(weekendDisputes(team.ledger, "kestrel")).toEqual([]);
  });

  test("who entered the same weekend twice with different days can still open it and settle it", () => {
    const team = teamLedger();
    const value = { name: "Cup", venue: "ridge", startsOn: "2027-03-12" };
    written(team.writerFor("mia").set(weekendKind, "cup-2027", value));
    arrive(team, weekendKind, "cup-2027", { ...value, startsOn: "2027-03-19" }, []);
    expect(weekends(team.ledger).map(({ id }) => id)).toEqual(["kestrel"]);
    withForm(team, "cup-2027", (form) => {
      form.addSession();
      const row = form.draft().sessions.at(-1)?.row ?? "";
      form.setSession(row, { name: "Race", purpose: "race", day: "2027-03-20", time: "13:00" });
      form.setFirstDay("2027-03-19");
      form.setSession(row, { day: "2027-03-20" });
      expect(form.save(undefined)?.said).toBe("Saved: Cup.");
    });
    expect(settledValue(team.ledger.current(weekendKind, "cup-2027"))?.startsOn).toBe("2027-03-19");
  });

  test("a session that one removed and one changed is told as that", () => {
    const team = teamLedger();
    const seen = team.ledger.heads(sessionKind, "kestrel/p1").map(({ id }) => id);
    written(team.writerFor("mia").voidSubject(sessionKind, "kestrel/p1", "Storm"));
    const theirs = { name: "p1", purpose: "practice", startsAt: "2026-05-29T08:00" };
    arrive(team, sessionKind, "kestrel/p1", theirs, seen);
    expect(weekendDisputes(team.ledger, "kestrel")).toEqual(["p1: Mia has removed it (Storm)", "p1: nils keeps it"]);
  });
});
