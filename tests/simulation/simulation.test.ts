/**
 * The real device code and the real server code on simulated disks, networks and
 * clocks: whatever happens to them, nothing that was saved is lost, and nothing
 * is called saved that is not.
 */
import { describe, expect, test } from "vitest";
import { mutations } from "./mutation.ts";
import { describeFailure, HAPPENINGS, smallest } from "./smallest.ts";
import { simulate } from "./world.ts";

const SEEDS = 1000;
const SEEDS_A_TEST = 100;
const parts = Array.from({ length: SEEDS / SEEDS_A_TEST }, (_, index) => index * SEEDS_A_TEST + 1);

describe("a simulated race weekend", () => {
  test.each(parts)("of seeds %i and on keeps every promise", async (from) => {
    for (let seed = from; seed < from + SEEDS_A_TEST; seed += 1) {
      const result = await simulate({ seed, happenings: HAPPENINGS });
      if (result.fault) expect.fail(describeFailure(await smallest(result)));
    }
  });

  test("is the same when its seed is run again", async () => {
    expect(await simulate({ seed: 7, happenings: HAPPENINGS })).toEqual(
      await simulate({ seed: 7, happenings: HAPPENINGS }),
    );
  });

  test("is no quiet one: records are written, and devices and servers die in it", async () => {
    const results = await Promise.all([11, 12, 13, 14].map((seed) => simulate({ seed, happenings: HAPPENINGS })));
    expect(Math.max(...results.map(({ records }) => records))).toBeGreaterThan(10);
    const script = results.flatMap((result) => result.script).join("\n");
    for (const happening of ["dies", "half open", "spoiled", "full", "looks at the bike"])
      expect(script).toContain(happening);
  });
});

describe("a remedy that is turned off", () => {
  test.each(mutations)('"%s" is found within a thousand seeds', async (mutation) => {
    let seed = 1;
    let fault: string | undefined;
    while (fault === undefined && seed <= SEEDS) {
      const result = await simulate({ seed, happenings: HAPPENINGS, mutation });
      fault = result.fault?.what;
      if (fault === undefined) seed += 1;
    }
    process.stdout.write(`${mutation}: found after ${seed} seeds (${fault ?? "not found"})\n`);
    expect(fault).toBeDefined();
  });
});
