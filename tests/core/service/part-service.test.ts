import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type DoneService, partService } from "#core/service/part-service.ts";
import type { RiddenRun } from "#core/service/riding-hours.ts";
import { defaultServicePlan } from "#core/service/service-plan.ts";
import { resets, type ServiceWork, serviceWorks, worksOf } from "#core/service/service-work.ts";
import { grounds } from "#core/team/ground.ts";
import type { Part } from "#core/team/part.ts";
import { coilShock, oneChamberFork, riderBike, twoChamberFork } from "#tests/builders/bike.ts";

const rate = { hoursPerRun: 0.1, runsPerSession: 4 };
const airShock: Part = { ...oneChamberFork, place: "shock", name: "Air shock" };

const run = (at: number): RiddenRun => ({
  weekend: "kestrel",
  session: "p1",
  at,
  timeSeconds: 3600,
  ground: "dry",
});

function done(at: number, what: ServiceWork, place: "fork" | "shock" = "fork", hoursBefore?: number): DoneService {
  return {
    id: `${String(at).padStart(6, "0")}-${what.replace(" ", "-")}`,
    at,
    by: "mia",
    service: { bike: "alder-1", place, what, settings: {}, ...(hoursBefore !== undefined && { hoursBefore }) },
  };
}

const statusOf = (part: Part, runs: readonly RiddenRun[], services: readonly DoneService[]) =>
  partService(part, runs, services, defaultServicePlan, rate);
const hoursOf = (part: Part, runs: readonly RiddenRun[], services: readonly DoneService[], work: ServiceWork) =>
  statusOf(part, runs, services).find((status) => status.work === work)?.usedHours ?? Number.NaN;

const arbitraryRun: fc.Arbitrary<RiddenRun> = fc.record({
  weekend: fc.constantFrom("kestrel", "otter"),
  session: fc.constantFrom("p1", "p2"),
  at: fc.nat({ max: 1000 }),
  timeSeconds: fc.option(fc.integer({ min: 1, max: 3600 }), { nil: undefined }),
  ground: fc.option(fc.constantFrom(...grounds), { nil: undefined }),
});
const arbitraryService: fc.Arbitrary<DoneService> = fc
  .tuple(
    fc.nat({ max: 1000 }),
    fc.constantFrom(...serviceWorks),
    fc.constantFrom("fork" as const, "shock" as const),
    fc.option(fc.nat({ max: 60 }), { nil: undefined }),
  )
  .map((drawn) => done(...drawn));
const arbitraryHistory = fc.tuple(
  fc.array(arbitraryRun, { maxLength: 30 }),
  fc.uniqueArray(arbitraryService, { maxLength: 6, selector: ({ id }) => id }),
);

describe("the works of a part", () => {
  // Common practice, no source.
  test.each([
    ["a fork with air", twoChamberFork, ["bath oil", "complete"]],
    ["a shock with air", airShock, ["bath oil", "complete"]],
    ["a coil shock", coilShock, ["complete"]],
    ["a tyre", riderBike().parts["front-tyre"], []],
  ] as const)("of %s", (_name, part, works) => {
    expect(part && worksOf(part)).toEqual(works);
  });
});

describe("the hours of a part", () => {
  test("are those since the work was last done, with the hours that were on it then", () => {
    const runs = [1, 2, 3, 4].map(run);
    expect(hoursOf(twoChamberFork, runs, [], "bath oil")).toBe(4);
    expect(hoursOf(twoChamberFork, runs, [done(3, "bath oil")], "bath oil")).toBe(2);
    expect(hoursOf(twoChamberFork, runs, [done(3, "bath oil", "fork", 30)], "bath oil")).toBe(32);
  });

  test("are not touched by a service of the other part", () => {
    expect(hoursOf(twoChamberFork, [run(1)], [done(2, "complete", "shock")], "complete")).toBe(1);
  });

  test("never fall by another run", () => {
    fc.assert(
      fc.property(arbitraryHistory, arbitraryRun, ([runs, services], more) => {
        for (const work of serviceWorks) {
          const before = hoursOf(twoChamberFork, runs, services, work);
          expect(hoursOf(twoChamberFork, [...runs, more], services, work)).toBeGreaterThanOrEqual(before - 1e-9);
        }
      }),
    );
  });

  test("grow by what a run counts when it comes after every service", () => {
    fc.assert(
      fc.property(arbitraryHistory, ([runs, services]) => {
        for (const work of serviceWorks) {
          const before = hoursOf(twoChamberFork, runs, services, work);
          expect(hoursOf(twoChamberFork, [...runs, run(1001)], services, work)).toBeCloseTo(before + 1, 9);
        }
      }),
    );
  });
});

describe("a service", () => {
  test("sets its own hours back and leaves the others; a complete one sets both back", () => {
    fc.assert(
      fc.property(arbitraryHistory, fc.constantFrom(...serviceWorks), ([runs, services], what) => {
        const after = [...services, done(1001, what)];
        for (const work of serviceWorks) {
          const expected = resets(what, work) ? 0 : hoursOf(twoChamberFork, runs, services, work);
          expect(hoursOf(twoChamberFork, runs, after, work)).toBe(expected);
        }
        expect(statusOf(twoChamberFork, runs, after).find(({ work }) => work === what)?.last).toBe(after.at(-1));
      }),
    );
  });

  test("of the bath oil leaves the hours of the complete service, and the complete one sets the bath oil back", () => {
    const runs = [run(1), run(2)];
    expect(hoursOf(twoChamberFork, runs, [done(3, "bath oil")], "complete")).toBe(2);
    expect(hoursOf(twoChamberFork, runs, [done(3, "bath oil")], "bath oil")).toBe(0);
    expect(hoursOf(twoChamberFork, runs, [done(3, "complete")], "bath oil")).toBe(0);
    expect(hoursOf(twoChamberFork, runs, [done(3, "complete")], "complete")).toBe(0);
  });

  test("counts the same in whatever order runs and services arrive", () => {
    fc.assert(
      fc.property(arbitraryHistory, ([runs, services]) => {
        const turned = statusOf(twoChamberFork, [...runs].reverse(), [...services].reverse());
        for (const [index, status] of statusOf(twoChamberFork, runs, services).entries()) {
          expect(turned[index]?.usedHours).toBeCloseTo(status.usedHours, 9);
        }
      }),
    );
  });
});
