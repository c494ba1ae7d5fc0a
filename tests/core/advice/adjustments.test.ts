import { describe, expect, test } from "vitest";
import { adviseOnRun } from "#core/advice/adjustments.ts";
import { describeReferralAction, describeWaitsFor } from "#core/advice/advice-in-words.ts";
import { describeHindrance } from "#core/advice/hindrance.ts";
import type { EndFeedback } from "#core/weekend/run.ts";
import { adviceInput as input } from "#tests/builders/advice-input.ts";
import { oneChamberFork, riderBike, setupValues } from "#tests/builders/bike.ts";

const mm = (value: number) => ({ value, unit: "mm" as const });

describe("sag comes first", () => {
  test("a fork that rests too deep gets more main pressure, sized so that the sag comes to its target", () => {
    const { adjustments } = adviseOnRun(input({ sag: mm(54), bottomOuts: 4 }));
    const [first] = adjustments;
    expect(first?.rule).toBe("sag-above-target");
    expect(first?.setting.path).toBe("fork.main-pressure");
    expect(first?.sizedBy).toBe("measured");
    expect(first?.fitted).toBe(true);
    expect(first?.before?.sag).toBeCloseTo(0.054, 6);
    expect(first?.after?.sag).toBeLessThan(0.054);
  });

  test("what the measurements ask for beyond one large step is held at it, and said", () => {
    const [first] = adviseOnRun(input({ sag: mm(70) })).adjustments;
    expect(first?.setting.to).toEqual({ value: 65, unit: "psi" });
    expect(first?.limits.map((limit) => describeHindrance(limit)).join(" ")).toMatch(
      /ask for \d+ psi; no more than 5 psi at a time/,
    );
  });

  test("the size brings the sag to the baseline's own, to within half a step of the gauge", () => {
    const [first] = adviseOnRun(input({ sag: mm(46) }, { baselineSag: { fork: 0.043 } })).adjustments;
    const psi = (first?.setting.to.value ?? 0) - 60;
    const sagPerPsi = ((first?.before?.sag ?? 0) - (first?.after?.sag ?? 0)) / psi;
    expect(psi).toBeGreaterThanOrEqual(2);
    expect(Math.abs((first?.after?.sag ?? 0) - 0.043)).toBeLessThanOrEqual(sagPerPsi / 2);
  });

  test("nothing later in the stroke is proposed for an end whose sag is off, and its turn comes after", () => {
    const rules = adviseOnRun(input({ sag: mm(54), bottomOuts: 4, returnSpeed: "too fast" })).adjustments.map(
      (a) => a.rule,
    );
    expect(rules).toEqual(["sag-above-target", "returns-too-fast"]);
  });
});

describe("the end of the stroke", () => {
  const bottoms: EndFeedback = { sag: mm(36), travelUsed: mm(180), bottomOuts: 3 };

  test("sag right and full travel too easily: the secondary pressure goes up first", () => {
    const [first] = adviseOnRun(input(bottoms)).adjustments;
    expect(first?.setting.path).toBe("fork.secondary-pressure");
    expect(first?.before?.bottomsOut ?? first?.before?.strokeUsed).toBeDefined();
    expect(first?.after?.strokeUsed).toBeLessThan(0.18);
    expect(first?.after?.sag).toBeCloseTo(first?.before?.sag ?? 0, 6);
  });

  test("still so after that: the main pressure", () => {
    const earlier = [{ rule: "full-travel-too-easily", path: "fork.secondary-pressure" as const, run: "run-1" }];
    const [first] = adviseOnRun(input(bottoms, { earlier })).adjustments;
    expect(first?.setting.path).toBe("fork.main-pressure");
    expect(first?.limits).toContainEqual({ type: "changed for this already", path: "fork.secondary-pressure" });
  });

  test("after two changes that did not cure it, tuning stops and service is named", () => {
    const earlier = [
      { rule: "full-travel-too-easily", path: "fork.secondary-pressure" as const, run: "run-1" },
      { rule: "full-travel-too-easily", path: "fork.main-pressure" as const, run: "run-2" },
    ];
    const advice = adviseOnRun(input(bottoms, { earlier }));
    expect(advice.adjustments).toEqual([]);
    const [referral] = advice.referrals;
    expect(referral?.cause).toBe("two changes did not help");
    expect(referral && describeReferralAction(referral)).toContain("Stop tuning: look at service and damage.");
  });

  test("with one chamber a spacer is added", () => {
    const mounted = riderBike({ fork: oneChamberFork });
    const onTheBike = { ...setupValues, "fork.volume-spacers": { value: 1, unit: "spacers" as const } };
    const [first] = adviseOnRun(
      input(bottoms, { mounted, onTheBike, riding: onTheBike, ridingAtRun: onTheBike }),
    ).adjustments;
    expect(first?.setting).toEqual({
      path: "fork.volume-spacers",
      from: { value: 1, unit: "spacers" },
      to: { value: 2, unit: "spacers" },
    });
  });

  test("a limit that stops the first move is said, and the next best move is proposed", () => {
    const mounted = riderBike({ fork: oneChamberFork });
    const onTheBike = { ...setupValues, "fork.volume-spacers": { value: 4, unit: "spacers" as const } };
    const [first] = adviseOnRun(
      input(bottoms, { mounted, onTheBike, riding: onTheBike, ridingAtRun: onTheBike }),
    ).adjustments;
    expect(first?.setting.path).toBe("fork.main-pressure");
    expect(first?.limits.length).toBeGreaterThan(0);
  });

  test("travel never used: the secondary pressure goes down", () => {
    const [first] = adviseOnRun(input({ sag: mm(36), travelUsed: mm(140), end: "never reached" })).adjustments;
    expect(first?.setting.path).toBe("fork.secondary-pressure");
    expect(first?.setting.to.value).toBeLessThan(110);
  });
});

