/** Tables from a spreadsheet as candidates: riders, baselines, and settings on the bike. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { baselineKind, riderKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Candidate, ReadCandidates, Refused } from "./candidate.ts";
import type { FilePlace } from "./file-place.ts";
import { numberInCell, type ReadTable } from "./table.ts";
import { neededColumns, type TableIn, tablesIn } from "./table-columns.ts";

/** Most rows of a table: 40 riders with three baselines of 20 adjusters are 2400. */
export const mostRows = 20_000;

/**
 * What a table brings; which table it is, its head row says. An empty cell of an optional field takes the value away, a
 * column that is not there leaves it.
 * @param weekendId the weekend that settings count for, if any
 */
export function readTable(ledger: Ledger, table: ReadTable, weekendId?: string): ReadCandidates {
  const head = table.head.map((name) => name.trim().toLowerCase());
  const name = tablesIn.find((candidate) => neededColumns[candidate].every((column) => head.includes(column)));
  if (!name) {
    const allowed = tablesIn.map((table) => ({ table, columns: neededColumns[table] }));
    return { ok: false, problem: { type: "other table", allowed } };
  }
  if (table.rows.length > mostRows) {
    return { ok: false, problem: { type: "too many rows", most: mostRows } };
  }
  const rows = table.rows.map(({ line, cells }) => ({
    line,
    has: (column: string) => head.includes(column),
    cell: (column: string) => (cells[head.indexOf(column)] ?? "").trim(),
  }));
  return { ok: true, ...read[name](ledger, rows, weekendId) };
}

interface Row {
  readonly line: number;
  has(column: string): boolean;
  cell(column: string): string;
}
interface Read {
  readonly candidates: Candidate[];
  readonly refused: Refused[];
}

const read: Readonly<Record<TableIn, (ledger: Ledger, rows: readonly Row[], weekendId?: string) => Read>> = {
  riders: (ledger, rows) => ({
    candidates: rows.map((row) => {
      const key = row.cell("rider");
      const value: Record<string, unknown> = { ...known(ledger, riderKind, key), name: row.cell("name") };
      if (row.has("bike")) value.bike = row.cell("bike");
      if (row.has("mass")) value.mass = quantityOf(row, "mass", "mass unit");
      if (row.has("plate")) {
        delete value.plate;
        if (row.cell("plate") !== "") value.plate = numberOrText(row.cell("plate"));
      }
      return { place: placeOf(row.line, { type: "rider", name: key }), kind: riderKind, key, value };
    }),
    refused: [],
  }),
  baselines: readBaselines,
  settings: (ledger, rows, weekendId) => ({
    candidates: rows.map((row) => {
      const path = row.cell("adjuster");
      const key = `${row.cell("rider")}/${row.cell("bike")}/${path}`;
      const before = known(ledger, settingKind, key);
      const quantity = quantityOf(row, "value", "unit");
      const heldAt =
        row.cell("temperature") === "" && row.cell("altitude") === ""
          ? undefined
          : {
              temperature: quantityOf(row, "temperature", "temperature unit"),
              altitude: quantityOf(row, "altitude", "altitude unit"),
            };
      const said = { quantity, ...(heldAt && { heldAt }) };
      const isSame = before !== undefined && JSON.stringify(factOf(before)) === JSON.stringify(factOf(said));
      const fresh = { ...said, standing: "on the bike", ...(weekendId !== undefined && { weekend: weekendId }) };
      return {
        place: placeOf(row.line, { type: "adjuster", name: path }),
        kind: settingKind,
        key,
        value: isSame ? before : fresh,
      };
    }),
    refused: [],
  }),
};

/** A baseline was ridden as a whole: when one of its rows is refused, none of it is taken. */
function readBaselines(ledger: Ledger, rows: readonly Row[]): Read {
  const refused: Refused[] = [];
  const spoilt = new Set<string>();
  const groups = new Map<string, { readonly lines: number[]; readonly values: Map<string, unknown> }>();
  for (const row of rows) {
    const key = `${row.cell("rider")}/${row.cell("course type")}`;
    const group = groups.get(key) ?? { lines: [], values: new Map<string, unknown>() };
    groups.set(key, group);
    const path = row.cell("adjuster");
    group.lines.push(row.line);
    if (group.values.has(path)) {
      refused.push({ place: placeOf(row.line), refusal: { type: "adjuster twice", adjuster: path, baseline: key } });
      spoilt.add(key);
    }
    group.values.set(path, quantityOf(row, "value", "unit"));
  }
  const candidates: Candidate[] = [];
  for (const [key, { lines, values }] of groups) {
    const [first = 0] = lines;
    const place = placeOf(first, { type: "baseline", name: key.slice(0, 80) }, lines.at(-1));
    const before = known(ledger, baselineKind, key);
    if (spoilt.has(key)) {
      refused.push({ place, refusal: { type: "line refused" } });
    } else if (!before) {
      refused.push({ place, refusal: { type: "no settled baseline" } });
    } else {
      const value = { ...before, values: { ...before.values, ...Object.fromEntries(values) } };
      candidates.push({ place, kind: baselineKind, key, value });
    }
  }
  return { candidates, refused };
}

type Line = Extract<FilePlace, { type: "line" }>;

function placeOf(first: number, of?: Line["of"], last = first): FilePlace {
  return { type: "line", first, last, ...(of && { of }) };
}

function known<Value>(ledger: Ledger, kind: Parameters<typeof ledger.current<Value>>[0], key: string) {
  const current = ledger.current(kind, key);
  return current.state === "settled" ? current.value : undefined;
}

function factOf({ quantity, heldAt }: { readonly quantity: unknown; readonly heldAt?: unknown }): unknown {
  return [quantity, heldAt ?? null];
}

function quantityOf(row: Row, value: string, unit: string): unknown {
  return { value: numberOrText(row.cell(value)), unit: row.cell(unit) };
}

// What is no number goes to the schema as it stands, which says what is allowed.
function numberOrText(text: string): number | string {
  return numberInCell(text) ?? text;
}
