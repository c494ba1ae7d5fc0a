import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { csvText, readCsv } from "#client/data/csv-text.ts";
import { describeFileProblem } from "#core/exchange/file-problem.ts";
import { guardCell, unguardCell } from "#core/exchange/formula-guard.ts";
import { preview } from "#core/exchange/preview.ts";
import type { ReadTable, TableForm } from "#core/exchange/table.ts";
import { tableNames, tablesIn } from "#core/exchange/table-columns.ts";
import { readTable } from "#core/exchange/tables-in.ts";
import { tableOut } from "#core/exchange/tables-out.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { baselineKind, riderKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { teamLedger, written } from "#tests/builders/team-ledger.ts";
import { MAIN } from "#tests/client/pit/pit-team.ts";
import { accepted, refusedInWords } from "#tests/core/exchange/exchange-team.ts";

const point: TableForm = { separator: ",", decimal: ".", bom: false };
const comma: TableForm = { separator: ";", decimal: ",", bom: true };
const forms = [point, comma];

function tableIn(text: string): ReadTable {
  const read = readCsv(text);
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.table;
}

/** The demo rider with a setting whose pressure has decimals. */
function team() {
  const made = teamLedger();
  const heldAt = { temperature: { value: -5, unit: "°C" }, altitude: { value: 1950, unit: "m" } } as const;
  const setting = { quantity: { value: 62.5, unit: "psi" }, standing: "on the bike", heldAt } as const;
  written(made.writerFor("mia").set(settingKind, `alder/alder-1/${MAIN}`, setting));
  return made;
}

function previewOf(ledger: ReturnType<typeof team>["ledger"], text: string) {
  return preview(ledger, accepted(readTable(ledger, tableIn(text), "kestrel")));
}

describe("a cell that a spreadsheet would run", () => {
  test.each([
    ["=1+1", "'=1+1"],
    ["+49 170", "'+49 170"],
    ["@home", "'@home"],
    ["-soft", "'-soft"],
    ["\t=1", "'\t=1"],
    ["'=1", "''=1"],
    ["-5", "-5"],
    ["-0,5", "-0,5"],
    ["'tis", "'tis"],
    ["62 psi", "62 psi"],
  ])("%j goes out as %j and comes back as it was", (text, guarded) => {
    expect(guardCell(text)).toBe(guarded);
    expect(unguardCell(guarded)).toBe(text);
  });

  test("comes back as it was, whatever stands in it, and never begins with a sign that is no number's", () => {
    const texts = fc.oneof(fc.string({ unit: fc.constantFrom(..."'=+-@\t1,.a") }), fc.string());
    fc.assert(
      fc.property(texts, (text) => {
        const guarded = guardCell(text);
        expect(unguardCell(guarded)).toBe(text);
        expect(/^[=+@\t\r\n]/.test(guarded)).toBe(false);
        expect(/^-/.test(guarded) && !/^-\d+([.,]\d+)?$/.test(guarded)).toBe(false);
      }),
      { seed: 7, numRuns: 3000 },
    );
  });
});

describe("the text of a table", () => {
  test("with a semicolon has decimal commas and the mark of UTF-8, and ends its rows with CRLF", () => {
    expect(csvText({ head: ["name", "value"], rows: [["Zoë; Alder", 62.5]] }, comma)).toBe(
      '\uFEFFname;value\r\n"Zoë; Alder";62,5\r\n',
    );
  });

  test("comes back cell by cell, with quotes, line breaks and separators in them", () => {
    const cell = fc.oneof(fc.string({ unit: fc.constantFrom(..."\",;\t\r\n '=+-@a1") }), fc.string());
    const rows = fc.array(fc.tuple(cell, cell, fc.constantFrom("end", "=end", "1")), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(rows, fc.constantFrom(...forms), (given, form) => {
        const table = tableIn(csvText({ head: ["one", 'two, with "comma"', "three"], rows: given }, form));
        expect(table.head).toEqual(["one", 'two, with "comma"', "three"]);
        expect(table.rows.map(({ cells }) => cells)).toEqual(given);
      }),
      { seed: 11, numRuns: 2000 },
    );
  });

  test.each([
    ["", "empty"],
    ["\uFEFF\r\n\r\n", "empty"],
    ["rider,name", "empty"],
    ['rider,name\nalder,"Rowan', "quotes"],
  ])("%j is refused in a sentence", (text, type) => {
    const read = readCsv(text);
    expect(read.ok ? undefined : read.problem.type).toBe(type);
  });

  test("any text at all is read or refused, never an error", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."\",;\t\r\n '=ab\0") }), (text) => {
        const read = readCsv(text);
        expect(read.ok || read.problem.sentence.length > 20).toBe(true);
      }),
      { seed: 13, numRuns: 2000 },
    );
  });
});

