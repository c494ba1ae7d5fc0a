/** Tables as a spreadsheet has them, before they are text and after. */

/** A cell to write; a number is written with the decimal sign that was chosen. */
export type Cell = string | number | undefined;

export interface ExchangeTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A row that was read; `line` counts from 1 with the head row, as a spreadsheet shows it. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** The table that was read: its first row is the head. */
export interface ReadTable {
  readonly head: readonly string[];
  readonly rows: readonly TableRow[];
}

/** Which signs a spreadsheet expects: decimal commas go with semicolons. `bom` marks the text as UTF-8 for it. */
export interface TableForm {
  readonly separator: "," | ";";
  readonly decimal: "." | ",";
  readonly bom: boolean;
}

/** The number in a cell, with a decimal point or comma; undefined when it is none. Thousands are not separated. */
export function numberInCell(text: string): number | undefined {
  const plain = text.trim().replace("−", "-").replace(",", ".");
  return /^-?\d{1,15}(\.\d{1,15})?$/.test(plain) ? Number(plain) : undefined;
}
