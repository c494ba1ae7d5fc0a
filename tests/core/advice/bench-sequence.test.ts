import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BenchWork, DEFAULT_PUMP } from "#core/advice/bench-operations.ts";
import { benchSequence } from "#core/advice/bench-sequence.ts";
import { checkValue, describeLimitProblem } from "#core/advice/limits.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { oneChamberFork, riderBike, setupValues } from "#tests/builders/bike.ts";

const bike = riderBike();
const work: BenchWork = {
  bench: { temperature: { value: 12, unit: "°C" }, altitude: { value: 0, unit: "m" } },
  pump: DEFAULT_PUMP,
};
const pressures = (main: number, secondary: number): SetupValues => ({
  "fork.main-pressure": { value: main, unit: "psi" },
  "fork.secondary-pressure": { value: secondary, unit: "psi" },
});

function order(from: SetupValues, to: SetupValues): readonly string[] {
  return benchSequence(bike, from, to, work).steps.map(({ path }) => path);
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
    const result = benchSequence(bike, pressures(60, 110), pressures(80, 82), work);
    expect(result.steps).toEqual([]);
    expect(result.blocked.map((problem) => describeLimitProblem(problem))).toEqual([
      "Fork main pressure: the secondary chamber (82 psi) must stay at least 5 psi above the main chamber (80 psi).",
    ]);
  });

  test("warns of gas under pressure at every chamber", () => {
    const { steps } = benchSequence(bike, {}, pressures(60, 110), work);
    expect(steps.map(({ cautions }) => cautions)).toEqual([["gas under pressure"], ["gas under pressure"]]);
  });
});

describe("the operations of a step", () => {
  const words = (path: string, from: SetupValues, to: SetupValues, mounted = bike) =>
    benchSequence(mounted, from, to, work).steps.find((step) => step.path === path)?.operations ?? [];

  test("a chamber: unloaded, clean, the first reading to expect, set, off fast, cycled, checked, closed, written down", () => {
    const operations = words("fork.secondary-pressure", pressures(60, 110), pressures(60, 112));
    expect(operations.map((operation) => operation.do)).toEqual([
      "unload the wheel",
      "clean around the valve",
      "connect the pump",
      "set the pressure",
      "take the pump off fast",
      "cycle the part",
      "check again",
      "close the cap",
      "write it down",
    ]);
  });

  test("with both chambers to fill, the part is cycled and checked when the last one has its air", () => {
    const first = words("fork.secondary-pressure", pressures(60, 110), pressures(62, 112));
    expect(first.map((operation) => operation.do)).not.toContain("cycle the part");
    const last = words("fork.main-pressure", pressures(60, 110), pressures(62, 112));
    expect(last.map((operation) => operation.do)).toContain("cycle the part");
  });

  // Mixing at one temperature: (p_c V_c + p_a V_h) / (V_c + V_h) in absolute pressure, (124.696 × 40 + 14.696 × 3) / 43
  // − 14.696 = 102.33 psi for 110 psi in 40 ml with a hose of 3 ml. A small chamber shows up to about 10 psi less
  // (common practice, no source).
  test("the first reading counts the loss to the hose, and only what is missing beyond the gauge is a leak", () => {
    const connect = words("fork.secondary-pressure", pressures(60, 110), pressures(60, 112)).find(
      (operation) => operation.do === "connect the pump",
    );
    expect(connect).toEqual({
      do: "connect the pump",
      expect: { value: 102, unit: "psi" },
      leakBelow: { value: 101, unit: "psi" },
    });
  });

  test("the large main chamber loses less than a psi, and nothing is expected where nothing is known", () => {
    const connect = (from: SetupValues) =>
      words("fork.main-pressure", from, pressures(62, 110)).find((operation) => operation.do === "connect the pump");
    expect(connect(pressures(60, 110))).toMatchObject({ expect: { value: 59, unit: "psi" } });
    expect(connect({})).toEqual({ do: "connect the pump" });
  });

  test("spacers: all air out before it is opened, and the same pressures back, the higher chamber first", () => {
    const mounted = riderBike({ fork: oneChamberFork });
    const from: SetupValues = {
      "fork.main-pressure": { value: 60, unit: "psi" },
      "fork.volume-spacers": { value: 1, unit: "spacers" },
    };
    const to: SetupValues = { ...from, "fork.volume-spacers": { value: 2, unit: "spacers" } };
    const operations = words("fork.volume-spacers", from, to, mounted);
    const order = operations.map((operation) => operation.do);
    expect(order.indexOf("release all air")).toBeLessThan(order.indexOf("open the part"));
    expect(operations).toContainEqual({
      do: "set the pressure",
      path: "fork.main-pressure",
      to: { value: 60, unit: "psi" },
    });
  });

  test("clicks are counted from closed", () => {
    const clicks = (value: number): SetupValues => ({ "fork.rebound": { value, unit: "clicks" } });
    expect(words("fork.rebound", clicks(8), clicks(6)).map((operation) => operation.do)).toEqual([
      "turn to closed",
      "count the clicks",
      "write it down",
    ]);
  });
});

test("from any state within limits to any other there is an order, and every state on its way keeps the limits", () => {
  const state = fc
    .tuple(fc.integer({ min: 20, max: 110 }), fc.integer({ min: 5, max: 110 }))
    .map(([main, above]) => pressures(main, Math.min(main + above, 220)));
  fc.assert(
    fc.property(state, state, (from, to) => {
      const { steps, blocked } = benchSequence(bike, from, to, work);
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
