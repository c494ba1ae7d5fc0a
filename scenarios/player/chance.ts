/** Chance that comes from a seed, so that a replay can be repeated. */
import * as prng from "lib0/prng";
import { monotonicFactory } from "ulid";

export interface Chance {
  /** A whole number from 0 to below `count` (> 0). */
  below(count: number): number;
  /** A ULID for the time `at` (ms since 1970), above every one given before for that time. */
  recordId(at: number): string;
}

/**
 * The same seed gives the same chance.
 * @param seed a whole number from 1 to 2³² − 1; the generator stands still at 0.
 */
export function createChance(seed: number): Chance {
  const generator = prng.create(seed);
  const ulid = monotonicFactory(() => prng.real53(generator));
  return { below: (count) => prng.uint32(generator, 0, count - 1), recordId: (at) => ulid(at) };
}