describe("what follows and what waits", () => {
  test("a changed spring brings its rebound along when the damping ratio asks for a click", () => {
    const wide = { ...setupValues, "fork.main-pressure": { value: 45, unit: "psi" as const } };
    const [first] = adviseOnRun(
      input({ sag: mm(75) }, { onTheBike: wide, riding: wide, ridingAtRun: wide }),
    ).adjustments;
    for (const { path, from, to } of first?.coupled ?? []) {
      expect(path).toBe("fork.rebound");
      expect(to.value).toBeLessThan(from.value);
    }
    expect(first?.setting.to.value).toBe(50);
  });

  test("one change at a time: the first is for now, the others say what they wait for", () => {
    const { adjustments } = adviseOnRun(input({ start: "harsh", returnSpeed: "too slow", grip: "slides" }));
    expect(adjustments.map((a) => a.waitsFor === undefined)).toEqual([true, false, false]);
    const waitsFor = adjustments[1]?.waitsFor;
    expect(waitsFor && describeWaitsFor(waitsFor)).toContain("first the fork low-speed compression");
  });

  test("nothing measured: the size is the felt step, and it says so", () => {
    const [first] = adviseOnRun(input({ end: "never reached" })).adjustments;
    expect(first?.sizedBy).toBe("felt step");
    expect(first?.fitted).toBe(false);
    expect(first?.setting.to).toEqual({ value: 108, unit: "psi" });
  });

  test("an end that was only felt to hit hard is sized by the felt step: nobody has measured that it used all its travel", () => {
    const felt = adviseOnRun(input({ end: "hits hard" })).adjustments[0];
    expect(felt).toMatchObject({ rule: "end-hits-hard", sizedBy: "felt step" });
    expect(felt?.setting.to).toEqual({ value: 112, unit: "psi" });
    const counted = adviseOnRun(input({ end: "hits hard", bottomOuts: 1 })).adjustments[0];
    expect(counted).toMatchObject({ rule: "end-hits-hard", sizedBy: "measured" });
  });

  test("what was not said is no symptom", () => {
    expect(adviseOnRun(input({}))).toEqual({ referrals: [], adjustments: [], unanswered: [], questions: [] });
  });

  test("symptoms that exclude each other give a question and no adjustment for that", () => {
    const advice = adviseOnRun(input({ sag: mm(36), bottomOuts: 3, end: "never reached" }));
    expect(advice.questions.map(({ rule }) => rule)).toEqual(["bottoms-and-never-reaches"]);
    expect(advice.adjustments).toEqual([]);
  });

  test("an adjuster in dispute is not touched", () => {
    const { "fork.secondary-pressure": _disputed, ...known } = setupValues;
    const advice = adviseOnRun(input({ end: "never reached" }, { onTheBike: known, riding: known }));
    expect(advice.adjustments[0]?.setting.path).not.toBe("fork.secondary-pressure");
    expect(advice.adjustments[0]?.limits).toContainEqual(expect.objectContaining({ type: "reading not known" }));
  });
});
