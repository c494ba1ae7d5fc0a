import { beforeEach, describe, expect, test } from "vitest";
import { settledValue } from "#core/ledger/ledger.ts";
import type { Writer } from "#core/ledger/write.ts";
import { type ServiceDone, serviceEntries } from "#core/planning/service-entries.ts";
import { serviceKind, servicePlanKind } from "#core/planning/service-kinds.ts";
import { allServices, serviceStatus } from "#core/planning/service-status.ts";
import { riderBike } from "#core/team/roster.ts";
import { settingKey, settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { conditionsKind, runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { setupValues } from "#tests/builders/bike.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

let team: TeamLedger;
let mia: Writer;
let runs: number;

beforeEach(() => {
  team = teamLedger();
  mia = team.writerFor("mia");
  runs = 0;
  enterCourse(mia);
});

function mounted() {
  const bike = riderBike(team.ledger, "alder");
  if (!bike) throw new Error("There is no bike.");
  return bike;
}

function ride(hours: number, session = "p1", bike = "alder-1"): void {
  // A run lasts an hour at most, as its schema says.
  for (let hour = 0; hour < hours; hour += 1) {
    runs += 1;
    const run = { bike, weekend: "kestrel", session, timeSeconds: 3600, front: {}, rear: {} };
    written(mia.set(runKind, `alder/run-${runs}`, run));
  }
}

function serve(done: Partial<ServiceDone> = {}) {
  const settings = settingsOnBike(team.ledger, mounted());
  const entries = serviceEntries({
    id: `s${team.ledger.size}`,
    mounted: mounted(),
    place: "fork",
    what: "bath oil",
    settings,
    ...done,
  });
  if (!entries.ok) throw new Error(entries.problem.type);
  return written(mia.setMany(entries.entries));
}

function workOf(place: "fork" | "shock", what: "bath oil" | "complete") {
  const part = serviceStatus(team.ledger, mounted(), "kestrel").find((status) => status.place === place);
  return part?.works.find(({ work }) => work === what);
}

describe("the hours of a part", () => {
  test("are summed from the runs of its bike, weighted by the ground of each session", () => {
    written(mia.set(conditionsKind, "kestrel/race", { air: { value: 12, unit: "°C" }, ground: "mud" }));
    ride(2);
    ride(1, "race");
    ride(5, "p1", "another-bike");
    expect(workOf("fork", "bath oil")?.usedHours).toBe(4);
    expect(workOf("shock", "complete")?.usedHours).toBe(4);
    expect(workOf("shock", "bath oil")).toBeUndefined();
  });

  test("follow the team's plan", () => {
    written(mia.set(servicePlanKind, "team", { weights: { dry: 2 }, bathOilHours: 20 }));
    ride(10);
    expect(workOf("fork", "bath oil")).toMatchObject({ usedHours: 20, limitHours: 20, state: "due" });
  });

  test("follow the ground when it is corrected later", () => {
    ride(1);
    written(mia.set(conditionsKind, "kestrel/p1", { air: { value: 20, unit: "°C" }, ground: "wet" }));
    expect(workOf("fork", "bath oil")?.usedHours).toBe(1.5);
  });
});

describe("a part", () => {
  test("stands as that of its works which stands worst", () => {
    ride(51);
    const [fork, shock] = serviceStatus(team.ledger, mounted(), "kestrel");
    expect(fork).toMatchObject({ place: "fork", state: "overdue" });
    expect(fork?.works.map(({ state }) => state)).toEqual(["overdue", "in use"]);
    expect(shock).toMatchObject({ place: "shock", state: "in use" });
  });

  test("tells the runs and the sessions of this weekend that are left", () => {
    ride(6);
    ride(3, "race");
    // 9 h in 9 runs of 2 sessions; 36 h are left until 45, at 4.5 h a session.
    expect(workOf("fork", "bath oil")?.untilDue).toEqual({ runs: 36, sessions: 8 });
    expect(workOf("fork", "bath oil")?.untilLimit).toEqual({ runs: 41, sessions: 9 });
  });
});

describe("a service that was done", () => {
  beforeEach(() => {
    for (const [path, quantity] of Object.entries(setupValues)) {
      const key = settingKey("alder", "alder-1", path as keyof typeof setupValues);
      written(mia.set(settingKind, key, { quantity, standing: "on the bike" }));
    }
  });

  test("holds exactly what was on the bike, whatever is set afterwards", () => {
    const rebound = settingKey("alder", "alder-1", "fork.rebound");
    written(mia.set(settingKind, rebound, { quantity: { value: 5, unit: "clicks" }, standing: "reported" }));
    const before = valuesOnBike(settingsOnBike(team.ledger, mounted()));
    const [record] = serve({ note: "new wipers", weekendId: "kestrel" });
    written(mia.set(settingKind, rebound, { quantity: { value: 0, unit: "clicks" }, standing: "on the bike" }));
    expect(allServices(team.ledger)).toMatchObject([
      {
        by: "mia",
        at: Date.parse(record?.at ?? ""),
        service: {
          bike: "alder-1",
          place: "fork",
          what: "bath oil",
          weekend: "kestrel",
          note: "new wipers",
          settings: { ...setupValues, "fork.rebound": { value: 5, unit: "clicks" } },
        },
      },
    ]);
    expect(allServices(team.ledger)[0]?.service.settings).toEqual(before);
  });

  test("sets the hours back, and its undo brings them again", () => {
    ride(10);
    const [record] = serve({ hoursBefore: 3 });
    ride(1);
    expect(workOf("fork", "bath oil")).toMatchObject({ usedHours: 4, last: { service: { what: "bath oil" } } });
    expect(workOf("fork", "complete")?.usedHours).toBe(11);
    written(mia.revert(record?.id ?? ""));
    expect(workOf("fork", "bath oil")).toMatchObject({ usedHours: 11, last: undefined });
  });

  test("is refused where the part has no such work, and nothing is written", () => {
    expect(
      serviceEntries({ id: "s1", mounted: mounted(), place: "shock", what: "bath oil", settings: new Map() }),
    ).toEqual({
      ok: false,
      problem: { type: "no such service", place: "shock", bike: "Alder one", what: "bath oil" },
    });
  });

  test("is kept in the rider's own document", () => {
    const [record] = serve();
    expect(record?.subject).toMatch(/^service:alder\//);
    expect(
      settledValue(team.ledger.current(serviceKind, record?.subject.slice("service:".length) ?? "")),
    ).toBeDefined();
    expect(team.ledger.documentOf(record?.id ?? "")).toBe("rider/alder/2026");
  });
});
