import { describe, expect, test } from "vitest";
import type { Writer } from "#core/ledger/write.ts";
import { describeProposalObstacle, proposeBaseline } from "#core/planning/baseline-review.ts";
import {
  adjustmentEntries,
  confirmationEntry,
  describeEntryProblem,
  type Occasion,
  settingEntries,
} from "#core/planning/entries.ts";
import { adviceOnRun } from "#core/planning/run-advice.ts";
import { describeSheetProblem, type SetupSheet, setupSheet } from "#core/planning/setup-sheet.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { baselineKind } from "#core/team/record-kinds.ts";
import { changelog } from "#core/weekend/changelog.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const MAIN: AdjusterPath = "fork.main-pressure";

function sheetOf({ ledger }: TeamLedger): SetupSheet {
  const result = setupSheet(ledger, "kestrel", "p1", "alder");
  if (!result.ok) throw new Error(describeSheetProblem(result.problem));
  return result.sheet;
}

function stateOf(team: TeamLedger, path: AdjusterPath): string | undefined {
  return sheetOf(team).rows.find((row) => row.path === path)?.state;
}

function occasionOf(team: TeamLedger): Occasion {
  const { mounted, setup } = sheetOf(team);
  const onTheBike = valuesOnBike(settingsOnBike(team.ledger, mounted));
  return { mounted, weekendId: "kestrel", sessionId: "p1", heldAt: setup.bench, onTheBike };
}

function putOn(
  team: TeamLedger,
  writer: Writer,
  values: SetupValues,
  cause: Parameters<typeof settingEntries>[2] = { type: "conditions", session: "p1" },
  standing: "on the bike" | "reported" = "on the bike",
) {
  const result = settingEntries(occasionOf(team), values, cause, standing);
  if (!result.ok) throw new Error(result.problem.type);
  return written(writer.setMany(result.entries));
}

/** A team whose course is entered and whose bike is set up by the sheet. */
function readyTeam(): { team: TeamLedger; mechanic: Writer } {
  const team = teamLedger();
  const mechanic = team.writerFor("mia");
  enterCourse(mechanic);
  putOn(
    team,
    mechanic,
    Object.fromEntries(sheetOf(team).rows.flatMap((row) => (row.bench ? [[row.path, row.bench]] : []))),
  );
  return { team, mechanic };
}

describe("before the bike is set", () => {
  test("without a course the sheet says what to enter", () => {
    const result = setupSheet(teamLedger().ledger, "kestrel", "p1", "alder");
    expect(result.ok ? "" : describeSheetProblem(result.problem)).toBe(
      "The course of Kestrel is not entered yet: enter how steep, jumpy and wet it is.",
    );
  });

  test("an unknown session is named with those there are", () => {
    const result = setupSheet(teamLedger().ledger, "kestrel", "p9", "alder");
    expect(result.ok ? "" : describeSheetProblem(result.problem)).toBe(
      'There is no session "p9" on this weekend; there are: p1, race.',
    );
  });

  test("every row is to set, in the safe order, and ticking it off leaves nothing", () => {
    const team = teamLedger();
    enterCourse(team.writerFor("mia"));
    expect(new Set(sheetOf(team).rows.map(({ state }) => state))).toEqual(new Set(["to set"]));
    expect(sheetOf(team).sequence.steps[0]?.path).toBe("fork.secondary-pressure");
    const { team: ready } = readyTeam();
    expect(new Set(sheetOf(ready).rows.map(({ state }) => state))).toEqual(new Set(["set"]));
    expect(sheetOf(ready).sequence.steps).toEqual([]);
  });

  test("a value above the part's maximum is refused with a sentence, and nothing is written", () => {
    const { team } = readyTeam();
    const before = team.ledger.size;
    const result = settingEntries(occasionOf(team), { [MAIN]: { value: 300, unit: "psi" } }, { type: "by hand" });
    expect(result.ok ? "" : describeEntryProblem(result.problem)).toBe(
      "Fork main pressure: 300 psi is outside the part's range of 20 psi to 110 psi.",
    );
    expect(team.ledger.size).toBe(before);
  });
});

