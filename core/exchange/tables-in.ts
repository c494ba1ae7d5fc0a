/** Tables from a spreadsheet as candidates: riders, baselines, and settings on the bike. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { baselineKind, riderKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Candidate, ReadCandidates, Refused } from "./candidate.ts";
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
    const allowed = tablesIn.map((each) => `${each} (${neededColumns[each].join(", ")})`).join("; ");
    const sentence = `The first row does not name the columns of a table that can be taken in. Allowed: ${allowed}.`;
    return { ok: false, problem: { type: "other table", sentence } };
  }
  if (table.rows.length > mostRows) {
    const sentence = `This table has more than ${mostRows} rows; take it in as several files.`;
    return { ok: false, problem: { type: "too many rows", sentence } };
  }
  const rows = table.rows.map(({ line, cells }) => ({
    place: `Line ${line}`,
    has: (column: string) => head.includes(column),
    cell: (column: string) => (cells[head.indexOf(column)] ?? "").trim(),
  }));
  return { ok: true, ...read[name](ledger, rows, weekendId) };
}

interface Row {
  readonly place: string;
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
      return { place: `${row.place}, rider "${key}"`, kind: riderKind, key, value };
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
      return { place: `${row.place}, ${path}`, kind: settingKind, key, value: isSame ? before : fresh };
    }),
    refused: [],
  }),
};

/** A baseline was ridden as a whole: when one of its rows is refused, none of it is taken. */
function readBaselines(ledger: Ledger, rows: readonly Row[]): Read {
  const refused: Refused[] = [];
  const groups = new Map<string, { readonly places: string[]; readonly values: Map<string, unknown> }>();
  for (const row of rows) {
    const key = `${row.cell("rider")}/${row.cell("course type")}`;
    const group = groups.get(key) ?? { places: [], values: new Map<string, unknown>() };
    groups.set(key, group);
    const path = row.cell("adjuster");
    group.places.push(row.place);
    if (group.values.has(path)) refused.push({ place: row.place, sentence: `${path} is given twice for ${key}.` });
    group.values.set(path, quantityOf(row, "value", "unit"));
  }
  const candidates: Candidate[] = [];
  for (const [key, { places, values }] of groups) {
    const place = places.length === 1 ? `${places[0]}` : `${places[0]} to ${places.at(-1)?.replace("Line ", "")}`;
    const before = known(ledger, baselineKind, key);
    if (refused.some((each) => places.includes(each.place))) {
      refused.push({ place: `${place}, baseline ${key}`, sentence: "One of its lines is refused, so none is taken." });
    } else if (!before) {
      const sentence =
        "There is no such baseline that is settled here. A new one needs the mass, temperature and altitude it was found at: approve it from a weekend, or take it in as JSON.";
      refused.push({ place: `${place}, baseline ${key.slice(0, 80)}`, sentence });
    } else {
      const value = { ...before, values: { ...before.values, ...Object.fromEntries(values) } };
      candidates.push({ place: `${place}, baseline ${key}`, kind: baselineKind, key, value });
    }
  }
  return { candidates, refused };
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
