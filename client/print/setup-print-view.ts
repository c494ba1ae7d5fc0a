/** A rider's setup sheet as it is printed: one line an adjuster, those of the front first. */
import { common } from "#client/text/common.ts";
import { print } from "#client/text/print.ts";
import { trade } from "#client/text/trade.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { baselineSags } from "#core/advice/weekend-setup.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { SetupSheet, SheetRow } from "#core/planning/setup-sheet.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { type AdjusterPath, parseAdjusterPath } from "#core/team/adjuster.ts";
import { type End, ends, type Place, suspensionOf, tyreOf } from "#core/team/place.ts";

export interface PrintedRow {
  readonly name: string;
  readonly baseline: string;
  readonly weekend: string;
  readonly bench: string;
  readonly onTheBike: string;
  /** What there is to say of how it stands; empty for most. */
  readonly standing: string;
}

export interface PrintedGroup {
  readonly end: End;
  readonly title: string;
  readonly rows: readonly PrintedRow[];
}

export interface PrintedSetup {
  readonly groups: readonly PrintedGroup[];
  /** What to know of the numbers, one sentence each. */
  readonly remarks: readonly string[];
  /** Sag at the baseline, with room for what is measured now. */
  readonly sags: readonly string[];
}

/** The setup as it is printed. */
export function setupPrintView(sheet: SetupSheet): PrintedSetup {
  return {
    groups: ends.flatMap((end) => {
      const rows = sheet.rows.filter(({ found }) => isAt(end, found.place)).map(printedRow);
      return rows.length > 0 ? [{ end, title: print.ends[end], rows }] : [];
    }),
    remarks: remarksOn(sheet),
    sags: ends
      .filter((end) => sheet.mounted.parts[suspensionOf(end)] !== undefined)
      .map((end) => {
        const measured = baselineSags(sheet.setup.basis, end)[0]?.sag;
        const name = common.places[suspensionOf(end)];
        return measured ? print.sag.atBaseline(name, formatQuantity(measured)) : print.sag.unmeasured(name);
      }),
  };
}

/** Whether a place belongs to an end of the bike. */
export function isAt(end: End, place: Place): boolean {
  return place === suspensionOf(end) || place === tyreOf(end);
}

/** What is on the bike as far as it is known, for a table. */
export function onTheBikeInPrint({ current }: Pick<SheetRow, "current">): string {
  if (current.state === "disputed") return print.inDispute;
  const setting = settledValue(current);
  return setting ? formatQuantity(setting.quantity) : print.notKnown;
}

/** A value, or a dash where there is none. */
export function valueInPrint(value: TypedQuantity | undefined): string {
  return value ? formatQuantity(value) : print.none;
}

/** What an adjuster is called where the end of the bike is said already: "Main pressure", "Tyre pressure". */
export function nameAtEnd(path: AdjusterPath): string {
  const kind = parseAdjusterPath(path)?.kind;
  if (kind === undefined) return path;
  return kind === "tyre-pressure" ? print.tyrePressure : common.adjusters[kind];
}

function printedRow(row: SheetRow): PrintedRow {
  return {
    name: nameAtEnd(row.path),
    baseline: valueInPrint(row.baseline),
    weekend: valueInPrint(row.weekend),
    bench: valueInPrint(row.bench),
    onTheBike: onTheBikeInPrint(row),
    standing: print.states[row.state],
  };
}

function remarksOn({ setup, rows }: SetupSheet): readonly string[] {
  const { shares, missing } = setup.basis;
  if (shares.length === 0) return [print.noBaseline];
  const types = missing.map(({ type }) => common.courseTypes[type]).join(", ");
  return [
    ...(shares.length > 1 ? [print.blend] : []),
    ...(types === "" ? [] : [print.missingTypes(types)]),
    ...(setup.fitted ? [] : [print.notFitted]),
    ...rows.flatMap(({ path, problems }) =>
      problems.map((problem) => print.refused(adjusterLabel(path), trade.setupProblem(problem))),
    ),
  ];
}
