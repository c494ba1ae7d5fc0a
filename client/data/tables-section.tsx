import { createSignal, For } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { download } from "#client/shell/hand-off-file.ts";
import { data } from "#client/text/data.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { FileField } from "#client/widgets/file-field.tsx";
import { today } from "#client/widgets/today.ts";
import { WeekendChoice } from "#client/widgets/weekend-choice.tsx";
import type { TableForm } from "#core/exchange/table.ts";
import { type TableName, tableNames } from "#core/exchange/table-columns.ts";
import { readTable } from "#core/exchange/tables-in.ts";
import { tableOut } from "#core/exchange/tables-out.ts";
import { currentWeekend, weekends } from "#core/weekend/programme.ts";
import { createImport } from "./create-import.ts";
import { ImportSteps } from "./import-steps.tsx";
import { loadCsv } from "./load-csv.ts";
import { pause } from "./pause.ts";
import { readFile } from "./read-file.ts";

const forms: Readonly<Record<"point" | "comma", TableForm>> = {
  point: { separator: ",", decimal: ".", bom: false },
  comma: { separator: ";", decimal: ",", bom: true },
};

/** Tables for a spreadsheet, and back. */
export function TablesSection() {
  const device = useDevice();
  const steps = createImport(device, pause);
  const [table, setTable] = createSignal<TableName>("riders");
  const [form, setForm] = createSignal<keyof typeof forms>("point");
  const [said, setSaid] = createSignal<string>();
  const [chosen, setChosen] = createSignal<string>();
  const weekendId = () => chosen() ?? currentWeekend(device.ledger(), today())?.id;
  const save = async (): Promise<void> => {
    const csv = await loadCsv();
    if (!csv) return steps.refuse(data.file.notLoaded);
    const name = `${table()}-${today()}.csv`;
    const text = csv.csvText(tableOut(device.ledger(), table()), forms[form()]);
    download(new File([text], name, { type: "text/csv;charset=utf-8" }));
    setSaid(data.saved(name));
  };
  const choose = async (file: File): Promise<void> => {
    const [csv, read] = await Promise.all([loadCsv(), readFile(file)]);
    if (!csv) return steps.refuse(data.file.notLoaded);
    if (!read.ok) return steps.refuse(read.problem.sentence);
    const parsed = csv.readCsv(read.text);
    if (!parsed.ok) return steps.refuse(parsed.problem.sentence);
    const weekend = weekendId();
    await steps.look(file.name, (ledger) => readTable(ledger, parsed.table, weekend));
  };
  return (
    <section class="card stack">
      <h2>{data.tables.title}</h2>
      <label class="select-field">
        <span>{data.tables.which}</span>
        <select onChange={(event) => setTable(event.currentTarget.value as TableName)}>
          <For each={tableNames}>{(name) => <option value={name}>{data.tables.names[name]}</option>}</For>
        </select>
      </label>
      <Choice
        legend={data.tables.form}
        options={["point", "comma"] as const}
        labelOf={(name) => data.tables.forms[name]}
        value={form()}
        onChange={(name) => name && setForm(name)}
        required
      />
      <button type="button" onClick={() => void save()}>
        {data.tables.save}
      </button>
      <output>{said()}</output>
      <WeekendChoice
        label={data.tables.weekend}
        weekends={weekends(device.ledger())}
        value={weekendId()}
        onChange={setChosen}
      />
      <FileField
        label={data.tables.take}
        hint={data.tables.hint}
        accept=".csv,text/csv"
        onFile={(file) => void choose(file)}
      />
      <ImportSteps steps={steps} />
    </section>
  );
}
