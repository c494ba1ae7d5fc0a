import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { type RiddenRun, ridingRate, sumOfHours, weightedHours } from "#core/service/riding-hours.ts";
import { defaultServicePlan, servicePlan, servicePlanSchema } from "#core/service/service-plan.ts";

const run = (fields: Partial<RiddenRun> = {}): RiddenRun => ({
  weekend: "kestrel",
  session: "p1",
  at: 0,
  timeSeconds: 3600,
  ground: "dry",
  ...fields,
});

describe("an hour of riding", () => {
  // Common practice, no source: what the trade says is only "sooner in dust or wet".
  test.each([
    ["dry", 1],
    ["damp", 1.2],
    ["dry dust", 1.5],
    ["wet", 1.5],
    ["mud", 2],
  ] as const)("on %s ground counts as %f", (ground, hours) => {
    expect(weightedHours(run({ ground }), defaultServicePlan)).toBe(hours);
  });

  test("counts as on dry ground while nobody has entered the ground", () => {
    expect(weightedHours(run({ ground: undefined }), defaultServicePlan)).toBe(1);
  });
});

// Common practice, no source. 15 runs of 4 minutes are an hour.
test("a run without a time counts as four minutes", () => {
  const runs = Array.from({ length: 15 }, () => run({ timeSeconds: undefined, ground: "mud" }));
  expect(sumOfHours(runs, defaultServicePlan)).toBeCloseTo(2, 12);
});

describe("the team's own plan", () => {
  test("stands in place of the defaults where the team has chosen, and nowhere else", () => {
    const plan = servicePlan({ weights: { mud: 3 }, minutesPerRun: 6, bathOilHours: 40, dueFrom: 0.8 });
    expect(plan).toEqual({
      weights: { "dry dust": 1.5, dry: 1, damp: 1.2, wet: 1.5, mud: 3 },
      minutesPerRun: 6,
      intervalHours: { "bath oil": 40, complete: 200 },
      dueFrom: 0.8,
    });
    expect(servicePlan()).toEqual(defaultServicePlan);
  });

  test.each([
    ["a weight of nothing", { weights: { mud: 0 } }],
    ["a ground that there is not", { weights: { snow: 1 } }],
    ["a run of no minutes", { minutesPerRun: 0 }],
    ["an interval below an hour", { bathOilHours: 0.5 }],
    ["due from beyond the interval", { dueFrom: 1.1 }],
    ["no number", { completeHours: Number.NaN }],
  ])("refuses %s", (_name, choices) => {
    expect(z.safeParse(servicePlanSchema, choices).success).toBe(false);
  });
});

describe("the rate at which hours come together", () => {
  test("is that of the weekend: its mean hours a run, and its runs a session", () => {
    const runs = [
      run({ ground: "wet" }),
      run({ timeSeconds: 1800 }),
      run({ session: "p2", timeSeconds: 3600 }),
      run({ weekend: "earlier", timeSeconds: 36_000 }),
    ];
    // (1.5 + 0.5 + 1) / 3 runs, 3 runs in 2 sessions.
    expect(ridingRate(runs, "kestrel", defaultServicePlan)).toEqual({ hoursPerRun: 1, runsPerSession: 1.5 });
  });

  test("is that of runs without a time on dry ground before the weekend's first run", () => {
    const rate = ridingRate([run({ weekend: "earlier" })], "kestrel", defaultServicePlan);
    expect(rate).toEqual({ hoursPerRun: 4 / 60, runsPerSession: undefined });
  });
});
