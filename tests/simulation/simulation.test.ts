/**
 * The real device code and the real server code on simulated disks, networks and
 * clocks: whatever happens to them, nothing that was saved is lost, and nothing
 * is called saved that is not.
 */
import { afterAll, describe, expect, test } from "vitest";
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
    const results = await Promise.all([3, 6, 9, 12, 13, 14].map((seed) => simulate({ seed, happenings: HAPPENINGS })));
    expect(Math.max(...results.map(({ records }) => records))).toBeGreaterThan(10);
    const script = results.flatMap((result) => result.script).join("\n");
    const happenings = ["dies", "half open", "spoiled", "full", "looks at the bike", "sleeps", "venue", "(old)"];
    const betweenServers = ["server-2 below", "its upstream", "goes to server-1"];
    for (const happening of [...happenings, ...betweenServers]) expect(script).toContain(happening);
  });
});

describe("a failing seed", () => {
  test("is told by what it needs: nothing more can be left out", async () => {
    const mutation = "last writer wins";
    const result = await simulate({ seed: 1, happenings: HAPPENINGS, mutation });
    const shortest = await smallest(result, mutation);
    expect(shortest.fault).toBeDefined();
    expect(shortest.only?.size).toBeLessThan(6);
    for (const index of shortest.only ?? []) {
      const only = new Set(shortest.only);
      only.delete(index);
      expect((await simulate({ seed: 1, happenings: HAPPENINGS, only, mutation })).fault).toBeUndefined();
    }
    expect(describeFailure(shortest).split("\n").length).toBe(shortest.script.length + 1);
  });

  test("happens as it did with the others when something is left out", async () => {
    const all = await simulate({ seed: 12, happenings: HAPPENINGS });
    const even = new Set(Array.from({ length: HAPPENINGS / 2 }, (_, index) => 2 * index));
    const half = await simulate({ seed: 12, happenings: HAPPENINGS, only: even });
    expect(half.script.slice(1, -1)).toEqual(all.script.slice(1, -1).filter((_, index) => even.has(index)));
  });
});

const found: string[] = [];
afterAll(() => void process.stdout.write(`\nseeds  remedy that is turned off, and the fault\n${found.join("")}`));

describe("a remedy that is turned off", () => {
  test.each(mutations)('"%s" is found within a thousand seeds', async (mutation) => {
    let seed = 1;
    let fault: string | undefined;
    while (fault === undefined && seed <= SEEDS) {
      const result = await simulate({ seed, happenings: HAPPENINGS, mutation });
      fault = result.fault?.what;
      if (fault === undefined) seed += 1;
    }
    found.push(`${String(seed).padStart(5)}  ${mutation}: ${fault ?? "not found"}\n`);
    expect(fault).toBeDefined();
    expect((await simulate({ seed, happenings: HAPPENINGS })).fault).toBeUndefined();
  });
});
