import { File as NodeFile } from "node:buffer";
import { createRoot } from "solid-js";
import { describe, expect, test } from "vitest";
import { createImport, type ImportDevice } from "#client/data/create-import.ts";
import { createTimes } from "#client/data/create-times.ts";
import { inPortions } from "#client/data/in-portions.ts";
import { readTeamData } from "#core/exchange/read-team-data.ts";
import { maximumUpdateBytes } from "#core/protocol/limits.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { fileOf } from "#tests/core/exchange/exchange-team.ts";

const soon = (): Promise<void> => Promise.resolve();

function deviceOf({ ledger, writerFor }: TeamLedger): ImportDevice {
  const mia = writerFor("mia");
  return {
    ledger: () => ledger,
    loaded: () => true,
    write: (entries, options) => mia.setMany(entries, options),
    revert: (id) => mia.revert(id),
  };
}

/** The team's own file with another mass for the rider, and a second venue. */
function changedFile(team: TeamLedger): string {
  const file = JSON.parse(fileOf(team.ledger));
  file.values.rider.alder.mass.value = 84;
  file.values.venue.otter = { name: "Otter Hollow", altitude: { value: 300, unit: "m" } };
  file.values.part["fork-1"].name = "";
  return JSON.stringify(file);
}

const massOf = ({ ledger }: TeamLedger) => knownValue(ledger, riderKind, "alder")?.mass.value;

describe("taking in a file", () => {
  test("shows first and writes nothing, also when it is left", async () => {
    const team = teamLedger();
    const { size } = team.ledger;
    const steps = createImport(deviceOf(team), soon);
    await steps.look("team.json", () => readTeamData(changedFile(team)));
    const seen = steps.state();
    expect(seen.state === "previewed" && [seen.preview.lines.length, seen.preview.refused.length]).toEqual([2, 1]);
    steps.leave();
    expect([steps.state().state, team.ledger.size]).toEqual(["idle", size]);
  });

  test("writes the good ones as one batch with the file as the cause, and takes all of it back", async () => {
    const team = teamLedger();
    const before = JSON.parse(fileOf(team.ledger)).values;
    const steps = createImport(deviceOf(team), soon);
    const text = changedFile(team);
    await steps.look("team.json", () => readTeamData(text));
    await steps.take();
    const done = steps.state();
    if (done.state !== "done") throw new Error(done.state);
    expect([done.sentence, massOf(team)]).toEqual(["Taken in: 2 entries.", 84]);
    expect(new Set(done.records.map(({ batch }) => batch)).size).toBe(1);
    expect(done.records[0]?.cause).toEqual({ type: "by hand", note: "From the file team.json" });
    steps.undo();
    expect(JSON.parse(fileOf(team.ledger)).values).toEqual(before);
    expect(steps.state()).toMatchObject({ state: "done", sentence: "Undone: 2 entries." });
  });

  test("an undo leaves what somebody has changed since", async () => {
    const team = teamLedger();
    const steps = createImport(deviceOf(team), soon);
    const text = changedFile(team);
    await steps.look("team.json", () => readTeamData(text));
    await steps.take();
    const rider = knownValue(team.ledger, riderKind, "alder");
    written(
      team
        .writerFor("nils")
        .set(riderKind, "alder", { ...rider, mass: { value: 90, unit: "kg" } } as typeof rider & {}),
    );
    steps.undo();
    expect(massOf(team)).toBe(90);
    expect(steps.state()).toMatchObject({ sentence: "Undone: 1 entry. 1 changed again since, and stand." });
  });

  test("shows anew, and writes nothing, when something changed while a person looked", async () => {
    const team = teamLedger();
    const steps = createImport(deviceOf(team), soon);
    const text = changedFile(team);
    await steps.look("team.json", () => readTeamData(text));
    const rider = knownValue(team.ledger, riderKind, "alder");
    written(
      team
        .writerFor("nils")
        .set(riderKind, "alder", { ...rider, mass: { value: 90, unit: "kg" } } as typeof rider & {}),
    );
    await steps.take();
    expect(steps.state()).toMatchObject({ state: "previewed", again: expect.stringContaining("Something changed") });
    expect(massOf(team)).toBe(90);
  });

  test("writes in portions that the server takes, in their order and without losing one", () => {
    const value = { note: "ü".repeat(500) };
    const entries = Array.from({ length: 3000 }, (_, index) => ({ kind: riderKind, key: `r${index}`, value }));
    const portions = inPortions(entries as never);
    expect(portions.flat()).toEqual(entries);
    expect(portions.length).toBeGreaterThan(1);
    for (const portion of portions) {
      expect(new TextEncoder().encode(JSON.stringify(portion.map((entry) => entry.value))).length).toBeLessThan(
        maximumUpdateBytes,
      );
    }
  });
});

describe("times of a timing system", () => {
  test("are shown by the guessed columns, taken in once, and the same afterwards", async () => {
    const team = teamLedger();
    const name = knownValue(team.ledger, riderKind, "alder")?.name ?? "";
    const text = `Pos;Rider;Run time\r\n1;Bo Hazel;3:40,1\r\n2;${name};3:45,213\r\n`;
    await createRoot(async (dispose) => {
      const times = createTimes(deviceOf(team), soon);
      await times.choose(new NodeFile([text], "p1.csv") as File);
      expect(times.mapping()).toEqual({ name: 1, time: 2 });
      await times.look();
      const seen = times.steps.state();
      expect(seen.state === "previewed" && [seen.preview.lines.length, seen.preview.refused.length]).toEqual([1, 1]);
      await times.steps.take();
      expect(loggedRuns(team.ledger, "kestrel").map(({ run }) => run.timeSeconds)).toEqual([225.213]);
      await times.look();
      expect(times.steps.state()).toMatchObject({ state: "previewed", preview: { lines: [], same: 1 } });
      times.map("time", undefined);
      expect(times.steps.state().state, "what was shown is no longer so").toBe("idle");
      await times.look();
      expect(times.steps.state()).toMatchObject({
        state: "refused",
        sentence: expect.stringContaining("column of the time"),
      });
      dispose();
    });
  });
});
