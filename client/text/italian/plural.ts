/** Italian counts in words: one alone is singular ("1 run", "0 voci"). */
export function plural(count: number, one: string, many: string): string {
  return `${count} ${chosen(count, one, many)}`;
}

/** The form of a word, or of a phrase, that goes with a count. */
export function chosen(count: number, one: string, many: string): string {
  return Math.abs(count) === 1 ? one : many;
}

/** "1 voce", "7 voci". */
export function entriesText(count: number): string {
  return plural(count, "voce", "voci");
}
