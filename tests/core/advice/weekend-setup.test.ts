import { describe, expect, test } from "vitest";
import type { Baselines } from "#core/advice/baseline-blend.ts";
import { describeLimitProblem } from "#core/advice/limits.ts";
import { type WeekendSetup, weekendSetup } from "#core/advice/weekend-setup.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Conditions } from "#core/weekend/conditions.ts";
import type { CourseMix } from "#core/weekend/course.ts";
import { baseline, oneChamberFork, riderBike } from "#tests/builders/bike.ts";

const dry: Conditions = { air: { value: 20, unit: "°C" }, ground: "dry" };
const steep: CourseMix = { steep: 1, jumpy: 0, wet: 0 };

function setup(changes: {
  mounted?: RiderBike;
  baselines?: Baselines;
  mix?: CourseMix;
  altitude?: number;
  conditions?: Conditions;
}): WeekendSetup {
  return weekendSetup({
    mounted: changes.mounted ?? riderBike(),
    baselines: changes.baselines ?? { steep: baseline() },
    course: { mix: changes.mix ?? steep, altitude: { value: changes.altitude ?? 0, unit: "m" } },
    conditions: changes.conditions ?? dry,
  });
}

function row(result: WeekendSetup, path: AdjusterPath) {
  const found = result.rows.find((candidate) => candidate.path === path);
  if (!found) throw new Error(`The setup has no row ${path}.`);
  return found;
}

describe("the blend", () => {
  test("a course of one type takes the own baseline as it is", () => {
    const main = row(setup({}), "fork.main-pressure");
    expect(main.weekend).toEqual({ value: 60, unit: "psi" });
    expect(main.difference).toEqual({ value: 0, unit: "psi" });
    expect(main.reasons.map(({ provenance }) => provenance)).toEqual(["own baseline"]);
  });

  test("a mixed course lies between the baselines by its parts, rounded to the adjuster's step", () => {
    const baselines = {
      steep: baseline({ "fork.secondary-pressure": { value: 110, unit: "psi" } }),
      jumpy: baseline({ "fork.secondary-pressure": { value: 120, unit: "psi" } }),
    };
    const result = setup({ baselines, mix: { steep: 0.7, jumpy: 0.3, wet: 0 } });
    expect(row(result, "fork.secondary-pressure").weekend).toEqual({ value: 113, unit: "psi" });
    expect(row(result, "fork.secondary-pressure").reasons[0]?.provenance).toBe("blend of own baselines");
  });

  test("a baseline typed in bar blends with one typed in psi", () => {
    const baselines = {
      steep: baseline({ "fork.main-pressure": { value: 4, unit: "bar" } }),
      jumpy: baseline({ "fork.main-pressure": { value: 60, unit: "psi" } }),
    };
    // 4 bar is 58.015 psi (NIST SP 811); halfway to 60 psi is 59.008 psi.
    const result = setup({ baselines, mix: { steep: 0.5, jumpy: 0.5, wet: 0 } });
    expect(row(result, "fork.main-pressure").baseline).toEqual({ value: 59, unit: "psi" });
  });

  test("a baseline of another bike does not count", () => {
    const result = setup({ baselines: { steep: baseline({}, { bike: "other" }) } });
    expect(row(result, "fork.main-pressure").weekend).toBeUndefined();
    expect(row(result, "fork.main-pressure").problems).toEqual([{ type: "no baseline has it" }]);
  });

  test("a type without a baseline is filled in by common practice, for its part of the course", () => {
    const result = setup({ mix: { steep: 0.5, jumpy: 0, wet: 0.5 } });
    const tyre = row(result, "front-tyre.tyre-pressure");
    expect(tyre.difference).toEqual({ value: -0.5, unit: "psi" });
    expect(tyre.reasons.at(-1)?.provenance).toBe("common practice");
  });
});

describe("the ground", () => {
  test("a wet ground lowers the tyres by a felt step when no wet baseline holds it", () => {
    const result = setup({ conditions: { ...dry, ground: "wet" } });
    expect(row(result, "front-tyre.tyre-pressure").difference).toEqual({ value: -1, unit: "psi" });
    expect(row(result, "fork.main-pressure").difference).toEqual({ value: -2, unit: "psi" });
  });

  test("it changes nothing on a course that the wet baseline holds already", () => {
    const mix = { steep: 0, jumpy: 0, wet: 1 };
    const result = setup({ baselines: { wet: baseline() }, mix, conditions: { ...dry, ground: "wet" } });
    expect(result.rows.every(({ difference }) => difference?.value === 0)).toBe(true);
  });

  test("it changes nothing for a baseline that was found on this very ground, of whatever type", () => {
    const dusty: Conditions = { ...dry, ground: "dry dust" };
    const found = setup({ baselines: { steep: baseline({}, { ground: "dry dust" }) }, conditions: dusty });
    expect(found.rows.every(({ difference }) => difference?.value === 0)).toBe(true);
    const other = setup({ baselines: { steep: baseline({}, { ground: "dry" }) }, conditions: dusty });
    expect(row(other, "fork.main-pressure").difference).toEqual({ value: -2, unit: "psi" });
  });

  test("a correction that a limit forbids is refused, says which, and changes nothing", () => {
    const low = baseline({ "front-tyre.tyre-pressure": { value: 12, unit: "psi" } });
    const result = setup({ baselines: { steep: low }, conditions: { ...dry, ground: "wet" } });
    const tyre = row(result, "front-tyre.tyre-pressure");
    expect(tyre.weekend).toEqual({ value: 12, unit: "psi" });
    const refused = tyre.reasons.at(-1)?.refused;
    expect(refused && describeLimitProblem(refused)).toContain(
      "11 psi is outside the part's range of 12 psi to 45 psi",
    );
  });
});

