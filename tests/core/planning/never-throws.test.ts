import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { feedbackRules } from "#core/advice/feedback-rules/rule-table.ts";
import { checkValue } from "#core/advice/limits.ts";
import { signOf } from "#core/advice/move-size.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { hostileRecords, ledgerOf } from "#tests/builders/hostile-team.ts";
import { everythingDerived } from "./everything-derived.ts";

const numRuns = 300;

/** Every advice and every setup sheet that a hostile team gets. */
function proposalsOf(raws: readonly unknown[]) {
  const { runs, sheets } = everythingDerived(ledgerOf(raws));
  return {
    advised: runs.flatMap(({ advice }) => (advice.ok ? [advice] : [])),
    sheets: sheets.flatMap((result) => (result.ok ? [result.sheet] : [])),
  };
}

function brokenLimits(mounted: RiderBike, values: SetupValues, others: SetupValues): readonly unknown[] {
  return Object.entries(values).flatMap(
    ([path, value]) => (value && checkValue(mounted, path as keyof SetupValues, value, { ...others, ...values })) ?? [],
  );
}

describe("whatever records a faulty or hostile device sends, as far as the ledger takes them", () => {
  test("everything that the screens derive is derived", () => {
    fc.assert(
      fc.property(hostileRecords, (raws) => {
        expect(everythingDerived(ledgerOf(raws))).toBeDefined();
      }),
      { numRuns },
    );
  });

  test("a course's facts are numbers, in both directions", () => {
    fc.assert(
      fc.property(hostileRecords, (raws) => {
        const facts = everythingDerived(ledgerOf(raws)).courses.flatMap((course) => course.facts ?? []);
        const numbers = facts.flatMap((fact) => Object.values(fact).filter((value) => typeof value === "number"));
        expect(numbers.filter((value) => !Number.isFinite(value))).toEqual([]);
      }),
      { numRuns: numRuns / 3 },
    );
  });

  test("the order of their arrival changes nothing that is derived", () => {
    fc.assert(
      fc.property(hostileRecords, fc.infiniteStream(fc.nat()), (raws, chance) => {
        const shuffled = raws
          .map((raw) => ({ raw, at: chance.next().value as number }))
          .sort((a, b) => a.at - b.at)
          .map(({ raw }) => raw);
        expect(everythingDerived(ledgerOf(shuffled))).toEqual(everythingDerived(ledgerOf(raws)));
      }),
      { numRuns: numRuns / 2 },
    );
  });

  test("no adjustment leaves a limit or goes the other way than its rule", () => {
    fc.assert(
      fc.property(hostileRecords, (raws) => {
        for (const { advice, input, mounted } of proposalsOf(raws).advised) {
          for (const { rule, setting, coupled } of advice.adjustments) {
            const values = Object.fromEntries([setting, ...coupled].map(({ path, to }) => [path, to]));
            expect(brokenLimits(mounted, values, input.onTheBike)).toEqual([]);
            const kind = setting.path.slice(setting.path.indexOf(".") + 1);
            const signs = feedbackRules
              .filter(({ id }) => id === rule)
              .flatMap(({ moves }) => moves.filter(({ adjuster }) => adjuster === kind))
              .map(({ direction }) => signOf(direction));
            expect(signs).toContain(Math.sign(setting.to.value - setting.from.value));
          }
        }
      }),
      { numRuns },
    );
  });

  test("no setup sheet asks for a value beyond a limit, and no step at the bench passes one on the way", () => {
    fc.assert(
      fc.property(hostileRecords, (raws) => {
        for (const { mounted, rows, sequence } of proposalsOf(raws).sheets) {
          for (const { path, weekend, bench } of rows) {
            if (weekend) expect(brokenLimits(mounted, { [path]: weekend }, {})).toEqual([]);
            if (bench) expect(brokenLimits(mounted, { [path]: bench }, {})).toEqual([]);
          }
          let state: SetupValues = Object.fromEntries(
            sequence.steps.flatMap(({ path, from }) => (from ? [[path, from]] : [])),
          );
          for (const { path, to } of sequence.steps) {
            expect(checkValue(mounted, path, to, state)).toBeUndefined();
            state = { ...state, [path]: to };
          }
        }
      }),
      { numRuns },
    );
  });
});
