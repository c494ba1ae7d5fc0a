/** The team's data as tables for a spreadsheet. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { describeCause } from "#core/planning/changelog-text.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { baselineKind, memberKind, riderKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { changelog } from "#core/weekend/changelog.ts";
import { parseSettingKey } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { Cell, ExchangeTable } from "./table.ts";
import { columnsOf, type TableName } from "./table-columns.ts";

/** The settled values as a table; what is in dispute is left out, since a row can say only one of them. */
export function tableOut(ledger: Ledger, name: TableName): ExchangeTable {
  return { head: columnsOf[name], rows: rowsOf[name](ledger) };
}

type Rows = readonly (readonly Cell[])[];

const rowsOf: Readonly<Record<TableName, (ledger: Ledger) => Rows>> = {
  riders: (ledger) =>
    ledger.keys(riderKind).flatMap((id) => {
      const current = ledger.current(riderKind, id);
      if (current.state !== "settled") return [];
      const { name, plate, mass, bike } = current.value;
      return [[id, name, plate, mass.value, mass.unit, bike]];
    }),
  baselines: (ledger) =>
    ledger.keys(riderKind).flatMap((riderId) =>
      courseTypes.flatMap((type) => {
        const current = ledger.current(baselineKind, `${riderId}/${type}`);
        if (current.state !== "settled") return [];
        return Object.entries(current.value.values).map(([path, quantity]) => [
          riderId,
          type,
          path,
          quantity?.value,
          quantity?.unit,
        ]);
      }),
    ),
  settings: (ledger) =>
    ledger.keys(settingKind).flatMap((key) => {
      const current = ledger.current(settingKind, key);
      const address = parseSettingKey(key);
      if (current.state !== "settled" || !address) return [];
      const { quantity, heldAt } = current.value;
      return [
        [
          address.riderId,
          address.bikeId,
          address.path,
          quantity.value,
          quantity.unit,
          heldAt?.temperature.value,
          heldAt?.temperature.unit,
          heldAt?.altitude.value,
          heldAt?.altitude.unit,
        ],
      ];
    }),
  changelog: (ledger) =>
    changelog(ledger).map((change) => [
      change.at,
      change.riderId,
      change.bikeId,
      change.path satisfies AdjusterPath,
      change.from.map(({ value, unit }) => `${value} ${unit}`).join(" / "),
      change.to?.value,
      change.to?.unit,
      knownValue(ledger, memberKind, change.by)?.name ?? change.by,
      describeCause(change),
      change.weekend,
      change.session,
    ]),
  runs: (ledger) =>
    ledger.keys(runKind).flatMap((key) => {
      const run = knownValue(ledger, runKind, key);
      const [riderId, runId] = key.split("/");
      if (!run) return [];
      const { front, rear } = run;
      return [
        [
          riderId,
          runId,
          ledger.history(runKind, key)[0]?.at,
          run.weekend,
          run.session,
          run.timeSeconds,
          run.confidence,
          run.section?.name,
          ...[front, rear].flatMap((end) => [
            end.start,
            end.middle,
            end.end,
            end.returnSpeed,
            end.grip,
            end.bottomOuts,
            end.noticed?.join(", "),
          ]),
          run.note,
        ],
      ];
    }),
};