describe("cold and style", () => {
  const cold: Conditions = { air: { value: 2, unit: "°C" }, ground: "dry" };

  test("cold oil opens the dampers by a felt step, unless the baseline was found in the cold", () => {
    expect(row(setup({ conditions: cold }), "fork.rebound").difference).toEqual({ value: 1, unit: "clicks" });
    const heldAt = { temperature: { value: 4, unit: "°C" as const }, altitude: { value: 0, unit: "m" as const } };
    const found = setup({ conditions: cold, baselines: { steep: baseline({}, { heldAt }) } });
    expect(row(found, "fork.rebound").difference).toEqual({ value: 0, unit: "clicks" });
  });

  test("a rider who has begun to ride hard gets more pressure; one whose baseline holds that does not", () => {
    const mounted = riderBike();
    const hard = { ...mounted, rider: { ...mounted.rider, style: "hard" as const } };
    const from = (style: "usual" | "hard") => setup({ mounted: hard, baselines: { steep: baseline({}, { style }) } });
    expect(row(from("usual"), "fork.main-pressure").difference).toEqual({ value: 2, unit: "psi" });
    expect(row(from("usual"), "fork.secondary-pressure").difference).toEqual({ value: 2, unit: "psi" });
    expect(row(from("hard"), "fork.main-pressure").difference).toEqual({ value: 0, unit: "psi" });
  });
});

describe("the physics", () => {
  test("a heavier rider gets more main pressure, and the rebound is closed when the spring is stiffer by a click", () => {
    const result = setup({ mounted: riderBike({ massKg: 100 }) });
    expect(row(result, "fork.main-pressure").difference?.value).toBeGreaterThanOrEqual(10);
    expect(row(result, "fork.rebound").difference?.value).toBeLessThanOrEqual(-1);
    expect(row(result, "fork.rebound").reasons.at(-1)?.rule).toBe("rebound-follows");
  });

  test("the weekend value set in the cool reads less at the bench, and nothing without a temperature difference", () => {
    const warm = setup({ conditions: { ...dry, air: { value: 30, unit: "°C" }, bench: { value: 10, unit: "°C" } } });
    // Constant volume: (60 + 14.696) psi × 283.15 K / 303.15 K − 14.696 psi = 55.07 psi.
    expect(row(warm, "fork.main-pressure").bench).toEqual({ value: 55, unit: "psi" });
    expect(row(warm, "fork.main-pressure").weekend).toEqual({ value: 60, unit: "psi" });
    expect(row(setup({}), "fork.main-pressure").bench).toEqual({ value: 60, unit: "psi" });
  });

  test("thinner air asks for more pressure, and a baseline found at that altitude for none", () => {
    const high = row(setup({ altitude: 2500 }), "fork.main-pressure");
    expect(high.difference?.value).toBeGreaterThan(0);
    expect(high.reasons.some(({ rule }) => rule === "altitude")).toBe(true);
    const heldAt = { temperature: dry.air, altitude: { value: 2500, unit: "m" as const } };
    const same = setup({ altitude: 2500, baselines: { steep: baseline({}, { heldAt }) } });
    expect(row(same, "fork.main-pressure").difference).toEqual({ value: 0, unit: "psi" });
  });

  test("the altitude is corrected in one place, and by more the higher it is", () => {
    const at = (altitude: number) => setup({ altitude });
    const changes = [0, 500, 1000, 1500, 2000, 2500, 3000].map(
      (altitude) => row(at(altitude), "fork.main-pressure").difference?.value ?? Number.NaN,
    );
    expect(changes).toEqual([...changes].sort((a, b) => a - b));
    expect(changes.at(-1)).toBeGreaterThan(2);
    expect(row(at(3000), "fork.secondary-pressure").difference).toEqual({ value: 0, unit: "psi" });
  });

  test("spacers stay whole", () => {
    const fork = riderBike({ fork: oneChamberFork });
    const spacers = (value: number) => baseline({ "fork.volume-spacers": { value, unit: "spacers" } });
    const result = setup({
      mounted: fork,
      baselines: { steep: spacers(1), jumpy: spacers(2) },
      mix: { steep: 0.6, jumpy: 0.4, wet: 0 },
    });
    expect(row(result, "fork.volume-spacers").weekend).toEqual({ value: 1, unit: "spacers" });
  });

  test("it is fitted only when every suspended end has a measured sag", () => {
    expect(setup({}).fitted).toBe(false);
    const sag = { fork: { value: 36, unit: "mm" as const }, shock: { value: 20, unit: "mm" as const } };
    expect(setup({ baselines: { steep: baseline({}, { sag }) } }).fitted).toBe(true);
  });
});
