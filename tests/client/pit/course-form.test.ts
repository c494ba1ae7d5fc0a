import { createRoot } from "solid-js";
import { describe, expect, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { type CourseFormState, createCourseForm } from "#client/pit/create-course-form.ts";
import { showUnits } from "#client/text/shown-units.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { conditionsKind, courseKind } from "#core/weekend/record-kinds.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

/** The part of a device that the form uses, on a real ledger with a real writer. */
function withForm(team: TeamLedger, act: (form: CourseFormState) => void): void {
  const mia = team.writerFor("mia");
  const device: Pick<Device, "ledger" | "write"> = {
    ledger: () => team.ledger,
    write: (entries, options) => mia.setMany(entries, options),
  };
  createRoot((dispose) => {
    act(createCourseForm(device, "kestrel"));
    dispose();
  });
}

function fill(form: CourseFormState): void {
  form.setPart("steep", 0.6);
  form.setPart("jumpy", 0.4);
  form.setConditions("p1", { air: 18, ground: "damp" });
}

describe("the course form", () => {
  test("starts with the altitude of the venue and writes course and conditions as one batch", () => {
    const team = teamLedger();
    withForm(team, (form) => {
      expect(form.draft().altitude).toBe(0);
      fill(form);
      expect(form.save(undefined)).toBe("Saved: course, conditions of p1.");
    });
    const [course] = team.ledger.heads(courseKind, "kestrel");
    const [conditions] = team.ledger.heads(conditionsKind, "kestrel/p1");
    expect(course?.value?.mix).toEqual({ steep: 0.6, jumpy: 0.4, wet: 0 });
    expect(conditions?.value).toEqual({ air: { value: 18, unit: "°C" }, ground: "damp" });
    expect(course?.batch).toBe(conditions?.batch);
    expect(course?.cause).toEqual({ type: "setup" });
    expect(team.ledger.current(conditionsKind, "kestrel/race").state).toBe("absent");
  });

  test("gives the conditions of one session to all of them in one touch", () => {
    const team = teamLedger();
    withForm(team, (form) => {
      fill(form);
      form.copyToAll("p1");
      expect(form.save(undefined)).toBe("Saved: course, conditions of p1, conditions of race.");
    });
    expect(settledValue(team.ledger.current(conditionsKind, "kestrel/race"))).toEqual({
      air: { value: 18, unit: "°C" },
      ground: "damp",
    });
  });

  test("leaves a temperature as it was typed when one who reads another unit changes the ground beside it", () => {
    const team = teamLedger();
    const air = { value: 22.3, unit: "°C" } as const;
    enterCourse(team.writerFor("nils"));
    written(team.writerFor("nils").set(conditionsKind, "kestrel/p1", { air, ground: "dry" }));
    showUnits({ temperature: "°F" });
    withForm(team, (form) => {
      expect(form.draft().sessions[0]?.air).toBe(72.1);
      form.setConditions("p1", { ground: "damp" });
      form.save(undefined);
    });
    showUnits({});
    expect(settledValue(team.ledger.current(conditionsKind, "kestrel/p1"))).toEqual({ air, ground: "damp" });
  });

  test("refuses parts that do not add up to 1 in the schema's words, writes nothing and keeps what is typed", () => {
    const team = teamLedger();
    withForm(team, (form) => {
      fill(form);
      form.setPart("jumpy", 0.2);
      expect(form.save(undefined)).toBeUndefined();
      expect(form.problem()).toBe("Mix: the parts steep, jumpy and wet must add up to 1, not 0.8.");
      expect(form.draft().sessions[0]).toMatchObject({ air: 18, ground: "damp" });
    });
    expect(team.ledger.current(courseKind, "kestrel").state).toBe("absent");
    expect(team.ledger.current(conditionsKind, "kestrel/p1").state).toBe("absent");
  });

  test.each([
    [{ air: 18 }, "p1: choose the ground."],
    [{ ground: "wet" as const }, "p1: enter the air temperature."],
  ])("asks for the rest of a session of which only %j is given", (fields, sentence) => {
    const team = teamLedger();
    withForm(team, (form) => {
      form.setPart("steep", 1);
      form.setConditions("p1", fields);
      expect(form.save(undefined)).toBeUndefined();
      expect(form.problem()).toBe(sentence);
    });
    expect(team.ledger.current(courseKind, "kestrel").state).toBe("absent");
  });

  test("does not save while a field holds what is no number", () => {
    const team = teamLedger();
    withForm(team, (form) => {
      fill(form);
      expect(form.save("Altitude (m)")).toBeUndefined();
      expect(form.problem()).toBe("Altitude (m): correct what is typed there first.");
    });
    expect(team.ledger.current(courseKind, "kestrel").state).toBe("absent");
  });

  test("writes only what was changed here: what somebody else entered meanwhile stays", () => {
    const team = teamLedger();
    enterCourse(team.writerFor("mia"));
    withForm(team, (form) => {
      const race = { air: { value: 30, unit: "°C" }, ground: "dry dust" } as const;
      written(team.writerFor("nils").set(conditionsKind, "kestrel/race", race));
      form.setConditions("p1", { air: 12 });
      expect(form.save(undefined)).toBe("Saved: conditions of p1.");
    });
    expect(settledValue(team.ledger.current(conditionsKind, "kestrel/race"))?.air.value).toBe(30);
  });

  test("says once that somebody else changed the same thing, then replaces it", () => {
    const team = teamLedger();
    enterCourse(team.writerFor("mia"));
    withForm(team, (form) => {
      const theirs = { air: { value: 30, unit: "°C" }, ground: "dry dust" } as const;
      written(team.writerFor("nils").set(conditionsKind, "kestrel/p1", theirs));
      form.setConditions("p1", { air: 12 });
      expect(form.save(undefined)).toBeUndefined();
      expect(form.problem()).toContain("Somebody else has changed the conditions of p1");
      expect(settledValue(team.ledger.current(conditionsKind, "kestrel/p1"))?.air.value).toBe(30);
      expect(form.save(undefined)).toBe("Saved: conditions of p1.");
    });
    expect(settledValue(team.ledger.current(conditionsKind, "kestrel/p1"))?.air.value).toBe(12);
  });

  test("says so when nothing was changed", () => {
    const team = teamLedger();
    enterCourse(team.writerFor("mia"));
    const { size } = team.ledger;
    withForm(team, (form) => expect(form.save(undefined)).toBe("Nothing was changed."));
    expect(team.ledger.size).toBe(size);
  });
});