describe("during the weekend", () => {
  function logRun(team: TeamLedger): void {
    const { mounted } = sheetOf(team);
    const setup = [...settingsOnBike(team.ledger, mounted).values()].flatMap((current) =>
      current.state === "settled" ? current.heads.map(({ id }) => id) : [],
    );
    written(
      team.writerFor("alder").set(runKind, "alder/run-1", {
        bike: "alder-1",
        weekend: "kestrel",
        session: "p1",
        setup,
        front: { end: "never reached" },
        rear: {},
      }),
    );
  }

  test("an adjustment that was taken is in the changelog with who, from what, to what, why, and its run", () => {
    const { team, mechanic } = readyTeam();
    logRun(team);
    const [logged] = loggedRuns(team.ledger, "kestrel");
    if (!logged) throw new Error("The run is missing.");
    const result = adviceOnRun(team.ledger, logged);
    const [first] = result.ok ? result.advice.adjustments : [];
    if (!first) throw new Error("There is no adjustment.");
    const entries = adjustmentEntries(occasionOf(team), logged, first);
    written(mechanic.setMany(entries.ok ? entries.entries : []));
    const [change] = changelog(team.ledger, { riderId: "alder" });
    expect(change).toMatchObject({
      path: "fork.secondary-pressure",
      from: [{ value: 110, unit: "psi" }],
      to: { value: 108, unit: "psi" },
      by: "mia",
      weekend: "kestrel",
      cause: { type: "advice", rule: "end-never-reached", run: "run-1" },
    });
    expect(loggedRuns(team.ledger, "kestrel")[0]?.decision).toEqual({ outcome: "adjusted" });
    expect(stateOf(team, "fork.secondary-pressure")).toBe("adjusted");
  });

  test("an answer that was undone before another run has not been tried: the advice is as before", () => {
    const { team, mechanic } = readyTeam();
    logRun(team);
    const [logged] = loggedRuns(team.ledger, "kestrel");
    if (!logged) throw new Error("The run is missing.");
    const adviceNow = () => {
      const result = adviceOnRun(team.ledger, logged);
      return result.ok ? result.advice.adjustments : [];
    };
    const before = adviceNow();
    const [first] = before;
    if (!first) throw new Error("There is no adjustment.");
    const entries = adjustmentEntries(occasionOf(team), logged, first);
    const taken = written(mechanic.setMany(entries.ok ? entries.entries : []));
    expect(adviceNow()).not.toEqual(before);
    written(mechanic.revert(taken[0]?.id ?? ""));
    expect(adviceNow()).toEqual(before);
  });

  test("what was measured is judged with the settings that were ridden, not with those on the bike now", () => {
    const { team, mechanic } = readyTeam();
    logRun(team);
    putOn(team, mechanic, { [MAIN]: { value: 64, unit: "psi" } }, { type: "by hand" });
    const [logged] = loggedRuns(team.ledger, "kestrel");
    expect(logged?.run.setup).toHaveLength(10);
    const ridden = logged?.run.setup?.map((id) => team.ledger.record(id)?.subject);
    expect(ridden).toContain(`setting:alder/alder-1/${MAIN}`);
  });

  test("undoing one change is one action, returns the exact value, and is itself in the changelog", () => {
    const { team, mechanic } = readyTeam();
    const [change] = putOn(team, mechanic, { [MAIN]: { value: 4.27, unit: "bar" } }, { type: "by hand" });
    written(mechanic.revert(change?.id ?? ""));
    const [undo] = changelog(team.ledger, { path: MAIN });
    expect(undo).toMatchObject({ to: { value: 60, unit: "psi" }, from: [{ value: 4.27, unit: "bar" }] });
    expect(undo?.cause).toEqual({ type: "revert", record: change?.id });
  });

  test("a rider's own change is reported until a mechanic confirms it", () => {
    const { team, mechanic } = readyTeam();
    const rebound: AdjusterPath = "fork.rebound";
    putOn(
      team,
      team.writerFor("alder"),
      { [rebound]: { value: 9, unit: "clicks" } },
      { type: "own change" },
      "reported",
    );
    expect(stateOf(team, rebound)).toBe("reported");
    const { mounted } = sheetOf(team);
    const current = settingsOnBike(team.ledger, mounted).get(rebound);
    const confirmed = confirmationEntry(mounted, rebound, current ?? { state: "absent" });
    written(mechanic.setMany(confirmed.ok ? confirmed.entries : []));
    expect(stateOf(team, rebound)).toBe("adjusted");
    expect(changelog(team.ledger, { path: rebound })[0]?.cause?.type).toBe("confirmation");
  });

  test("colder conditions change what the sheet asks of a bike that was set by it, and leave an adjustment alone", () => {
    const { team, mechanic } = readyTeam();
    putOn(team, mechanic, { "fork.rebound": { value: 9, unit: "clicks" } }, { type: "by hand" });
    enterCourse(mechanic, { steep: 0, jumpy: 1, wet: 0 });
    expect(stateOf(team, "fork.secondary-pressure")).toBe("to set");
    expect(stateOf(team, "fork.rebound")).toBe("adjusted");
  });
});

