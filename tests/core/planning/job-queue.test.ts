import { beforeEach, describe, expect, test } from "vitest";
import type { WriteEntry, Writer } from "#core/ledger/write.ts";
import { confirmationEntry, decisionEntry, noRunEntries, settingEntries } from "#core/planning/entries.ts";
import { jobQueue } from "#core/planning/job-queue.ts";
import type { Job, JobKind } from "#core/planning/jobs/job.ts";
import { serviceEntries } from "#core/planning/service-entries.ts";
import { servicePlanKind } from "#core/planning/service-kinds.ts";
import { setupSheet } from "#core/planning/setup-sheet.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { bikeKind, riderKind } from "#core/team/record-kinds.ts";
import { riderBike } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { conditionsKind, courseKind, runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const MAIN: AdjusterPath = "fork.main-pressure";
const REBOUND: AdjusterPath = "fork.rebound";

/** The sessions start on 29 May at 10:00 and on 30 May at 10:00. */
const EARLY = Date.parse("2026-05-29T08:00Z");
const NOON = Date.parse("2026-05-29T12:30Z");
const AFTER = Date.parse("2026-05-30T18:00Z");

let team: TeamLedger;
let mia: Writer;

beforeEach(() => {
  team = teamLedger();
  mia = team.writerFor("mia");
  enterCourse(mia);
});

const queue = (now = EARLY, sessionId = "p1") => jobQueue(team.ledger, { weekendId: "kestrel", sessionId, now });
const kinds = (now = EARLY, sessionId = "p1") => queue(now, sessionId).map(({ kind }) => kind);
function job<Kind extends JobKind>(kind: Kind, now = EARLY, sessionId = "p1") {
  return queue(now, sessionId).find((found): found is Extract<Job, { kind: Kind }> => found.kind === kind);
}
const mounted = () => {
  const bike = riderBike(team.ledger, "alder");
  if (!bike) throw new Error("The rider has no bike.");
  return bike;
};
const write = (entries: readonly WriteEntry[]) => written(mia.setMany(entries));

/** Puts what the sheet of a session says on the bike, at the temperature of its bench. */
function putOnBike(session = "p1", values?: SetupValues): void {
  const result = setupSheet(team.ledger, "kestrel", session, "alder");
  if (!result.ok) throw new Error(result.problem.type);
  const { sheet } = result;
  const toSet = Object.fromEntries(sheet.sequence.steps.map(({ path, to }) => [path, to]));
  const entries = settingEntries(
    { mounted: mounted(), weekendId: "kestrel", sessionId: session, heldAt: sheet.setup.bench, onTheBike: {} },
    values ?? toSet,
    values ? { type: "by hand" } : { type: "conditions", session },
  );
  if (!entries.ok) throw new Error(entries.problem.type);
  write(entries.entries);
}

function ride(session = "p1", id = "run-1", hours = 0.1): void {
  const run = { bike: "alder-1", weekend: "kestrel", session, timeSeconds: Math.min(3600, hours * 3600) };
  write([{ kind: runKind, key: `alder/${id}`, value: { ...run, front: { end: "hits hard" }, rear: {} } }]);
}

function report(path: AdjusterPath, value: number): void {
  const quantity = { value, unit: "clicks" };
  written(
    team
      .writerFor("alder")
      .set(settingKind, `alder/alder-1/${path}`, { quantity, standing: "reported", weekend: "kestrel" } as never, {
        cause: { type: "own change" },
      }),
  );
}

/** Somebody else set the same adjuster while he was apart. */
function setApart(path: AdjusterPath, value: number): void {
  team.ledger.add(
    {
      version: 1,
      id: "02000000000000000000000001",
      subject: `setting:alder/alder-1/${path}`,
      value: { quantity: { value, unit: "clicks" }, standing: "on the bike", weekend: "kestrel" },
      supersedes: [],
      by: "nils",
      device: "phone",
      at: "2026-05-29T09:59:00.000Z",
    },
    "rider/alder/2026",
  );
}

describe("a change to make", () => {
  test("is there while the bike differs from the sheet, with the steps in their order, until the session's start", () => {
    const change = job("change to make");
    expect(change).toMatchObject({
      riderId: "alder",
      due: { sessionId: "p1", name: "p1", startsAt: "2026-05-29T10:00", at: Date.parse("2026-05-29T10:00Z") },
    });
    expect(change?.sequence.steps.length).toBe(change?.sheet.rows.length);
    putOnBike();
    expect(kinds()).toEqual([]);
  });

  test("is not there before course and conditions are known: nobody knows what to set", () => {
    team = teamLedger();
    expect(kinds()).toEqual([]);
  });

  test("comes back with a new ground, and has no time left once its session is over", () => {
    putOnBike();
    write([{ kind: conditionsKind, key: "kestrel/p1", value: { air: { value: 20, unit: "°C" }, ground: "wet" } }]);
    expect(kinds()).toEqual(["change to make"]);
    expect(job("change to make", NOON)).not.toHaveProperty("due");
  });
});

describe("a pressure check", () => {
  const warmRace = () =>
    write([{ kind: conditionsKind, key: "kestrel/race", value: { air: { value: 32, unit: "°C" }, ground: "dry" } }]);

  test("is there when the bike was right for its session and the next one is warmer, and gone once it is set", () => {
    putOnBike();
    expect(kinds(NOON, "race").filter((kind) => kind !== "feedback missing")).toEqual([]);
    warmRace();
    const check = job("pressure check", NOON, "race");
    expect(check?.due?.sessionId).toBe("race");
    expect(check?.chosen).toEqual([]);
    expect(check?.sequence.steps.map(({ path }) => path)).toContain(MAIN);
    // 60 psi at 20 °C reads (60 + 14.7) × 305.15 / 293.15 − 14.7 = 63.1 psi at 32 °C (Gay-Lussac), to be let off to 60.
    expect(check?.sequence.steps.find(({ path }) => path === MAIN)).toMatchObject({
      from: { value: 63, unit: "psi" },
      to: { value: 60, unit: "psi" },
    });
    expect(job("change to make", NOON, "race")).toBeUndefined();
    putOnBike("race");
    expect(job("pressure check", NOON, "race")).toBeUndefined();
  });

  test("keeps a pressure that somebody chose, carried to the new temperature", () => {
    putOnBike();
    putOnBike("p1", { [MAIN]: { value: 66, unit: "psi" } });
    warmRace();
    const check = job("pressure check", NOON, "race");
    expect(check?.chosen).toContain(MAIN);
    expect(check?.sequence.steps.find(({ path }) => path === MAIN)?.to).toEqual({ value: 66, unit: "psi" });
  });

  test("is not there for a chosen pressure when the difference cannot be felt", () => {
    putOnBike();
    putOnBike("p1", { [MAIN]: { value: 66, unit: "psi" } });
    // 3 °C more are 0.8 psi on 66 psi; the adjuster is felt from 2 psi on.
    write([{ kind: conditionsKind, key: "kestrel/race", value: { air: { value: 23, unit: "°C" }, ground: "dry" } }]);
    expect(job("pressure check", NOON, "race")?.chosen ?? []).toEqual([]);
  });

  test("is a change to make when the ground asks for more than the temperature does", () => {
    putOnBike();
    write([{ kind: conditionsKind, key: "kestrel/race", value: { air: { value: 32, unit: "°C" }, ground: "mud" } }]);
    expect(kinds(NOON, "race")).toContain("change to make");
    expect(kinds(NOON, "race")).not.toContain("pressure check");
  });
});

describe("feedback", () => {
  beforeEach(() => putOnBike());

  test("is missing from a session that is over, until the rider logs a run of it", () => {
    expect(kinds(EARLY)).toEqual([]);
    expect(job("feedback missing", NOON)).toMatchObject({ riderId: "alder", due: { sessionId: "race" } });
    expect(job("feedback missing", AFTER)?.sessions.map(({ id }) => id)).toEqual(["p1", "race"]);
    expect(job("feedback missing", AFTER)).not.toHaveProperty("due");
    ride("p1");
    expect(job("feedback missing", NOON)).toBeUndefined();
  });

  test("is not waited for once somebody has said that there is none, and is again when he takes it back", () => {
    const [record] = write(noRunEntries({ riderId: "alder", weekendId: "kestrel" }, ["p1"], "did not ride"));
    expect(job("feedback missing", NOON)).toBeUndefined();
    expect(job("feedback missing", AFTER)?.sessions.map(({ id }) => id)).toEqual(["race"]);
    written(mia.revert(record?.id ?? ""));
    expect(job("feedback missing", NOON)?.sessions.map(({ id }) => id)).toEqual(["p1"]);
  });

  test("is no longer asked for once the weekend is over", () => {
    expect(kinds(Date.parse("2026-06-02T23:00Z"))).toContain("feedback missing");
    expect(kinds(Date.parse("2026-06-03T00:00Z"))).not.toContain("feedback missing");
  });

  test("of a run is to decide on until somebody has", () => {
    ride();
    const decide = job("feedback to decide on", NOON);
    expect(decide?.logged.id).toBe("run-1");
    const [logged] = loggedRuns(team.ledger, "kestrel", "alder");
    if (!logged) throw new Error("No run.");
    write([decisionEntry(logged, "left as it is")]);
    expect(job("feedback to decide on", NOON)).toBeUndefined();
  });
});

describe("a reported change", () => {
  test("is to confirm until a mechanic has seen it", () => {
    putOnBike();
    report(REBOUND, 5);
    const reported = job("reported change to confirm");
    expect(reported?.path).toBe(REBOUND);
    const current = settingsOnBike(team.ledger, mounted()).get(REBOUND);
    const entry = confirmationEntry(mounted(), REBOUND, current ?? { state: "absent" });
    if (!entry.ok) throw new Error(entry.problem.type);
    write(entry.entries);
    expect(kinds()).toEqual([]);
  });
});

describe("a dispute", () => {
  test("about a bike is its rider's, about the course the team's; each goes when it is settled", () => {
    putOnBike();
    setApart(REBOUND, 3);
    expect(job("dispute to check")).toMatchObject({ riderId: "alder", dispute: { kind: "setting" } });
    written(
      mia.resolve(settingKind, `alder/alder-1/${REBOUND}`, {
        quantity: { value: 3, unit: "clicks" },
        standing: "on the bike",
      }),
    );
    expect(job("dispute to check")).toBeUndefined();
    team.ledger.add(
      {
        version: 1,
        id: "02000000000000000000000002",
        subject: "course:kestrel",
        value: { mix: { steep: 0, jumpy: 1, wet: 0 }, altitude: { value: 0, unit: "m" } },
        supersedes: [],
        by: "nils",
        device: "phone",
        at: "2026-05-29T09:59:00.000Z",
      },
      "team",
    );
    expect(job("dispute to check")).not.toHaveProperty("riderId");
    expect(team.ledger.current(courseKind, "kestrel").state).toBe("disputed");
  });

  test("about how a run was answered is no feedback to decide on beside it", () => {
    putOnBike();
    ride();
    const [logged] = loggedRuns(team.ledger, "kestrel", "alder");
    if (!logged) throw new Error("No run.");
    write([decisionEntry(logged, "left as it is")]);
    team.ledger.add(
      {
        version: 1,
        id: "02000000000000000000000003",
        subject: "decision:alder/run-1",
        value: { outcome: "adjusted" },
        supersedes: [],
        by: "nils",
        device: "phone",
        at: "2026-05-29T09:59:00.000Z",
      },
      "rider/alder/2026",
    );
    expect(kinds()).toEqual(["dispute to check"]);
  });
});

describe("service", () => {
  test("is due from its part of the interval on, overdue past it, and gone once it is written down", () => {
    putOnBike();
    write([{ kind: servicePlanKind, key: "team", value: { bathOilHours: 1.1, completeHours: 100 } }]);
    ride("p1", "run-1", 1);
    expect(job("service due")).toMatchObject({ place: "fork", status: { work: "bath oil" } });
    ride("p1", "run-2", 1);
    expect(job("service due")).toBeUndefined();
    expect(job("service overdue")).toMatchObject({ place: "fork", status: { work: "bath oil" } });
    const settings = settingsOnBike(team.ledger, mounted());
    const done = serviceEntries({ id: "s1", mounted: mounted(), place: "fork", what: "bath oil", settings });
    if (!done.ok) throw new Error(done.problem.type);
    write(done.entries);
    expect(job("service overdue")).toBeUndefined();
  });
});

describe("the order", () => {
  /** A second rider on a bike of his own, with the parts that the first has. */
  function secondRider(): void {
    const { rider, bike } = mounted();
    write([
      { kind: riderKind, key: "birch", value: { ...rider, name: "Birch", bike: "birch-1", plate: 3 } },
      { kind: riderKind, key: "alder", value: { ...rider, plate: 7 } },
      { kind: bikeKind, key: "birch-1", value: { ...bike, name: "Birch one", rider: "birch" } },
    ]);
  }

  test("is by the session that a job is due for, then by urgency, then by plate", () => {
    secondRider();
    putOnBike();
    write([{ kind: servicePlanKind, key: "team", value: { bathOilHours: 1, completeHours: 100 } }]);
    ride("race", "run-1", 1);
    ride("race", "run-2", 1);
    report("shock.rebound", 3);
    setApart(REBOUND, 3);
    write([{ kind: conditionsKind, key: "kestrel/p1", value: { air: { value: 20, unit: "°C" }, ground: "wet" } }]);
    expect(queue().map(({ kind, riderId }) => `${kind}: ${riderId}`)).toEqual([
      "dispute to check: alder",
      "reported change to confirm: alder",
      "service overdue: alder",
      "feedback to decide on: alder",
      "feedback to decide on: alder",
      "change to make: alder",
    ]);
    // At noon the first session is over: what is to set for it has no time left, and comes last.
    expect(
      queue(NOON)
        .map(({ kind }) => kind)
        .slice(-2),
    ).toEqual(["feedback missing", "change to make"]);
  });

  test("is by plate where all else is equal, and no two jobs have one id", () => {
    secondRider();
    ride("p1", "run-1");
    write([
      {
        kind: runKind,
        key: "birch/run-9",
        value: { bike: "birch-1", weekend: "kestrel", session: "p1", front: {}, rear: {} },
      },
    ]);
    const decide = queue().filter(({ kind }) => kind === "feedback to decide on");
    expect(decide.map(({ riderId }) => riderId)).toEqual(["birch", "alder"]);
    expect(new Set(queue().map(({ id }) => id)).size).toBe(queue().length);
  });
});
