/** How much of a long list is shown at a time: a phone paints hundreds of lines slowly. */

export const firstPage = 12;
const further = 24;

/** What one tap on "more" shows of `total`, and how many lines that adds. */
export function nextPage(shown: number, total: number): { readonly shown: number; readonly more: number } {
  const more = Math.max(0, Math.min(further, total - shown));
  return { shown: shown + more, more };
}