describe("tables out and in", () => {
  test.each(tablesIn.flatMap((name) => forms.map((form) => [name, form] as const)))(
    "%s in %j: the own file changes nothing",
    (name, form) => {
      const { ledger } = team();
      const seen = previewOf(ledger, csvText(tableOut(ledger, name), form));
      expect([seen.lines, seen.refused]).toEqual([[], []]);
      expect(seen.same).toBeGreaterThan(0);
    },
  );

  test("every table has a cell for each of its columns", () => {
    const { ledger } = team();
    for (const name of tableNames) {
      const { head, rows } = tableOut(ledger, name);
      for (const row of rows) expect(row).toHaveLength(head.length);
    }
  });

  test("a rider's mass with a decimal comma changes, and what the table does not have stays", () => {
    const { ledger } = team();
    const before = settledValue(ledger.current(riderKind, "alder"));
    const text = `rider;name;mass;mass unit\r\nalder;${before?.name};81,5;kg\r\n`;
    expect(previewOf(ledger, text).lines.map(({ entry }) => entry.value)).toEqual([
      { ...before, mass: { value: 81.5, unit: "kg" } },
    ]);
  });

  test("a baseline is taken whole: one bad line of it refuses all of it, and the others stand", () => {
    const { ledger } = team();
    const lines = ["rider,course type,adjuster,value,unit", `alder,steep,${MAIN},63,psi`, `alder,jumpy,${MAIN},x,psi`];
    const seen = previewOf(ledger, lines.join("\n"));
    expect(seen.lines.map(({ entry, differences }) => [entry.key, differences])).toEqual([
      ["alder/steep", [{ field: `values, ${MAIN}`, from: expect.stringMatching(/psi$/), to: "63 psi" }]],
    ]);
    expect(refusedInWords(seen)).toEqual([
      { place: "Line 3, baseline alder/jumpy", sentence: expect.stringContaining("not a number") },
    ]);
    expect(settledValue(ledger.current(baselineKind, "alder/steep"))?.values[MAIN]?.value).not.toBe(63);
  });

  test("a setting that changes counts for the weekend, on the bike; one beyond its limit is refused", () => {
    const { ledger } = team();
    const head = "rider,bike,adjuster,value,unit";
    expect(previewOf(ledger, `${head}\nalder,alder-1,${MAIN},64,psi`).lines[0]?.entry.value).toEqual({
      quantity: { value: 64, unit: "psi" },
      standing: "on the bike",
      weekend: "kestrel",
    });
    expect(refusedInWords(previewOf(ledger, `${head}\nalder,alder-1,${MAIN},499,psi`))[0]?.sentence).toMatch(
      /is outside/,
    );
    expect(refusedInWords(previewOf(ledger, `${head}\nnobody,alder-1,${MAIN},64,psi`))[0]?.sentence).toMatch(
      /no rider "nobody"/,
    );
  });

  test("an adjuster twice for a baseline names its line, and refuses the baseline as a whole", () => {
    const { ledger } = team();
    const head = "rider,course type,adjuster,value,unit";
    const seen = previewOf(ledger, [head, `alder,steep,${MAIN},63,psi`, `alder,steep,${MAIN},64,psi`].join("\n"));
    expect(refusedInWords(seen)).toEqual([
      { place: "Line 3", sentence: `${MAIN} is given twice for alder/steep.` },
      { place: "Line 2 to 3, baseline alder/steep", sentence: "One of its lines is refused, so none is taken." },
    ]);
    expect(seen.lines).toEqual([]);
  });

  test("a table that is none of ours says which there are", () => {
    const read = readTable(team().ledger, tableIn("a,b\n1,2"));
    expect(read.ok ? "" : describeFileProblem(read.problem)).toMatch(/Allowed: riders \(rider, name\); baselines/);
  });
});
