/** "1 bajada", "7 bajadas": in Spanish one alone is singular. */
export function plural(count: number, one: string, several: string): string {
  return `${count} ${chosen(count, one, several)}`;
}

/** The form of a word, or of a phrase, that goes with a count. */
export function chosen(count: number, one: string, several: string): string {
  return Math.abs(count) === 1 ? one : several;
}

/** "1 apunte", "7 apuntes". */
export function entriesText(count: number): string {
  return plural(count, "apunte", "apuntes");
}
