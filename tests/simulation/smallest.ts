/** Makes a failing seed as short as it can be, for whoever has to understand it. */
import type { Mutation } from "./mutation.ts";
import { type SimulationResult, simulate } from "./world.ts";

/** How many things happen in one seed. */
export const HAPPENINGS = 40;
/** Runs that may be spent on one seed. */
const MOST_RUNS = 400;

/**
 * Leaves out what is not needed for the fault, first by halves and in the end one by one, until nothing more can be left
 * out. What is left happens at its own time, so that the others stay what they are.
 * Source of the method: A. Zeller and R. Hildebrandt, "Simplifying and isolating failure-inducing input", IEEE TSE 2002.
 */
export async function smallest(result: SimulationResult, mutation?: Mutation): Promise<SimulationResult> {
  let best = result;
  let kept = Array.from({ length: HAPPENINGS }, (_, index) => index);
  let runs = 0;
  for (let size = HAPPENINGS / 2; size >= 1 && runs < MOST_RUNS; ) {
    let isShorter = false;
    for (let start = 0; start < kept.length && runs < MOST_RUNS; ) {
      const fewer = [...kept.slice(0, start), ...kept.slice(start + size)];
      runs += 1;
      const tried = await simulate({
        seed: result.seed,
        happenings: HAPPENINGS,
        only: new Set(fewer),
        ...(mutation && { mutation }),
      });
      if (tried.fault) {
        best = tried;
        kept = fewer;
        isShorter = true;
      } else start += size;
    }
    if (!isShorter || size > 1) size = size === 1 ? 0 : Math.floor(size / 2);
  }
  return best;
}

/** A failing seed in words. */
export function describeFailure({ seed, fault, script }: SimulationResult): string {
  return [`Seed ${seed}: ${fault?.what}. What happened:`, ...script].join("\n  ");
}
