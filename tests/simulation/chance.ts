/** Chance that comes from one seed, so that what it did can be done again. */

export interface Chance {
  /** From 0 to below 1. */
  next(): number;
  /** A whole number from `low` to `high`, both included. */
  whole(low: number, high: number): number;
  /** True with this probability. */
  happens(probability: number): boolean;
  /** One of the choices. */
  one<Choice>(choices: readonly Choice[]): Choice;
}

/** One of many chances that come from one seed and know nothing of each other: what one is asked changes no other. */
export function chanceOf(seed: number, stream: number): Chance {
  return createChance(Math.imul(seed, 0x9e37_79b1) ^ Math.imul(stream + 1, 0x85eb_ca6b));
}

/** Mulberry32 (T. Ettinger, public domain): 32 bits of state, enough to choose what happens next in a test. */
export function createChance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    next,
    whole: (low, high) => low + Math.floor(next() * (high - low + 1)),
    happens: (probability) => next() < probability,
    one: (choices) => {
      const chosen = choices[Math.floor(next() * choices.length)];
      if (chosen === undefined) throw new Error("There is nothing to choose from.");
      return chosen;
    },
  };
}
