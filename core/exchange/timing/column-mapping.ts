/** Which column of a timing system's table says what. */

export const timingColumns = ["plate", "name", "time", "session"] as const;
export type TimingColumn = (typeof timingColumns)[number];
/** The column (from 0) for each thing that the table tells; a person may change what was guessed. */
export type ColumnMapping = Readonly<Partial<Record<TimingColumn, number>>>;

/** Head words, the surest first; common practice, no source. */
const headWords: Readonly<Record<TimingColumn, readonly string[]>> = {
  plate: ["plate", "race plate", "plate number", "bib", "start number", "number", "no", "nr"],
  name: ["name", "rider", "rider name", "full name", "last name", "surname"],
  time: ["run time", "time", "finish time", "total time", "total", "result"],
  session: ["session", "run", "heat", "stage"],
};

/** The mapping that the head row suggests. Columns are taken once each; what no head names is left out. */
export function guessMapping(head: readonly string[]): ColumnMapping {
  const words = head.map(plainHead);
  const taken = new Set<number>();
  const mapping: Partial<Record<TimingColumn, number>> = {};
  for (const column of timingColumns) {
    const at = headWords[column].map((word) => words.indexOf(word)).find((index) => index >= 0 && !taken.has(index));
    if (at === undefined) continue;
    mapping[column] = at;
    taken.add(at);
  }
  return mapping;
}

function plainHead(head: string): string {
  return head
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}