describe("how an adjuster stands", () => {
  const REBOUND: AdjusterPath = "fork.rebound";

  test("gone back to the baseline on purpose, it is adjusted and not asked for again", () => {
    const { team, mechanic } = readyTeam();
    putOn(
      team,
      mechanic,
      { [REBOUND]: { value: 9, unit: "clicks" } },
      { type: "own baseline", courseTypes: ["steep"] },
    );
    expect(stateOf(team, REBOUND)).toBe("adjusted");
  });

  test("what was set by hand to the very value of the sheet is as the sheet says", () => {
    const { team, mechanic } = readyTeam();
    putOn(team, mechanic, { [REBOUND]: { value: 9, unit: "clicks" } }, { type: "by hand" });
    putOn(team, mechanic, { [REBOUND]: { value: 8, unit: "clicks" } }, { type: "by hand" });
    expect(stateOf(team, REBOUND)).toBe("set");
  });
});

describe("after the weekend", () => {
  const ride = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;

  test("what is on the bike becomes the new baseline, and the old version stays readable", () => {
    const { team, mechanic } = readyTeam();
    putOn(team, mechanic, { [MAIN]: { value: 63, unit: "psi" } }, { type: "by hand" });
    const result = proposeBaseline(team.ledger, sheetOf(team).mounted, "steep", "kestrel", ride);
    if (!result.ok) throw new Error(result.why.map(describeProposalObstacle).join(" "));
    expect(result.proposal.differences.find(({ path }) => path === MAIN)?.difference).toEqual({
      value: 3,
      unit: "psi",
    });
    written(team.writerFor("mona").setMany([result.proposal.entry] as Parameters<Writer["setMany"]>[0]));
    const versions = team.ledger.history(baselineKind, "alder/steep");
    expect(versions.map(({ value }) => value?.values[MAIN])).toEqual([
      { value: 60, unit: "psi" },
      { value: 63, unit: "psi" },
    ]);
  });

  test("a baseline from this very weekend asks for nothing on the bike that it was made from", () => {
    const { team, mechanic } = readyTeam();
    putOn(team, mechanic, { [MAIN]: { value: 63, unit: "psi" } }, { type: "by hand" });
    const before = sheetOf(team).rows.map(({ baseline, weekend, state }) => [baseline, weekend, state]);
    const result = proposeBaseline(team.ledger, sheetOf(team).mounted, "steep", "kestrel", ride);
    if (!result.ok) throw new Error(result.why.map(describeProposalObstacle).join(" "));
    written(team.writerFor("mona").setMany([result.proposal.entry] as Parameters<Writer["setMany"]>[0]));
    expect(sheetOf(team).rows.map(({ baseline, weekend, state }) => [baseline, weekend, state])).toEqual(before);
  });

  test("a bike with an unconfirmed report gives no baseline, and says which adjuster", () => {
    const { team } = readyTeam();
    putOn(
      team,
      team.writerFor("alder"),
      { "fork.rebound": { value: 9, unit: "clicks" } },
      { type: "own change" },
      "reported",
    );
    const result = proposeBaseline(team.ledger, sheetOf(team).mounted, "steep", "kestrel", ride);
    expect(result.ok ? [] : result.why.map(describeProposalObstacle)).toEqual([
      "The fork rebound was reported by the rider and no mechanic has confirmed it yet.",
    ]);
  });
});

describe("a pressure", () => {
  test("of the same reading at another temperature is another fact: two people who say so are in dispute", () => {
    const { ledger, writerFor } = teamLedger();
    const at = (celsius: number) => ({
      quantity: { value: 62, unit: "psi" as const },
      standing: "on the bike" as const,
      heldAt: {
        temperature: { value: celsius, unit: "°C" as const },
        altitude: { value: 0, unit: "m" as const },
      },
    });
    const key = `alder/alder-1/${MAIN}`;
    const [first] = written(writerFor("mia").set(settingKind, key, at(12)));
    const apart = { ...first, id: "01ZZZZZZZZZZZZZZZZZZZZZZZZ", value: at(28), by: "rush" };
    ledger.add(apart, "rider/alder/2026");
    expect(ledger.current(settingKind, key).state).toBe("disputed");
  });
});
