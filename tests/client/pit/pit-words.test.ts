import { describe, expect, test } from "vitest";
import { byHandEntries } from "#client/pit/by-hand.ts";
import { changeLines } from "#client/pit/change-lines.ts";
import { disputeLines } from "#client/pit/dispute-lines.ts";
import { nextPage } from "#client/pit/page-size.ts";
import { predictionRows } from "#client/pit/prediction-rows.ts";
import { lapTime, runReport } from "#client/pit/report-lines.ts";
import { runAnswerText } from "#client/pit/run-answer.ts";
import type { Prediction } from "#core/advice/prediction.ts";
import { hertz, metres, newtons } from "#core/quantity/quantity.ts";
import { wantedProgramme } from "#core/weekend/programme.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { arriveFromElsewhere, occasionFor, REBOUND } from "./pit-team.ts";

function setRebound(team: TeamLedger, value: number, run?: ReturnType<typeof loggedRuns>[number]) {
  const result = byHandEntries(occasionFor(team), { path: REBOUND, value, note: "" }, run);
  if (!result.ok) throw new Error(result.problem.type);
  return written(team.writerFor("mia").setMany(result.entries));
}

function preparedTeam(): TeamLedger {
  const team = teamLedger();
  enterCourse(team.writerFor("mia"));
  return team;
}

/** Rebound 8, then 10, and apart from that somebody says 6. */
function disputedTeam(): TeamLedger {
  const team = preparedTeam();
  const [first] = setRebound(team, 8);
  setRebound(team, 10);
  arriveFromElsewhere(team, REBOUND, { value: 6, unit: "clicks" }, [first?.id ?? ""]);
  return team;
}

describe("the pit", () => {
  test("lists a dispute with the rider, the adjuster, and who says what", () => {
    expect(disputeLines(disputedTeam().ledger)).toMatchObject([
      {
        rider: expect.stringMatching(/./),
        sentence: "Fork rebound: different values from Mia and nils",
        path: "/pit/rider/alder",
      },
    ]);
  });

  test("opens on the weekend in the address, and on the current one when that is unknown", () => {
    const { ledger } = teamLedger();
    expect(wantedProgramme(ledger, "kestrel", "2026-01-01")?.weekendId).toBe("kestrel");
    expect(wantedProgramme(ledger, "no-such", "2026-05-29")?.weekendId).toBe("kestrel");
  });
});

describe("the changelog", () => {
  test("offers to go back to the value before, and for a first value to none", () => {
    const team = preparedTeam();
    setRebound(team, 8);
    expect(changeLines(team.ledger, "alder").map(({ undo }) => undo?.label)).toEqual(["Undo: no value, as before"]);
    setRebound(team, 10);
    expect(changeLines(team.ledger, "alder").map(({ undo, holds }) => [undo?.label, holds])).toEqual([
      ["Undo: back to 8 clicks", "current"],
      [undefined, undefined],
    ]);
  });

  test("names a value once that two people had said apart", () => {
    const team = preparedTeam();
    setRebound(team, 8);
    arriveFromElsewhere(team, REBOUND, { value: 8, unit: "clicks" }, []);
    setRebound(team, 10);
    const line = changeLines(team.ledger, "alder").find(({ to }) => to === "10 clicks");
    expect(line?.from).toBe("8 clicks");
  });

  test("offers no undo for an adjuster in dispute: that is settled at the bike", () => {
    const lines = changeLines(disputedTeam().ledger, "alder");
    expect(lines.map(({ undo }) => undo)).toEqual([undefined, undefined, undefined]);
    expect(lines.filter(({ holds }) => holds === "in dispute")).toHaveLength(2);
  });

  test("names the run that a change answers, and the answer leaves out what was undone", () => {
    const team = preparedTeam();
    setRebound(team, 8);
    written(
      team
        .writerFor("mia")
        .set(runKind, "alder/run-1", { bike: "alder-1", weekend: "kestrel", session: "p1", front: {}, rear: {} }),
    );
    const [open] = loggedRuns(team.ledger, "kestrel", "alder");
    if (!open) throw new Error("The run was not logged.");
    expect(runAnswerText(team.ledger, open)).toEqual({ tag: "To answer", changes: [] });
    const [record] = setRebound(team, 10, open);
    const [answered] = loggedRuns(team.ledger, "kestrel", "alder");
    if (!answered || !record) throw new Error("The run was not answered.");
    expect(changeLines(team.ledger, "alder")[0]?.run).toMatch(/^p1, logged /);
    expect(runAnswerText(team.ledger, answered)).toEqual({
      tag: "Answered: adjusted",
      changes: ["Fork rebound: 8 clicks → 10 clicks"],
    });
    written(team.writerFor("mia").revert(record.id));
    expect(runAnswerText(team.ledger, answered).changes).toEqual([]);
  });
});

describe("a run in words", () => {
  test("lists what was measured and felt, and leaves out what was not said", () => {
    const run = {
      bike: "alder-1",
      weekend: "kestrel",
      session: "p1",
      front: { sag: { value: 38, unit: "mm" as const }, bottomOuts: 0, end: "hits hard" as const },
      rear: {},
    };
    expect(runReport(run)).toEqual([
      {
        end: "front",
        lines: [
          { name: "Sag", text: "38 mm" },
          { name: "Bottom-outs", text: "0" },
          { name: "End", text: "hits hard" },
        ],
      },
      { end: "rear", lines: [] },
    ]);
  });

  test.each([
    [125.4, "2:05.4"],
    [59.96, "1:00.0"],
    [600, "10:00.0"],
    [9.05, "0:09.1"],
  ])("%s s is %s", (seconds, text) => {
    expect(lapTime(seconds)).toBe(text);
  });
});

describe("a prediction", () => {
  const before: Prediction = {
    sag: metres(0.0384),
    forceAtHalf: newtons(893),
    forceAtNineTenths: newtons(1866),
    forceAtFull: newtons(2335),
    frequency: hertz(2.4167),
    strokeUsed: metres(0.2),
    bottomsOut: true,
  };

  test("stands now and then, with no more digits than its inputs carry", () => {
    const { strokeUsed: _, ...after } = { ...before, sag: metres(0.036), bottomsOut: false };
    expect(predictionRows(before, after)).toEqual([
      { name: "Sag", before: "38 mm", after: "36 mm" },
      { name: "Force at half the stroke", before: "890 N", after: "890 N" },
      { name: "Force at 90 % of the stroke", before: "1870 N", after: "1870 N" },
      { name: "Force at full stroke", before: "2340 N", after: "2340 N" },
      { name: "Natural frequency", before: "2.42 Hz", after: "2.42 Hz" },
    ]);
  });

  test("says that a hit uses all of the stroke and has energy left", () => {
    const after = { ...before, strokeUsed: metres(0.195), bottomsOut: false };
    expect(predictionRows(before, after).find(({ name }) => name.startsWith("Travel"))).toEqual({
      name: "Travel used by the same hit",
      before: "200 mm, bottoms out",
      after: "195 mm",
    });
  });

  test("of which nothing changes, or of which one half is missing, is left out", () => {
    expect(predictionRows(before, { ...before })).toEqual([]);
    expect(predictionRows(before, undefined)).toEqual([]);
  });
});

test("a long list grows by a page, and the last page is what is left", () => {
  expect(nextPage(12, 50)).toEqual({ shown: 36, more: 24 });
  expect(nextPage(36, 50)).toEqual({ shown: 50, more: 14 });
  expect(nextPage(12, 5)).toEqual({ shown: 12, more: 0 });
});
