/** Words without what people leave out when they look for them. */

/** Small letters without accents; a comma between digits is a point, so that 4,2 finds 4.2. */
export function folded(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{Mark}/gu, "")
    .toLowerCase()
    .replace(/(\d),(?=\d)/g, "$1.");
}

/** The words of what somebody typed. */
export function wordsOf(typed: string): readonly string[] {
  return folded(typed).split(/\s+/).filter(Boolean);
}
