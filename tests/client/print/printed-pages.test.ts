import { beforeEach, describe, expect, it } from "vitest";
import { benchPrintView } from "#client/print/bench-print-view.ts";
import { outcomeText } from "#client/print/change-rows.ts";
import { ageLines } from "#client/print/occasion-lines.ts";
import { paperNamed } from "#client/print/paper.ts";
import { setupPrintView } from "#client/print/setup-print-view.ts";
import { teamPrintView } from "#client/print/team-print-view.ts";
import { benchCautions } from "#core/advice/bench-sequence.ts";
import type { Cause } from "#core/ledger/cause.ts";
import type { Writer } from "#core/ledger/write.ts";
import { describeSheetProblem, type SetupSheet, setupSheet } from "#core/planning/setup-sheet.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

let team: TeamLedger;
let mia: Writer;

beforeEach(() => {
  team = teamLedger();
  mia = team.writerFor("mia");
});

describe("the printed setup sheet", () => {
  it("has every adjuster once, those of fork and front tyre before those of shock and rear tyre", () => {
    enterCourse(mia);
    const { groups } = setupPrintView(sheet());
    expect(groups.map(({ title, rows }) => [title, rows.map(({ name }) => name)])).toEqual([
      [
        "Front: fork and tyre",
        [
          "Main pressure",
          "Secondary pressure",
          "Rebound",
          "Low-speed compression",
          "High-speed compression",
          "Tyre pressure",
        ],
      ],
      ["Rear: shock and tyre", ["Spring rate", "Preload", "Rebound", "Tyre pressure"]],
    ]);
  });

  it("says what is on the bike, and that it is not known where nobody has said", () => {
    enterCourse(mia);
    putOn("fork.main-pressure", 61);
    const main = setupPrintView(sheet()).groups[0]?.rows[0];
    const secondary = setupPrintView(sheet()).groups[0]?.rows[1];
    expect(main).toMatchObject({ onTheBike: "61 psi", standing: "adjusted" });
    expect(secondary).toMatchObject({ onTheBike: "not known", standing: "" });
  });

  it("says that no sag was measured, with room for one of each end", () => {
    enterCourse(mia);
    expect(setupPrintView(sheet()).sags).toEqual(["Fork never measured, now", "Shock never measured, now"]);
  });
});

describe("the printed bench sequence", () => {
  it("has the steps in the sequence's order, and what was on the bike before", () => {
    enterCourse(mia);
    const { mounted, sequence } = sheet();
    const { steps } = benchPrintView(mounted, sequence);
    expect(steps.map(({ number }) => number)).toEqual(sequence.steps.map((_, index) => index + 1));
    expect(steps[0]).toMatchObject({ name: "Fork, secondary pressure", from: "not known", most: "220 psi" });
  });

  it("gives the lowest of the maxima of tyre and rim as what is never passed", () => {
    enterCourse(mia);
    const { mounted, sequence } = sheet();
    const tyre = benchPrintView(mounted, sequence).steps.find(({ name }) => name === "Front tyre, pressure");
    // The builder's adjuster goes to 45 psi, the tyre is marked 40 psi and the rim 35 psi.
    expect(tyre?.most).toBe("35 psi");
  });

  it("expects a reading of the pump only where it is known what was in the chamber", () => {
    enterCourse(mia);
    expect(pumpReading()).toBe("");
    putOn("fork.main-pressure", 50, { type: "setup" });
    // 50 psi is shared with the hose, so that less is shown; the rest is the pump's tolerance of 1 psi.
    const shown = /^(\d+) psi; below (\d+) psi it lost air$/.exec(pumpReading());
    expect(Number(shown?.[1])).toBeLessThanOrEqual(50);
    expect(Number(shown?.[2])).toBe(Number(shown?.[1]) - 1);
  });

  it("names every caution of every step with the step's number", () => {
    enterCourse(mia);
    const { mounted, sequence } = sheet();
    const { cautions } = benchPrintView(mounted, sequence);
    const kinds = benchCautions.filter((caution) => sequence.steps.some((step) => step.cautions.includes(caution)));
    expect(kinds.length).toBeGreaterThan(2);
    expect(cautions).toHaveLength(kinds.length);
    const numbers = cautions.flatMap((line) => line.split(":")[0]?.match(/\d+/g) ?? []).map(Number);
    expect(new Set(numbers)).toEqual(new Set(sequence.steps.map((_, index) => index + 1)));
  });
});

describe("the printed session sheet", () => {
  it("has a row a rider and a cell an adjuster, with what to set and what is there", () => {
    enterCourse(mia);
    putOn("fork.main-pressure", 61);
    const [front, rear] = teamPrintView(team.ledger, "kestrel", "p1");
    expect(front?.columns).toHaveLength(front?.riders[0]?.cells.length ?? 0);
    expect(front?.riders[0]?.cells[0]).toMatchObject({ now: "now 61 psi", standing: "adjusted" });
    expect(rear?.riders[0]?.name).toBe("Alder");
  });

  it("says for each rider why there is no setup while the course is missing", () => {
    const [front] = teamPrintView(team.ledger, "kestrel", "p1");
    expect(front?.riders[0]?.problem).toContain("course");
  });
});

describe("what came of a change, in words", () => {
  const quiet = { before: undefined, after: undefined };

  it("compares times and complaints of the two runs", () => {
    const complaints = { front: { before: 2, after: 0 }, rear: quiet };
    expect(outcomeText({ is: "ridden", before: 1, after: 3, sameSession: true, seconds: -1.46, complaints })).toBe(
      "Run 3 against run 1: 1.5 s faster, front 2 → 0 complaints.",
    );
  });

  it("says that the runs were of different sessions, and what was not said", () => {
    const complaints = { front: { before: 1, after: undefined }, rear: quiet };
    expect(outcomeText({ is: "ridden", before: 1, after: 2, sameSession: false, seconds: undefined, complaints })).toBe(
      "Run 2 against run 1: no two times, in another session, front 1 → unsaid complaints.",
    );
  });
});

describe("the foot of a page", () => {
  it("says who printed it and when, and of when it is", () => {
    const [printed, state] = ageLines(team.ledger, Date.parse("2026-05-30T10:00:00Z"), "Kim Larch");
    expect(printed).toMatch(/^Printed .*30 May.* by Kim Larch\.$/);
    expect(state).toContain("This may be old: state of Fri");
    expect(state).toContain(`${team.ledger.size} entries`);
  });
});

describe("a paper", () => {
  it("is known by its name in capitals or not, and no other is", () => {
    expect(["a5", "A4", "LETTER", "A3", undefined].map(paperNamed)).toEqual([
      "A5",
      "A4",
      "Letter",
      undefined,
      undefined,
    ]);
  });
});

function sheet(): SetupSheet {
  const result = setupSheet(team.ledger, "kestrel", "p1", "alder");
  if (!result.ok) throw new Error(describeSheetProblem(result.problem));
  return result.sheet;
}

function pumpReading(): string {
  const { mounted, sequence } = sheet();
  const step = benchPrintView(mounted, sequence).steps.find(({ name }) => name === "Fork, main pressure");
  return step?.first ?? "no such step";
}

function putOn(path: "fork.main-pressure", value: number, cause: Cause = { type: "by hand" }): void {
  const setting = { quantity: { value, unit: "psi" as const }, standing: "on the bike" as const, weekend: "kestrel" };
  written(mia.set(settingKind, settingKey("alder", "alder-1", path), setting, { cause }));
}
