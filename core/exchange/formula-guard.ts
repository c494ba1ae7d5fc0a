/**
 * A spreadsheet runs a cell that begins with = + - or @ as a formula, also in a file from somebody else. Such a cell gets
 * an apostrophe in front, and loses it on the way in. Plain numbers such as -5 are left alone.
 */
const plainNumber = /^-\d+([.,]\d+)?$/;
// Apostrophes count as part of the beginning, or else a text that had one of its own would lose it.
const dangerous = /^'*[=+\-@\t\r\n]/;

/** The text of a cell that no spreadsheet takes for a formula. */
export function guardCell(text: string): string {
  return dangerous.test(text) && !plainNumber.test(text) ? `'${text}` : text;
}

/** The text that {@link guardCell} was given. */
export function unguardCell(text: string): string {
  return text.startsWith("'") && dangerous.test(text) ? text.slice(1) : text;
}
