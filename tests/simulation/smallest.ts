/** Makes a failing seed as short as it can be, for whoever has to understand it. */
import type { Mutation } from "./mutation.ts";
import { type SimulationResult, simulate } from "./world.ts";

/** How many things happen in one seed. */
export const HAPPENINGS = 40;

/** The shortest run of a failing seed that still fails: what happens in it is a beginning of what happened in the long one. */
export async function smallest(result: SimulationResult, mutation?: Mutation): Promise<SimulationResult> {
  for (let happenings = 0; happenings < HAPPENINGS; happenings += 1) {
    const shorter = await simulate({ seed: result.seed, happenings, ...(mutation && { mutation }) });
    if (shorter.fault) return shorter;
  }
  return result;
}

/** A failing seed in words. */
export function describeFailure({ seed, fault, script }: SimulationResult): string {
  return [`Seed ${seed}: ${fault?.what}. What happened:`, ...script].join("\n  ");
}
