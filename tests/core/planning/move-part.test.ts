/** A part that goes from bike to bike takes its hours, services and settings along, and two who disagree are both heard. */
import { beforeEach, describe, expect, test } from "vitest";
import type { Writer } from "#core/ledger/write.ts";
import { measuredSags } from "#core/planning/measured-sags.ts";
import { movePart, type PartMove } from "#core/planning/move-part.ts";
import { partHistory } from "#core/planning/part-history.ts";
import { serviceEntries } from "#core/planning/service-entries.ts";
import { serviceStatus } from "#core/planning/service-status.ts";
import { partStays } from "#core/team/part-stays.ts";
import { partsKeptAside, placesOf } from "#core/team/parts-on-bike.ts";
import { mountingKind } from "#core/team/record-kinds.ts";
import { settingKey, settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { twoChamberFork } from "#tests/builders/bike.ts";
import { enterCourse, type TeamLedger, written } from "#tests/builders/team-ledger.ts";
import { apart, bikeOf, OTHER, putOn, RACE, SPARE, settingOn, teamWithSpare } from "#tests/builders/two-bikes.ts";

let team: TeamLedger;
let mia: Writer;
let runs = 0;

function build(): TeamLedger {
  const built = teamWithSpare(twoChamberFork);
  const writer = built.writerFor("mia");
  enterCourse(writer);
  putOn(writer);
  return built;
}

beforeEach(() => {
  team = build();
  mia = team.writerFor("mia");
  runs = 0;
});

const forkToSpare: PartMove = { partId: "fork-1", from: RACE, to: SPARE, swap: true, airKept: true };

function move(changes: Partial<PartMove> = {}, ledger = team.ledger, writer = mia) {
  const result = movePart(ledger, { ...forkToSpare, ...changes });
  if (!result.ok) throw new Error(result.problem.type);
  return written(writer.setMany(result.entries));
}

function ride(bike: string, hours: number): void {
  for (let hour = 0; hour < hours; hour += 1) {
    runs += 1;
    const run = { bike, weekend: "kestrel", session: "p1", timeSeconds: 3600, front: {}, rear: {} };
    written(mia.set(runKind, `alder/run-${runs}`, run));
  }
}

function forkHours(bikeId: string): number | undefined {
  const fork = serviceStatus(team.ledger, bikeOf(team.ledger, bikeId), "kestrel").find(({ place }) => place === "fork");
  return fork?.works.find(({ work }) => work === "bath oil")?.usedHours;
}

function forkOf(bikeId: string) {
  const { bike } = bikeOf(team.ledger, bikeId);
  const at = placesOf(team.ledger, bikeId, bike).fork;
  return at.state === "mounted" ? at.partId : at.state;
}

/** A service is written down with the bike and the place; an old record names no part. */
function serve(bikeId: string, partId?: string): void {
  const mounted = bikeOf(team.ledger, bikeId);
  const settings = settingsOnBike(team.ledger, mounted);
  const done = serviceEntries({
    id: `s${team.ledger.size}`,
    mounted,
    place: "fork",
    partId,
    what: "bath oil",
    settings,
  });
  if (!done.ok) throw new Error(done.problem.type);
  written(mia.setMany(done.entries));
}

describe("a part that is moved", () => {
  test("changes places with the part that is there, and undoing both records brings both back", () => {
    const records = move();
    expect([forkOf(RACE), forkOf(SPARE)]).toEqual(["fork-2", "fork-1"]);
    expect(new Set(records.map(({ batch }) => batch)).size).toBe(1);
    for (const { id } of [...records].reverse()) written(mia.revert(id));
    expect([forkOf(RACE), forkOf(SPARE)]).toEqual(["fork-1", "fork-2"]);
    expect(settingOn(team.ledger, RACE, "fork.main-pressure")).toEqual({ value: 60, unit: "psi" });
    expect(settingOn(team.ledger, SPARE, "fork.main-pressure")).toBeUndefined();
  });

  test("leaves its place empty when it is kept on no bike, and comes back from there", () => {
    move({ to: undefined, swap: false });
    expect([forkOf(RACE), partsKeptAside(team.ledger).map(({ partId }) => partId)]).toEqual(["empty", ["fork-1"]]);
    expect(bikeOf(team.ledger, RACE).parts.fork).toBeUndefined();
    move({ from: undefined, to: RACE, swap: false });
    expect([forkOf(RACE), partsKeptAside(team.ledger)]).toEqual(["fork-1", []]);
  });

  test("brings its clicks and, with its air kept, its pressure; nothing is known of the part that had no settings", () => {
    move();
    expect(settingOn(team.ledger, SPARE, "fork.rebound")).toEqual({ value: 8, unit: "clicks" });
    expect(settingOn(team.ledger, SPARE, "fork.main-pressure")).toEqual({ value: 60, unit: "psi" });
    expect(settingOn(team.ledger, RACE, "fork.rebound")).toBeUndefined();
    expect(settingOn(team.ledger, RACE, "shock.rebound")).toEqual({ value: 7, unit: "clicks" });
  });

  test("brings no pressure when the air was released, and a tyre never does", () => {
    move({ airKept: false });
    expect(settingOn(team.ledger, SPARE, "fork.rebound")).toEqual({ value: 8, unit: "clicks" });
    expect(settingOn(team.ledger, SPARE, "fork.main-pressure")).toBeUndefined();
    move({ partId: "tyre-1" });
    expect(settingOn(team.ledger, SPARE, "front-tyre.tyre-pressure")).toBeUndefined();
  });

  test("takes its hours along, and the other part brings its own", () => {
    ride(RACE, 5);
    ride(SPARE, 2);
    move();
    expect([forkHours(RACE), forkHours(SPARE)]).toEqual([2, 5]);
    ride(SPARE, 1);
    ride(RACE, 4);
    expect([forkHours(RACE), forkHours(SPARE)]).toEqual([6, 6]);
    const shock = serviceStatus(team.ledger, bikeOf(team.ledger, RACE), "kestrel").find(
      ({ place }) => place === "shock",
    );
    expect(shock?.works[0]?.usedHours).toBe(9);
  });

  test.each([[undefined], ["fork-1"]])("takes its service along, whether the record names it (%s) or not", (partId) => {
    ride(RACE, 5);
    serve(RACE, partId);
    ride(RACE, 1);
    move();
    ride(SPARE, 2);
    expect([forkHours(RACE), forkHours(SPARE)]).toEqual([0, 3]);
  });

  test("was never away once the move is undone: the hours between count for the part that was there", () => {
    const records = move();
    ride(SPARE, 3);
    for (const { id } of [...records].reverse()) written(mia.revert(id));
    expect([forkHours(RACE), forkHours(SPARE)]).toEqual([0, 3]);
    expect(partStays(team.ledger, "fork-1", RACE)).toEqual([{ bikeId: RACE, from: undefined, until: undefined }]);
  });

  test("tells in its changelog what was set on it on the other bike, until when, and nothing of the part that came after", () => {
    const [record] = move();
    const at = Date.parse(record?.at ?? "");
    putOn(mia, RACE, { "fork.rebound": { value: 3, unit: "clicks" } });
    putOn(mia, SPARE, { "fork.rebound": { value: 10, unit: "clicks" } });
    const [now, before, ...others] = partHistory(team.ledger, "fork-1", SPARE)?.stays ?? [];
    expect([now?.bikeId, now?.from, before?.bikeId, before?.until, others]).toEqual([SPARE, at, RACE, at, []]);
    const values = (stay: typeof now) =>
      stay?.changes.filter(({ path }) => path === "fork.rebound").map(({ to }) => to?.value);
    expect(values(now)).toEqual([10, 8]);
    expect(values(before)).toEqual([8]);
    expect(before?.changes.every(({ path }) => path.startsWith("fork."))).toBe(true);
  });
});

describe("what was measured on a bike", () => {
  test("counts for the part that it was measured on: not for the one that came after it", () => {
    const [setting] = putOn(mia, RACE, { "fork.main-pressure": { value: 62, unit: "psi" } });
    const run = {
      ...{ bike: RACE, weekend: "kestrel", session: "p1", setup: [setting?.id ?? ""], rear: {} },
      front: { sag: { value: 34, unit: "mm" } },
    };
    written(mia.set(runKind, "alder/run-1", run as never));
    const sags = () => measuredSags(team.ledger, bikeOf(team.ledger, RACE), "front", undefined).length;
    expect(sags()).toBe(1);
    const records = move();
    expect(sags()).toBe(0);
    for (const { id } of [...records].reverse()) written(mia.revert(id));
    expect(sags()).toBe(1);
  });
});

describe("a move is refused, and nothing is written,", () => {
  test.each<[string, Partial<PartMove>, string]>([
    ["of a part that nobody knows", { partId: "fork-9" }, "unknown part"],
    ["to a bike that nobody knows", { to: "alder-9" }, "unknown bike"],
    ["to where it is", { to: RACE }, "same place"],
    ["from a bike that it is not on", { from: OTHER }, "not there"],
    ["from no bike while it is on one", { from: undefined }, "not there"],
  ])("%s", (_name, changes, type) => {
    expect(movePart(team.ledger, { ...forkToSpare, ...changes })).toMatchObject({ ok: false, problem: { type } });
  });

  test("while two people say different things of a setting that goes along", () => {
    const key = settingKey("alder", RACE, "fork.rebound");
    const other = build();
    const { nils, meet } = apart(team, other);
    written(nils.set(settingKind, key, { quantity: { value: 2, unit: "clicks" }, standing: "reported" }));
    written(mia.set(settingKind, key, { quantity: { value: 4, unit: "clicks" }, standing: "on the bike" }));
    meet();
    expect(movePart(team.ledger, forkToSpare)).toEqual({
      ok: false,
      problem: { type: "settings in dispute", bikeId: RACE, paths: ["fork.rebound"] },
    });
  });
});

describe("two people who move parts apart", () => {
  test("M14 to different bikes have a dispute: the part is on neither, and all three bikes show the claims", () => {
    const other = build();
    const { nils, meet } = apart(team, other);
    move({ to: SPARE });
    move({ to: OTHER }, other.ledger, nils);
    meet();
    expect(team.ledger.current(mountingKind, "fork-1").state).toBe("disputed");
    expect([forkOf(RACE), forkOf(SPARE), forkOf(OTHER)]).toEqual(["in dispute", "in dispute", "in dispute"]);
    const claims = (bikeId: string) => {
      const at = placesOf(team.ledger, bikeId, bikeOf(team.ledger, bikeId).bike).fork;
      return at.state === "in dispute" ? at.claims.map(({ partId, records }) => [partId, records[0]?.by]) : [];
    };
    expect(claims(SPARE)).toEqual([["fork-1", "mia"]]);
    expect(claims(OTHER)).toEqual([["fork-1", "nils"]]);
    expect(claims(RACE)).toEqual([
      ["fork-2", "mia"],
      ["fork-3", "nils"],
    ]);
    expect(partStays(team.ledger, "fork-1", RACE)).toEqual([]);
    expect(movePart(team.ledger, { ...forkToSpare, from: SPARE, to: OTHER })).toMatchObject({ ok: false });
  });

  test("M14 and the one who looked settles it: the hours follow the move that was, from when it was", () => {
    const other = build();
    const { nils, meet } = apart(team, other);
    ride(RACE, 5);
    const [moved] = move({ to: SPARE });
    move({ to: OTHER }, other.ledger, nils);
    meet();
    ride(SPARE, 2);
    written(mia.resolve(mountingKind, "fork-1", { bike: SPARE, from: RACE }));
    written(mia.set(mountingKind, "fork-3", { bike: OTHER, from: RACE }));
    expect([forkOf(RACE), forkOf(SPARE), forkOf(OTHER)]).toEqual(["fork-2", "fork-1", "fork-3"]);
    expect(partStays(team.ledger, "fork-1", RACE)).toEqual([
      { bikeId: RACE, from: undefined, until: Date.parse(moved?.at ?? "") },
      { bikeId: SPARE, from: Date.parse(moved?.at ?? ""), until: undefined },
    ]);
    expect(forkHours(SPARE)).toBe(7);
  });

  test("M14 to the same bike agree", () => {
    const other = build();
    const { nils, meet } = apart(team, other);
    move();
    move({}, other.ledger, nils);
    meet();
    expect([forkOf(RACE), forkOf(SPARE)]).toEqual(["fork-2", "fork-1"]);
  });

  test("M14 one part each to the same place: neither counts as there, and both are shown", () => {
    const other = build();
    const { nils, meet } = apart(team, other);
    move({ swap: false });
    move({ partId: "fork-3", from: OTHER, swap: false }, other.ledger, nils);
    meet();
    expect(forkOf(SPARE)).toBe("in dispute");
    expect([forkOf(RACE), forkOf(OTHER)]).toEqual(["empty", "empty"]);
  });

  test("M14 and what the rider reported meanwhile stands beside what the move says", () => {
    const other = build();
    const { nils, meet } = apart(team, other);
    const key = settingKey("alder", RACE, "fork.rebound");
    move();
    written(nils.set(settingKind, key, { quantity: { value: 2, unit: "clicks" }, standing: "reported" }));
    meet();
    expect(team.ledger.current(settingKind, key).state).toBe("disputed");
  });
});
