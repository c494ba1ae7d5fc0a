import { beforeEach, describe, expect, it } from "vitest";
import type { Cause } from "#core/ledger/cause.ts";
import type { Writer } from "#core/ledger/write.ts";
import { newestEntry } from "#core/planning/newest-entry.ts";
import { type RiderReport, weekendReport } from "#core/planning/weekend-report.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { EndFeedback } from "#core/weekend/run.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const COMPRESSION: AdjusterPath = "fork.low-speed-compression";

let team: TeamLedger;
let mia: Writer;

beforeEach(() => {
  team = teamLedger();
  mia = team.writerFor("mia");
});

describe("what came of a change", () => {
  it("is told by the first run that had it on the bike, against the run that it answers", () => {
    const first = setClicks(9, { type: "setup" });
    logRun("run-1", [first], 232, { middle: "dives", grip: "slides" });
    logRun("run-2", [first], 231, { middle: "dives" });
    const change = setClicks(7, { type: "advice", rule: "fork-dives", run: "run-1" });
    logRun("run-3", [change], 230.5, { middle: "good" });
    const [start, answer] = report().changes;
    expect(start?.outcome).toEqual({ is: "start" });
    expect(answer).toMatchObject({
      answers: 1,
      outcome: {
        is: "ridden",
        before: 1,
        after: 3,
        sameSession: true,
        seconds: -1.5,
        complaints: { front: { before: 2, after: 0 }, rear: { before: undefined, after: undefined } },
      },
    });
    expect(report().runs.map(({ afterChange }) => afterChange)).toEqual([false, false, true]);
  });

  it("is not told by a later run whose device had not heard of the change", () => {
    const first = setClicks(9, { type: "setup" });
    logRun("run-1", [first]);
    setClicks(7, { type: "by hand", run: "run-1" });
    logRun("run-2", [first]);
    expect(report().changes[1]?.outcome).toEqual({ is: "not ridden" });
  });

  it("counts a run with what only confirms the rider's own change as a run with it", () => {
    const first = setClicks(9, { type: "setup" });
    logRun("run-1", [first]);
    const own = setClicks(8, { type: "own change" }, "reported");
    const confirmed = setClicks(8, { type: "confirmation", record: own });
    logRun("run-2", [confirmed]);
    expect(report().changes[1]?.outcome).toMatchObject({ is: "ridden", before: 1, after: 2 });
  });

  it("is that it was taken back, where it was undone", () => {
    const first = setClicks(9, { type: "setup" });
    logRun("run-1", [first]);
    const change = setClicks(7, { type: "by hand" });
    written(mia.revert(change));
    expect(report().changes[1]?.outcome).toEqual({ is: "taken back" });
  });

  it("has no complaints where nothing was said: silence is not good", () => {
    logRun("run-1", []);
    expect(report().runs[0]?.complaints).toEqual({ front: undefined, rear: undefined });
  });
});

