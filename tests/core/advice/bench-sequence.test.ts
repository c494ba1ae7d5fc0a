import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { benchSequence } from "#core/advice/bench-sequence.ts";
import { checkValue } from "#core/advice/limits.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { riderBike, setupValues } from "#tests/builders/bike.ts";

const bike = riderBike();
const pressures = (main: number, secondary: number): SetupValues => ({
  "fork.main-pressure": { value: main, unit: "psi" },
  "fork.secondary-pressure": { value: secondary, unit: "psi" },
});

function order(from: SetupValues, to: SetupValues): readonly string[] {
  return benchSequence(bike, from, to).steps.map(({ path }) => path);
}

describe("the order at the bench", () => {
  test("takes the chamber with the higher pressure first", () => {
    expect(order(pressures(60, 110), pressures(64, 120))).toEqual(["fork.secondary-pressure", "fork.main-pressure"]);
  });

  test("takes the main chamber first when the secondary one would come too near it", () => {
    expect(order(pressures(100, 120), pressures(60, 80))).toEqual(["fork.main-pressure", "fork.secondary-pressure"]);
  });

  test("puts dampers after the spring, and leaves out what is on the bike already", () => {
    const target: SetupValues = {
      ...setupValues,
      "fork.rebound": { value: 6, unit: "clicks" },
      "fork.main-pressure": { value: 62, unit: "psi" },
      "rear-tyre.tyre-pressure": { value: 25, unit: "psi" },
    };
    expect(order(setupValues, target)).toEqual(["fork.main-pressure", "fork.rebound", "rear-tyre.tyre-pressure"]);
  });

  test("says which limit forbids a target, and gives no steps for that part", () => {
    const result = benchSequence(bike, pressures(60, 110), pressures(80, 82));
    expect(result.steps).toEqual([]);
    expect(result.blocked).toEqual([
      "Fork main pressure: the secondary chamber (82 psi) must stay at least 5 psi above the main chamber (80 psi).",
    ]);
  });

  test("warns of gas under pressure at every chamber", () => {
    const { steps } = benchSequence(bike, {}, pressures(60, 110));
    expect(steps.map(({ cautions }) => cautions)).toEqual([["gas under pressure"], ["gas under pressure"]]);
  });
});

test("from any state within limits to any other there is an order, and every state on its way keeps the limits", () => {
  const state = fc
    .tuple(fc.integer({ min: 20, max: 110 }), fc.integer({ min: 5, max: 110 }))
    .map(([main, above]) => pressures(main, Math.min(main + above, 220)));
  fc.assert(
    fc.property(state, state, (from, to) => {
      const { steps, blocked } = benchSequence(bike, from, to);
      expect(blocked).toEqual([]);
      let now = from;
      for (const { path, to: value } of steps) {
        expect(checkValue(bike, path, value, now)).toBeUndefined();
        now = { ...now, [path]: value };
      }
      expect(now).toEqual(to);
    }),
  );
});
