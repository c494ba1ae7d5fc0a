/** Tables as the text of a CSV file (RFC 4180) and back, by papaparse. Loaded with the act that needs it. */

import Papa from "papaparse";
import { data as words } from "#client/text/data.ts";
import { guardCell, unguardCell } from "#core/exchange/formula-guard.ts";
import type { ExchangeTable, ReadTable, TableForm } from "#core/exchange/table.ts";

/** The text of a table: CRLF between rows, cells that would be formulas guarded. */
export function csvText({ head, rows }: ExchangeTable, { separator, decimal, bom }: TableForm): string {
  const cells = [head, ...rows].map((row) =>
    row.map((cell) =>
      typeof cell === "number" ? String(cell).replace(".", decimal) : cell === undefined ? "" : guardCell(cell),
    ),
  );
  return `${bom ? "\uFEFF" : ""}${Papa.unparse(cells, { delimiter: separator, newline: "\r\n" })}\r\n`;
}

export type ReadCsv =
  | { readonly ok: true; readonly table: ReadTable }
  | { readonly ok: false; readonly problem: { readonly type: string; readonly sentence: string } };

/** Reads the text of a file whose first row is the head: comma, semicolon or tab between cells, as that row has it. */
export function readCsv(text: string): ReadCsv {
  const plain = text.replace(/^\uFEFF/, "");
  const { data, errors } = Papa.parse<string[]>(plain, { delimiter: separatorOf(plain), skipEmptyLines: false });
  const broken = errors.find(({ type }) => type === "Quotes");
  if (broken) {
    const sentence = words.file.quotes((broken.row ?? 0) + 1);
    return { ok: false, problem: { type: "quotes", sentence } };
  }
  const [head = [], ...rest] = data.map((cells) => cells.map(unguardCell));
  const rows = rest
    .map((cells, index) => ({ line: index + 2, cells }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  if (head.every((cell) => cell.trim() === "") || rows.length === 0) {
    const sentence = words.file.noTable;
    return { ok: false, problem: { type: "empty", sentence } };
  }
  return { ok: true, table: { head, rows } };
}

/** The sign that the head row has most often outside quotes. */
function separatorOf(text: string): string {
  const head = (/^(?:"(?:[^"]|"")*"|[^\r\n"])*/.exec(text.slice(0, 20_000))?.[0] ?? "").replace(/"(?:[^"]|"")*"/g, "");
  const count = (sign: string): number => head.split(sign).length - 1;
  return [";", "\t", ","].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}