describe("where the weekend ended", () => {
  it("is not compared before anything was set, nor without the course", () => {
    expect(report().end).toEqual({ known: false, why: "nothing was set" });
    setClicks(9, { type: "setup" });
    expect(report().end).toEqual({ known: false, why: "no course" });
  });

  it("is each adjuster's last value of the weekend against the baseline", () => {
    enterCourse(mia);
    setClicks(9, { type: "setup" });
    setClicks(7, { type: "by hand" });
    const { end } = report();
    const row = end.known ? end.rows.find(({ path }) => path === COMPRESSION) : undefined;
    expect(row).toMatchObject({ ended: { value: 7, unit: "clicks" } });
    expect((row?.baseline?.value ?? Number.NaN) + (row?.difference?.value ?? Number.NaN)).toBe(7);
    const others = end.known ? end.rows.filter(({ path }) => path !== COMPRESSION) : [];
    expect(others.every(({ ended, difference }) => ended === "unknown" && difference === undefined)).toBe(true);
  });

  it("is not moved by what another weekend set on the bike later", () => {
    enterCourse(mia);
    setClicks(7, { type: "setup" });
    setClicks(3, { type: "setup" }, "on the bike", "otter");
    const { end } = report();
    const row = end.known ? end.rows.find(({ path }) => path === COMPRESSION) : undefined;
    expect(row?.ended).toEqual({ value: 7, unit: "clicks" });
    expect(report().changes).toHaveLength(1);
  });

  it("carries a pressure from the bench to the ride: by the gas law 100 psi gauge set at 0 °C reads 108.4 psi at 20 °C", () => {
    // (100 + 14.696) · 293.15 / 273.15 − 14.696 = 108.398; the adjuster goes by whole psi.
    enterCourse(mia);
    const heldAt = { temperature: { value: 0, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
    const quantity = { value: 100, unit: "psi" } as const;
    written(
      mia.set(settingKind, settingKey("alder", "alder-1", "fork.main-pressure"), {
        quantity,
        heldAt,
        standing: "on the bike",
        weekend: "kestrel",
      }),
    );
    const { end } = report();
    const row = end.known ? end.rows.find(({ path }) => path === "fork.main-pressure") : undefined;
    expect(row?.ended).toEqual({ value: 108, unit: "psi" });
  });
});

describe("the settings over the runs", () => {
  it("are those that did not stand alike, with a gap where a run names none", () => {
    const first = setClicks(9, { type: "setup" });
    logRun("run-1", [first]);
    logRun("run-2", []);
    logRun("run-3", [setClicks(7, { type: "by hand" })]);
    expect(report().settings).toEqual([{ path: COMPRESSION, unit: "clicks", values: [9, undefined, 7] }]);
  });

  it("are none while all stood alike", () => {
    const first = setClicks(9, { type: "setup" });
    logRun("run-1", [first]);
    logRun("run-2", [first]);
    expect(report().settings).toEqual([]);
  });
});

describe("the report", () => {
  it("is none for a weekend that is not known", () => {
    expect(weekendReport(team.ledger, "nowhere")).toBeUndefined();
  });

  it("has the runs in the order in which they were logged, numbered from 1", () => {
    for (const id of ["run-b", "run-a", "run-c"]) logRun(id, []);
    expect(report().runs.map(({ number, logged }) => [number, logged.id])).toEqual([
      [1, "run-b"],
      [2, "run-a"],
      [3, "run-c"],
    ]);
  });
});

describe("the newest entry", () => {
  it("is the time of what was written last", () => {
    const before = newestEntry(team.ledger);
    const record = written(mia.set(settingKind, settingKey("alder", "alder-1", COMPRESSION), clicks(9)))[0];
    expect(newestEntry(team.ledger)).toBe(record?.at);
    expect(newestEntry(team.ledger)).not.toBe(before);
  });
});

function report(): RiderReport {
  const rider = weekendReport(team.ledger, "kestrel")?.riders[0];
  if (!rider) throw new Error("The builder's team has one rider.");
  return rider;
}

function clicks(value: number, standing: "on the bike" | "reported" = "on the bike", weekend = "kestrel") {
  return { quantity: { value, unit: "clicks" as const }, standing, weekend };
}

function setClicks(value: number, cause: Cause, standing?: "on the bike" | "reported", weekend?: string): string {
  const key = settingKey("alder", "alder-1", COMPRESSION);
  const record = written(mia.set(settingKind, key, clicks(value, standing, weekend), { cause }))[0];
  if (!record) throw new Error("The setting was the same.");
  return record.id;
}

function logRun(id: string, setup: readonly string[], timeSeconds?: number, front: EndFeedback = {}): void {
  const run = { bike: "alder-1", weekend: "kestrel", session: "p1", setup: [...setup], front, rear: {} };
  written(mia.set(runKind, `alder/${id}`, { ...run, ...(timeSeconds !== undefined && { timeSeconds }) }));
}
