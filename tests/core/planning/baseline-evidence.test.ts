import { beforeEach, describe, expect, test } from "vitest";
import { baselineEvidence, runsByRider } from "#core/planning/baseline-evidence.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { baseline, setupValues } from "#tests/builders/bike.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

let team: TeamLedger;
let setup: Map<string, string>;

beforeEach(() => {
  team = teamLedger();
  setup = new Map();
  putOn(setupValues);
});

function putOn(values: SetupValues, heldAt?: Surroundings): void {
  for (const [path, quantity] of Object.entries(values)) {
    const value = { quantity, standing: "on the bike" as const, ...(heldAt && { heldAt }) };
    const [record] = written(team.writerFor("mia").set(settingKind, `alder/alder-1/${path}`, value, { force: true }));
    if (record) setup.set(path, record.id);
  }
}

function ride(run: string, weekend = "kestrel", bike = "alder-1"): void {
  const value = { bike, weekend, session: "p1", setup: [...setup.values()], front: {}, rear: {} };
  written(team.writerFor("mia").set(runKind, `alder/${run}`, value));
}

const evidence = () => baselineEvidence(team.ledger, baseline(), runsByRider(team.ledger).get("alder"));

describe("the evidence behind a baseline", () => {
  test("is the runs that were ridden with all of its values, and their weekends", () => {
    ride("r1");
    ride("r2");
    ride("r3", "otter");
    expect(evidence()).toEqual({ runs: 3, weekends: 2 });
  });

  test.each<[what: string, path: AdjusterPath, quantity: TypedQuantity, runs: number]>([
    ["less than a felt step off", "fork.main-pressure", { value: 61, unit: "psi" }, 1],
    ["a felt step off", "fork.main-pressure", { value: 62, unit: "psi" }, 0],
    ["a felt step off to the other side", "fork.main-pressure", { value: 58, unit: "psi" }, 0],
    ["the same in another unit", "fork.main-pressure", { value: 4.137, unit: "bar" }, 1],
    ["one click off, which is felt", "fork.rebound", { value: 9, unit: "clicks" }, 0],
    ["another spring", "shock.spring-rate", { value: 90, unit: "N/mm" }, 0],
    ["a quarter of a turn of preload off", "shock.preload", { value: 1.25, unit: "turns" }, 1],
  ])("takes a run with one value %s as told by that step", (_what, path, quantity, runs) => {
    putOn({ [path]: quantity });
    ride("r1");
    expect(evidence().runs).toBe(runs);
  });

  test("compares a pressure as it would have read where the baseline holds", () => {
    const cold = { temperature: { value: -10, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
    putOn({ "fork.main-pressure": { value: 60, unit: "psi" } }, cold);
    ride("r1");
    expect(evidence().runs).toBe(0);
    // 60 psi at 20 °C: (60 + 14.7) * 263.15 / 293.15 - 14.7 = 52.4 psi at -10 °C, by the ideal gas law at constant volume.
    putOn({ "fork.main-pressure": { value: 52, unit: "psi" } }, cold);
    ride("r2");
    expect(evidence().runs).toBe(1);
  });

  test("does not count a run that does not say what one adjuster was set to, nor one on another bike", () => {
    ride("spare", "kestrel", "alder-2");
    setup.delete("rear-tyre.tyre-pressure");
    ride("r1");
    expect(evidence()).toEqual({ runs: 0, weekends: 0 });
  });

  test("is nothing while the bike is not known", () => {
    ride("r1", "kestrel", "alder-9");
    const elsewhere = baseline({}, { bike: "alder-9" });
    expect(baselineEvidence(team.ledger, elsewhere, runsByRider(team.ledger).get("alder")).runs).toBe(0);
  });
});
