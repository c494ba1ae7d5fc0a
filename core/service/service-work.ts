/** The works of service that the team keeps hours for. */
import type { Part } from "#core/team/part.ts";

/**
 * - "bath oil": the lubricating bath oil, in a fork's lower legs or in the air can of a shock
 * - "complete": the whole part taken apart, the bath oil with it
 */
export const serviceWorks = ["bath oil", "complete"] as const;
export type ServiceWork = (typeof serviceWorks)[number];

/**
 * The works that a part has. A fork has lower legs whatever its spring is; a shock has bath oil in its air can only, so
 * that a coil shock has the complete service alone; a tyre has none. Common practice, no source.
 */
export function worksOf(part: Part): readonly ServiceWork[] {
  if (part.archetype === "tyre") return [];
  return part.place === "shock" && part.archetype === "coil" ? ["complete"] : serviceWorks;
}

/** True when `done` sets the hours of `work` back: its own, and a complete service those of the bath oil too. */
export function resets(done: ServiceWork, work: ServiceWork): boolean {
  return done === work || done === "complete";
}
