/** The invented team is one that could exist: its baselines agree with the physics and with common practice. */
import { describe, expect, it } from "vitest";
import { checkSetup } from "#core/advice/limits.ts";
import { type SuspensionModel, suspensionModel } from "#core/advice/suspension-model.ts";
import { SAG_RANGE } from "#core/advice/symptom.ts";
import { DEFAULT_RIDING_EXPONENT, ISOTHERMAL } from "#core/physics/gas.ts";
import { staticSag } from "#core/physics/sag.ts";
import { STANDARD_GRAVITY } from "#core/quantity/constants.ts";
import { toSi } from "#core/quantity/unit.ts";
import type { Baseline } from "#core/team/baseline.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { ends } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { mountedIn } from "#scenarios/gate/mounted.ts";
import { scenarioNamed } from "./scenario-files.ts";

const { team } = scenarioNamed("kestrel-ridge");

interface Case {
  readonly name: string;
  readonly baseline: Baseline;
  readonly mounted: RiderBike;
}

const cases: readonly Case[] = Object.entries(team.baselines).flatMap(([riderId, baselines]) =>
  courseTypes.flatMap((type): Case[] => {
    const baseline = baselines[type];
    const mounted = mountedIn(team, riderId);
    if (!baseline || !mounted) return [];
    // The rider as heavy as he was then.
    return [
      {
        name: `${riderId} ${type}`,
        baseline,
        mounted: { ...mounted, rider: { ...mounted.rider, mass: baseline.mass } },
      },
    ];
  }),
);

function modelsOf({ mounted, baseline }: Case): readonly SuspensionModel[] {
  return ends.flatMap((end) => suspensionModel(mounted, end, baseline.heldAt) ?? []);
}

function predictedSag(model: SuspensionModel, baseline: Baseline): number {
  const spring = model.springWith(baseline.values, ISOTHERMAL);
  const sag = spring && staticSag(spring, model.load);
  return sag?.possible ? sag.value : Number.NaN;
}

describe("the invented team", () => {
  it("has eight riders from 55 to 95 kg, with a baseline for every sort of course but one", () => {
    const masses = Object.values(team.riders).map(({ mass }) => toSi(mass));
    expect([masses.length, Math.min(...masses), Math.max(...masses)]).toEqual([8, 55, 95]);
    expect(cases).toHaveLength(8 * 3 - 1);
    expect(team.baselines.juniper).not.toHaveProperty("wet");
  });

  it("has forks with one chamber, with two and with a coil, and shocks with air and with a coil", () => {
    const archetypes = (place: string) =>
      [...new Set(Object.values(team.parts).flatMap((part) => (part.place === place ? part.archetype : [])))].sort();
    expect(archetypes("fork")).toEqual(["air", "coil", "two-chamber air"]);
    expect(archetypes("shock")).toEqual(["air", "coil"]);
  });

  it.each(cases)("$name keeps every limit of the parts", ({ mounted, baseline }) => {
    expect(checkSetup(mounted, baseline.values)).toEqual([]);
  });

  it.each(cases)("$name is predicted to sag within the range of common practice, front and rear", (entry) => {
    const models = modelsOf(entry);
    expect(models).toHaveLength(2);
    for (const model of models) {
      const part = predictedSag(model, entry.baseline) / model.stroke;
      expect(part, model.place).toBeGreaterThanOrEqual(SAG_RANGE[model.place].low);
      expect(part, model.place).toBeLessThanOrEqual(SAG_RANGE[model.place].high);
    }
  });

  it.each(cases)("$name takes a plausible hit: as much as a fall of 0.25 to 0.7 m of the mass on that end", (entry) => {
    for (const model of modelsOf(entry)) {
      const spring = entry.baseline.values && model.springWith(entry.baseline.values, DEFAULT_RIDING_EXPONENT);
      const atWheel = model.mass / model.leverageRatio ** 2;
      const height = (spring?.energy(model.stroke) ?? Number.NaN) / (atWheel * STANDARD_GRAVITY);
      expect(height, model.place).toBeGreaterThan(0.25);
      expect(height, model.place).toBeLessThan(0.7);
    }
  });

  it("has measured sags that agree with the predicted ones to 3 mm", () => {
    let measured = 0;
    for (const entry of cases) {
      for (const model of modelsOf(entry)) {
        const sag = entry.baseline.sag?.[model.place];
        if (!sag) continue;
        measured += 1;
        const miss = Math.abs(toSi(sag) - predictedSag(model, entry.baseline));
        expect(miss, `${entry.name} ${model.place}`).toBeLessThanOrEqual(0.003);
      }
    }
    expect(measured).toBe(26);
  });

  it("goes softer in the wet: less pressure in every tyre and in every air fork than for steep courses", () => {
    for (const baselines of Object.values(team.baselines)) {
      const { steep, wet } = baselines;
      if (!steep || !wet) continue;
      for (const path of ["front-tyre.tyre-pressure", "rear-tyre.tyre-pressure", "fork.main-pressure"] as const) {
        const [dry, soft] = [steep.values[path], wet.values[path]];
        if (dry && soft) expect(toSi(soft), `${steep.bike} ${path}`).toBeLessThan(toSi(dry));
      }
    }
  });
});
