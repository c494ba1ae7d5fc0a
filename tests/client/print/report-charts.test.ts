import { describe, expect, it } from "vitest";
import { settingsChartView } from "#client/print/settings-chart-view.ts";
import { timesChartView } from "#client/print/times-chart-view.ts";
import type { ReportedRun } from "#core/planning/weekend-report.ts";
import type { Programme } from "#core/weekend/programme.ts";

const plan: Programme = {
  weekendId: "kestrel",
  weekend: { name: "Kestrel", venue: "ridge", startsOn: "2026-05-29" },
  venue: undefined,
  course: undefined,
  sessions: ["p1", "race"].map((id) => ({
    id,
    session: { name: `Session ${id}`, purpose: "practice", startsAt: "2026-05-29T10:00" },
    conditions: undefined,
  })),
};

function runsWith(times: readonly (number | undefined)[], changed: readonly number[] = []): readonly ReportedRun[] {
  return times.map((timeSeconds, index) => ({
    number: index + 1,
    logged: {
      id: `run-${index + 1}`,
      riderId: "alder",
      by: "mia",
      at: `2026-05-29T10:0${index}:00.000Z`,
      decision: undefined,
      isDecisionDisputed: false,
      run: {
        bike: "alder-1",
        weekend: "kestrel",
        session: index < 2 ? "p1" : "race",
        front: {},
        rear: {},
        ...(timeSeconds !== undefined && { timeSeconds }),
      },
    },
    complaints: { front: undefined, rear: undefined },
    afterChange: changed.includes(index + 1),
  }));
}

describe("the chart of run times", () => {
  it("is drawn lower the faster a run was, in the order of the runs", () => {
    const points = timesChartView(plan, runsWith([232, 230, 231]))?.points ?? [];
    const [first, second, third] = points;
    expect(points.map(({ label }) => label)).toEqual(["3:52", "3:50", "3:51"]);
    expect(second?.y).toBeGreaterThan(third?.y ?? Number.NaN);
    expect(third?.y).toBeGreaterThan(first?.y ?? Number.NaN);
    expect(first?.x).toBeLessThan(second?.x ?? Number.NaN);
  });

  it("leaves a run without a time out and keeps its place free", () => {
    const all = timesChartView(plan, runsWith([232, 230, 231]))?.points ?? [];
    const some = timesChartView(plan, runsWith([232, undefined, 231]))?.points ?? [];
    expect(some.map(({ x }) => x)).toEqual([all[0]?.x, all[2]?.x]);
  });

  it("marks the first runs with a change on the bike, and says in words what it shows", () => {
    const view = timesChartView(plan, runsWith([232, 230, 231], [2]));
    expect(view?.points.map(({ changed }) => changed)).toEqual([false, true, false]);
    expect(view?.described).toBe(
      "3 timed runs, the fastest run 2 in 3:50, the slowest run 1 in 3:52. The first with a change on the bike: run 2 (black).",
    );
  });

  it("names each session where its first run stands", () => {
    const sessions = timesChartView(plan, runsWith([232, 230, 231]))?.sessions ?? [];
    expect(sessions.map(({ name, line }) => [name, line === undefined])).toEqual([
      ["Session p1", true],
      ["Session race", false],
    ]);
  });

  it("stands in the middle where all times are alike, and is none of fewer than two", () => {
    const points = timesChartView(plan, runsWith([232, 232]))?.points ?? [];
    expect(points.every(({ y }) => Number.isFinite(y))).toBe(true);
    expect(timesChartView(plan, runsWith([232, undefined]))).toBeUndefined();
  });
});

describe("the chart of settings", () => {
  it("has a strip an adjuster with a value where it changes, and a gap where it is not known", () => {
    const view = settingsChartView([{ path: "fork.rebound", unit: "clicks", values: [9, 9, undefined, 7] }]);
    expect(view?.strips[0]?.labels.map(({ text }) => text)).toEqual(["9 clicks", "7 clicks"]);
    expect(view?.strips[0]?.path.match(/M/g)).toHaveLength(2);
    expect(view?.described).toEqual(["Fork, rebound: 9 clicks from run 1, not known from run 3, 7 clicks from run 4."]);
  });

  it("is none where nothing was changed", () => {
    expect(settingsChartView([])).toBeUndefined();
  });
});
