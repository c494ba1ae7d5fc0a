/** French counts in words: 0 and 1 take the singular ("0 run", "1 run", "2 runs"). */
export function plural(count: number, one: string, many: string): string {
  return `${count} ${chosen(count, one, many)}`;
}

/** The form of a word, or of a phrase, that goes with a count. */
export function chosen(count: number, one: string, many: string): string {
  return Math.abs(count) < 2 ? one : many;
}
