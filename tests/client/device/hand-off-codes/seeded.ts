/** Bytes and orders that come out the same each time. */
import { createChance } from "#tests/simulation/chance.ts";

export function bytesOf(length: number, seed: number): Uint8Array {
  const { whole } = createChance(seed);
  return Uint8Array.from({ length }, () => whole(0, 255));
}

export function shuffled<Value>(values: readonly Value[], seed: number): readonly Value[] {
  const { next } = createChance(seed ^ 0x5eed);
  return values
    .map((value) => ({ value, place: next() }))
    .sort((a, b) => a.place - b.place)
    .map(({ value }) => value);
}
