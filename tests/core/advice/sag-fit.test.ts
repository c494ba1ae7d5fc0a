import { describe, expect, test } from "vitest";
import { partSpring } from "#core/advice/part-spring.ts";
import { type MeasuredSag, suspensionModel } from "#core/advice/suspension-model.ts";
import { ISOTHERMAL } from "#core/physics/gas.ts";
import { staticSag } from "#core/physics/sag.ts";
import { cubicMetres, newtons } from "#core/quantity/quantity.ts";
import { toSi } from "#core/quantity/unit.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { oneChamberFork, riderBike, setupValues } from "#tests/builders/bike.ts";

const heldAt = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
const mounted = riderBike({ fork: oneChamberFork });
const at = (psi: number): SetupValues => ({
  ...setupValues,
  "fork.main-pressure": { value: psi, unit: "psi" },
  "fork.volume-spacers": { value: 1, unit: "spacers" },
});

/** The sag that a fork whose chamber has `volumeMl` shows under `load`, read to a tenth of a millimetre. */
function measured(psi: number, load: number, volumeMl: number, massKg = 80): MeasuredSag {
  const spring = partSpring(oneChamberFork, at(psi), heldAt, ISOTHERMAL, cubicMetres(volumeMl * 1e-6));
  if (!spring) throw new Error("The values make no spring.");
  const sag = staticSag(spring, newtons(load));
  if (!sag.possible) throw new Error(`The fork ${sag.reason}.`);
  return {
    sag: { value: Number((sag.value * 1000).toFixed(1)), unit: "mm" },
    values: at(psi),
    heldAt,
    mass: { value: massKg, unit: "kg" },
  };
}

describe("a model fitted to measured sag", () => {
  test("without a measurement it takes the load from the masses, and says that it is not fitted", () => {
    const model = suspensionModel(mounted, "front", heldAt);
    expect(model?.fitted).toBe(false);
    expect(model?.fit).toBeUndefined();
  });

  test("one measurement gives back the load that made it, with nothing left over", () => {
    const model = suspensionModel(mounted, "front", heldAt, [measured(60, 300, 290)]);
    expect(model?.load).toBeCloseTo(300, 0);
    expect(model?.fit?.rootMeanSquare).toBeCloseTo(0, 9);
    expect(model?.fit?.volume).toBeUndefined();
  });

  test("three measurements at one pressure give the load of all of them, and what they leave over", () => {
    const sags = [measured(60, 295, 290), measured(60, 300, 290), measured(60, 305, 290)];
    const model = suspensionModel(mounted, "front", heldAt, sags);
    expect(model?.load).toBeCloseTo(300, 0);
    expect(model?.fit?.rootMeanSquare).toBeGreaterThan(0.0005);
    expect(model?.fit?.volume).toBeUndefined();
  });

  test("two and more pressures give the chamber's volume as well, where the part's data were wrong", () => {
    const sags = [50, 60, 75, 90].map((psi) => measured(psi, 340, 255));
    const model = suspensionModel(mounted, "front", heldAt, sags);
    expect((model?.fit?.volume ?? 0) * 1e6).toBeCloseTo(255, -1);
    expect(model?.load).toBeGreaterThan(330);
    expect(model?.load).toBeLessThan(350);
  });

  test("a sag measured when the rider was lighter proves a lighter load, carried to his mass of today", () => {
    const heavier = riderBike({ fork: oneChamberFork, massKg: 92 });
    const model = suspensionModel(heavier, "front", heldAt, [measured(60, 300, 290, 80)]);
    // Sprung: 80 + 12 kg then, 92 + 12 kg now.
    expect(model?.load).toBeCloseTo((300 * 104) / 92, 0);
  });

  test("a sag that no spring of the part can have is left out instead of bending the model", () => {
    const wrong = { ...measured(60, 300, 290), sag: { value: 185, unit: "mm" as const } };
    const model = suspensionModel(mounted, "front", heldAt, [wrong]);
    expect(toSi(wrong.sag)).toBeGreaterThan(model?.stroke ?? 0);
    expect(model?.fitted).toBe(false);
  });
});
