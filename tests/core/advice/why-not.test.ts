import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { AdviceInput } from "#core/advice/adjustment.ts";
import { adviseOnRun } from "#core/advice/adjustments.ts";
import { whyNot } from "#core/advice/why-not.ts";
import { type AdjusterPath, adjusterKinds, adjusterPath } from "#core/team/adjuster.ts";
import { places } from "#core/team/place.ts";
import { feelings, noticeable } from "#core/weekend/run.ts";
import { adviceInput as input } from "#tests/builders/advice-input.ts";
import { oneChamberFork, riderBike } from "#tests/builders/bike.ts";

const up = (path: AdjusterPath) => ({ path, direction: "up" }) as const;
const down = (path: AdjusterPath) => ({ path, direction: "down" }) as const;

function rulesOf(given: AdviceInput, change: Parameters<typeof whyNot>[1]) {
  const answer = whyNot(given, change);
  return answer.type === "silent rules" ? answer.rules : [];
}

describe("why a change is not proposed", () => {
  test("because it is: at once, or after the first one", () => {
    const bottoms = input({ bottomOuts: 4 });
    const [first, later] = adviseOnRun(input({ bottomOuts: 4, returnSpeed: "too fast" })).adjustments;
    expect(whyNot(bottoms, up("fork.secondary-pressure"))).toEqual({ type: "proposed" });
    expect(first && later).toBeDefined();
    if (!later) return;
    const way = later.setting.to.value > later.setting.from.value ? "up" : "down";
    const both = input({ bottomOuts: 4, returnSpeed: "too fast" });
    expect(whyNot(both, { path: later.setting.path, direction: way })).toEqual({
      type: "proposed",
      waitsFor: { type: "another change", path: first?.setting.path },
    });
  });

  test("because the same rule goes by another adjuster first", () => {
    const rules = rulesOf(input({ bottomOuts: 4 }), up("fork.main-pressure"));
    expect(rules).toContainEqual({
      rule: "full-travel-too-easily",
      end: "front",
      obstacle: { type: "another way first", path: "fork.secondary-pressure" },
    });
  });

  test("because it was changed for this already", () => {
    const earlier = [{ rule: "full-travel-too-easily", path: "fork.secondary-pressure" as const, run: "run-1" }];
    expect(rulesOf(input({ bottomOuts: 4 }, { earlier }), up("fork.secondary-pressure"))).toContainEqual({
      rule: "full-travel-too-easily",
      end: "front",
      obstacle: { type: "hindered", hindrance: { type: "changed for this already", path: "fork.secondary-pressure" } },
    });
  });

  test("because two changes did not help", () => {
    const earlier = [
      { rule: "full-travel-too-easily", path: "fork.secondary-pressure" as const, run: "run-1" },
      { rule: "full-travel-too-easily", path: "fork.main-pressure" as const, run: "run-2" },
    ];
    expect(rulesOf(input({ bottomOuts: 4 }, { earlier }), up("fork.main-pressure"))).toContainEqual({
      rule: "full-travel-too-easily",
      end: "front",
      obstacle: { type: "two changes did not help" },
    });
  });

  test("because nobody said what it answers: the rule that lacks least comes first", () => {
    const rules = rulesOf(input({}), up("fork.main-pressure"));
    expect(rules.length).toBeGreaterThan(2);
    const lacking = rules.map(({ obstacle }) => (obstacle.type === "not said" ? obstacle.symptoms.length : 0));
    expect(lacking).toEqual([...lacking].sort((a, b) => a - b));
    expect(lacking[0]).toBe(1);
    expect(rules).toContainEqual({
      rule: "soft-all-along",
      end: "front",
      obstacle: { type: "not said", symptoms: ["all travel used too easily", "middle dives"] },
    });
  });

  test("because what was said contradicts itself", () => {
    const rules = rulesOf(input({ bottomOuts: 4, end: "never reached" }), down("fork.secondary-pressure"));
    expect(rules).toContainEqual({
      rule: "end-never-reached",
      end: "front",
      obstacle: { type: "in question", symptoms: ["end never reached"] },
    });
  });

  test("because another thing that was said speaks against it", () => {
    const rules = rulesOf(input({ end: "never reached", middle: "harsh" }), down("fork.secondary-pressure"));
    expect(rules).toContainEqual({
      rule: "end-never-reached",
      end: "front",
      obstacle: { type: "spoken against", symptoms: ["middle harsh"] },
    });
  });

  test("because the advice goes the other way", () => {
    expect(whyNot(input({ bottomOuts: 4 }), down("fork.secondary-pressure"))).toMatchObject({
      type: "silent rules",
      opposite: { setting: { path: "fork.secondary-pressure" } },
    });
  });

  test("because the bike has no such adjuster", () => {
    const given = input({}, { mounted: riderBike({ fork: oneChamberFork }) });
    expect(whyNot(given, up("fork.secondary-pressure"))).toEqual({ type: "no such adjuster" });
  });

  test("has an answer for every run and every change", () => {
    const feedback = (end: "front" | "rear") =>
      fc.record(
        {
          start: fc.constantFrom(...feelings.start),
          middle: fc.constantFrom(...feelings.middle),
          end: fc.constantFrom(...feelings.end),
          returnSpeed: fc.constantFrom(...feelings.returnSpeed),
          grip: fc.constantFrom(...feelings.grip),
          bottomOuts: fc.integer({ min: 0, max: 6 }),
          noticed: fc.subarray([...noticeable[end]]),
        },
        { requiredKeys: [] },
      );
    const paths = places.flatMap((place) => adjusterKinds.map((kind) => adjusterPath(place, kind)));
    fc.assert(
      fc.property(
        feedback("front"),
        feedback("rear"),
        fc.constantFrom(...paths),
        fc.constantFrom("up" as const, "down" as const),
        (front, rear, path, direction) => {
          const given = input(front, {}, rear);
          const answer = whyNot(given, { path, direction });
          const isProposed = adviseOnRun(given).adjustments.some(
            ({ setting }) => setting.path === path && setting.to.value > setting.from.value === (direction === "up"),
          );
          expect(answer.type === "proposed").toBe(isProposed);
        },
      ),
      { numRuns: 300 },
    );
  });
});
