/** What a spare bike gets of a setup: every value judged by its own limits, and every difference named. */
import { beforeEach, describe, expect, test } from "vitest";
import type { Writer } from "#core/ledger/write.ts";
import { type CopyRow, copyEntries, copySetup } from "#core/planning/copy-setup.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { provenanceOf } from "#core/team/provenance.ts";
import { bikeKind, partKind } from "#core/team/record-kinds.ts";
import { settingKey, settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { oneChamberFork, setupValues, twoChamberFork } from "#tests/builders/bike.ts";
import { type TeamLedger, written } from "#tests/builders/team-ledger.ts";
import { apart, bikeOf, putOn, RACE, SPARE, settingOn, teamWithSpare } from "#tests/builders/two-bikes.ts";

let team: TeamLedger;
let mia: Writer;
const bench = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;

beforeEach(() => {
  team = teamWithSpare();
  mia = team.writerFor("mia");
  putOn(mia);
});

function bike(bikeId: string) {
  const mounted = bikeOf(team.ledger, bikeId);
  return { mounted, settings: settingsOnBike(team.ledger, mounted) };
}

const copy = () => copySetup(bike(RACE), bike(SPARE), bench);

function row(path: AdjusterPath): CopyRow {
  const found = copy().rows.find((each) => each.path === path);
  if (!found) throw new Error(`There is no row ${path}.`);
  return found;
}

describe("a value of the setup", () => {
  test("is copied where the other bike has the adjuster with the same range", () => {
    expect(row("fork.rebound")).toMatchObject({ value: { value: 8 }, now: undefined, outcome: { type: "copied" } });
    expect(row("front-tyre.tyre-pressure")).toMatchObject({
      outcome: { type: "copied" },
      differences: [],
      measure: undefined,
    });
  });

  test("is refused with the limit that the other bike has, and not clamped to it", () => {
    expect(row("shock.spring-rate")).toMatchObject({
      value: { value: 85, unit: "N/mm" },
      outcome: {
        type: "refused",
        problem: { type: "out of range", minimum: { value: 90, unit: "N/mm" }, maximum: { value: 140, unit: "N/mm" } },
      },
      differences: [
        {
          type: "range",
          from: [
            { value: 40, unit: "N/mm" },
            { value: 120, unit: "N/mm" },
          ],
          to: [
            { value: 90, unit: "N/mm" },
            { value: 140, unit: "N/mm" },
          ],
        },
      ],
    });
  });

  test("has no adjuster to go to", () => {
    expect(row("fork.secondary-pressure").outcome).toEqual({ type: "no adjuster" });
    expect(row("fork.high-speed-compression").outcome).toEqual({ type: "no adjuster" });
    expect(row("fork.volume-spacers").outcome).toEqual({ type: "only there" });
  });

  test("is there already", () => {
    putOn(mia, SPARE, { "fork.rebound": { value: 8, unit: "clicks" } });
    expect(row("fork.rebound").outcome).toEqual({ type: "same" });
  });

  test("is not known, or in dispute, and then is not copied", () => {
    const key = settingKey("alder", RACE, "fork.rebound");
    const other = teamWithSpare();
    putOn(other.writerFor("mia"));
    const { nils, meet } = apart(team, other);
    written(nils.set(settingKind, key, { quantity: { value: 2, unit: "clicks" }, standing: "reported" }));
    written(mia.set(settingKind, key, { quantity: { value: 4, unit: "clicks" }, standing: "on the bike" }));
    meet();
    written(mia.voidSubject(settingKind, settingKey("alder", RACE, "shock.rebound"), "a mistake"));
    expect(row("fork.rebound")).toMatchObject({ value: undefined, outcome: { type: "in dispute" } });
    expect(row("shock.rebound")).toMatchObject({ value: undefined, outcome: { type: "not known" } });
  });

  test("is said to be unseen while only the rider has said so", () => {
    const key = settingKey("alder", RACE, "fork.rebound");
    written(mia.set(settingKind, key, { quantity: { value: 5, unit: "clicks" }, standing: "reported" }));
    expect([row("fork.rebound").reported, row("fork.low-speed-compression").reported]).toEqual([true, false]);
  });

  test("that makes another spring there asks for the sag, and clicks of another damper are another damping", () => {
    expect(row("fork.main-pressure").measure).toBe("sag");
    expect(row("shock.preload").measure).toBe("sag");
    expect(row("shock.rebound").measure).toBe("damping");
    expect(row("rear-tyre.tyre-pressure").measure).toBeUndefined();
  });

  test("of a pressure is what the gauge reads at the bench now", () => {
    const cold = { temperature: { value: 0, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
    const key = settingKey("alder", RACE, "fork.main-pressure");
    written(
      mia.set(settingKind, key, { quantity: { value: 60, unit: "psi" }, standing: "on the bike", heldAt: bench }),
    );
    const read = copySetup(bike(RACE), bike(SPARE), cold).rows.find(({ path }) => path === "fork.main-pressure");
    // Gay-Lussac: (60 + 14.696) psi × 273.15 K / 293.15 K − 14.696 psi = 54.9 psi, in steps of 1 psi.
    expect(read?.value).toEqual({ value: 55, unit: "psi" });
  });
});

describe("the limits of the other bike", () => {
  beforeEach(() => {
    team = teamWithSpare(twoChamberFork);
    mia = team.writerFor("mia");
    putOn(mia);
  });

  test("are judged beside what stays on it: a chamber that is refused can make the other one too close", () => {
    const small = twoChamberFork.adjusters.map((adjuster) =>
      adjuster.kind === "secondary-pressure" ? { ...adjuster, maximum: 100 } : adjuster,
    );
    written(mia.set(partKind, "fork-2", { ...twoChamberFork, adjusters: small }));
    putOn(mia, SPARE, {
      "fork.main-pressure": { value: 40, unit: "psi" },
      "fork.secondary-pressure": { value: 62, unit: "psi" },
    });
    expect(row("fork.secondary-pressure").outcome).toMatchObject({ problem: { type: "out of range" } });
    expect(row("fork.main-pressure").outcome).toMatchObject({ problem: { type: "chambers too close" } });
    expect(row("fork.rebound").outcome).toEqual({ type: "copied" });
  });

  test("hold for the marked maximum of tyre and rim", () => {
    putOn(mia, RACE, { "front-tyre.tyre-pressure": { value: 30, unit: "psi" } });
    const tyre = bikeOf(team.ledger, SPARE).parts["front-tyre"];
    if (tyre?.archetype !== "tyre") throw new Error("There is no tyre.");
    written(
      mia.set(partKind, "front-2", {
        ...tyre,
        geometry: { ...tyre.geometry, rimMarkedMaximum: { value: 28, unit: "psi" } },
      }),
    );
    expect(row("front-tyre.tyre-pressure").outcome).toMatchObject({
      problem: { type: "above marked maximum", maximum: { value: 28 }, of: "rim" },
    });
  });
});

describe("the differences of parts and bikes", () => {
  test("are named with both sides", () => {
    expect(copy().differences).toEqual(
      expect.arrayContaining([
        { type: "name", place: "fork", from: "Two-chamber fork", to: "One-chamber fork" },
        { type: "archetype", place: "fork", from: "two-chamber air", to: "air" },
        {
          type: "dimension",
          place: "shock",
          dimension: "stroke",
          from: { value: 70, unit: "mm" },
          to: { value: 65, unit: "mm" },
        },
        { type: "leverage", place: "shock", from: expect.closeTo(190 / 70), to: expect.closeTo(190 / 65) },
      ]),
    );
  });

  test("are none between two bikes that are alike, also when one is written down in other units", () => {
    written(mia.set(partKind, "fork-2", twoChamberFork));
    const shock = bikeOf(team.ledger, RACE).parts.shock;
    if (shock?.archetype !== "coil") throw new Error("There is no coil shock.");
    written(
      mia.set(partKind, "shock-2", { ...shock, geometry: { ...shock.geometry, stroke: { value: 0.07, unit: "m" } } }),
    );
    expect(copy().differences).toEqual([]);
    expect(copy().rows.map(({ outcome, measure }) => [outcome.type, measure])).toEqual(
      Object.keys(setupValues).map(() => ["copied", undefined]),
    );
  });

  test("of the bike itself make its springs others: a lighter bike asks for the sag of both ends", () => {
    written(mia.set(partKind, "fork-2", twoChamberFork));
    const { bike: value } = bikeOf(team.ledger, SPARE);
    written(mia.set(bikeKind, SPARE, { ...value, sprungMass: { value: 9, unit: "kg" } }));
    expect([row("fork.main-pressure").measure, row("fork.rebound").measure]).toEqual(["sag", undefined]);
  });
});

describe("the same sag", () => {
  test("is worked out for a coil shock by the leverage: at the same share of the stroke, the rate goes with the square of it", () => {
    written(mia.set(partKind, "fork-2", twoChamberFork));
    putOn(mia, RACE, {
      "shock.preload": { value: 1, unit: "turns" },
      "shock.spring-rate": { value: 80, unit: "N/mm" },
    });
    // Hooke: the load along the shock goes with the leverage L = 190 mm / stroke, the compression with the stroke and 1.5 mm of
    // preload p. F = k (s + p): with s / stroke alike, k' = k (L' / L) (s + p) / (s' + p). For a load of 0.6 × 92 kg × 9.80665
    // × L = 1468 N and k = 80 N/mm: s = 16.9 mm, s' = 15.6 mm, k' = 80 × (70 / 65) × 18.4 / 17.1 = 92.5 N/mm: in steps of
    // 5 N/mm either 90 or 95.
    const found = copy().sameSag;
    expect(found.map(({ path }) => path)).toEqual(["shock.spring-rate"]);
    expect([90, 95]).toContain(found[0]?.value.value);
  });

  test("is not given where it cannot be set there, or nothing differs", () => {
    written(mia.set(partKind, "fork-2", twoChamberFork));
    putOn(mia, RACE, { "shock.spring-rate": { value: 50, unit: "N/mm" } });
    expect(copy().sameSag).toEqual([]);
  });
});

describe("taking the copy", () => {
  test("writes what can be copied as one batch that says from where, and its undo takes all of it back", () => {
    const from = bike(RACE);
    const entries = copyEntries(copy(), from, bikeOf(team.ledger, SPARE), { weekendId: "kestrel", bench });
    const records = written(mia.setMany(entries));
    expect(records).toHaveLength(7);
    expect(new Set(records.map(({ batch }) => batch)).size).toBe(1);
    expect(settingOn(team.ledger, SPARE, "fork.rebound")).toEqual({ value: 8, unit: "clicks" });
    expect(settingOn(team.ledger, SPARE, "shock.spring-rate")).toBeUndefined();
    const source = team.ledger.heads(settingKind, settingKey("alder", RACE, "fork.rebound"))[0]?.id;
    const rebound = records.find(({ subject }) => subject.endsWith("fork.rebound"));
    expect(provenanceOf(rebound?.cause)).toEqual({ type: "copy", bike: RACE, record: source });
    for (const { id } of records) written(mia.revert(id));
    expect(copy().rows.every(({ now }) => now === undefined)).toBe(true);
  });

  test("writes no provenance that an older version could not read, and reads none that is not one", () => {
    expect(provenanceOf({ type: "by hand", note: "x" })).toBeUndefined();
    const strange = { type: "by hand", provenance: { type: "copy", bike: "../x", record: 3 } } as const;
    expect(provenanceOf(strange)).toBeUndefined();
  });

  test("copies nothing onto a bike whose fork is another part with no such adjusters", () => {
    written(mia.set(partKind, "fork-2", { ...oneChamberFork, adjusters: [] }));
    expect(
      copy()
        .rows.filter(({ path }) => path.startsWith("fork."))
        .map(({ outcome }) => outcome.type),
    ).toEqual(Array(5).fill("no adjuster"));
  });
});
